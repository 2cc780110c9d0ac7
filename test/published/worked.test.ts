import { describe, expect, it } from 'vitest';
import { examplesByRule, printedInWorking } from '../../packages/core/scripts/printed-in-working.js';
import { exampleIds, exampleOf, rulesShown } from '../../packages/core/src/examples/index.js';
import { type RuleName, rules } from '../../packages/core/src/working/index.js';

/** Published examples of which the working shows every number that they print. */
const whole = [
  'off-axis-stiffness-carbon',
  'quasi-isotropic-carbon',
  'stiffness-three-plies-carbon',
  'response-three-plies-carbon',
  'thermal-response-cross-ply-carbon',
  'prescribed-strain-cross-ply',
  'stiffness-angle-ply-carbon',
  'stiffness-antisymmetric-carbon',
  'off-axis-stiffness-glass-55',
  'expansion-micromechanics-glass-70',
  'micromechanics-glass-60',
  'micromechanics-aramid-45',
  'off-axis-strength-carbon-60',
  'off-axis-shear-strength-carbon-60',
  'off-axis-shear-strength-carbon-60-negative',
];

/** A name of an example's value and a symbol of the working, brought to one spelling: `ply2.top.txy` and `tau_xy` are both `txy`. */
const plain = (name: string): string =>
  (name.split('.').at(-1) ?? '')
    .replace(/_\d+$/, '')
    .replace(/_/g, '')
    .replace(/^sigma/, 's')
    .replace(/^tau/, 't')
    .replace(/HalpinTsai$|InverseRule$/, '')
    .toLowerCase();

/** Names that a source has for what the working calls otherwise. */
const otherNames: Readonly<Record<string, string>> = {
  e: 'ex',
  nu: 'nuxy',
  g: 'gxy',
  maxstress: 'r',
  tsaihill: 'r',
  tsaiwu: 'r',
};

describe('the working of a published example', () => {
  it.each(whole)('%s: shows every number that the source prints, under its name', (id) => {
    const printed = printedInWorking(id);
    expect(printed.length).toBeGreaterThan(0);
    for (const { key, found } of printed) {
      if (exampleOf(id).values[key]?.value === 0) continue;
      const name = otherNames[plain(key)] ?? plain(key);
      expect(
        found.map(({ quantity }) => plain(quantity)),
        key,
      ).toContain(name);
    }
  });

  it('counts twelve examples or more, from several sources', () => {
    expect(whole.length).toBeGreaterThanOrEqual(12);
    expect(new Set(whole.map((id) => exampleOf(id).source)).size).toBeGreaterThanOrEqual(5);
  });
});

describe('the published examples that a formula reproduces', () => {
  it('are those whose printed numbers its results are', () => {
    expect(rulesShown).toEqual(examplesByRule());
  });

  it('are named for the steps from a ply to its strength', () => {
    const chain: RuleName[] = [
      'reducedStiffness',
      'turnedStiffness',
      'stackSums',
      'constantsInPlane',
      'deformation',
      'strainAtHeight',
      'stressInLaminateAxes',
    ];
    for (const rule of chain) {
      const ids = rulesShown[rule] ?? [];
      expect(ids.length, rule).toBeGreaterThan(0);
      for (const id of ids) expect(exampleIds).toContain(id);
    }
    for (const rule of Object.keys(rulesShown)) expect(Object.keys(rules)).toContain(rule);
  });
});
