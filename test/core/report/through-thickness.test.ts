import { readFileSync } from 'node:fs';
import { assemble, type Block, type Report, readDesign, render, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';

const heron = readFileSync(new URL('../../../docs/examples/heron-hatch-sandwich.yaml', import.meta.url), 'utf8');
const reported = (text: string): Report => report(assemble(readDesign(text)));
const changed = (from: string | RegExp, to: string): string => {
  const text = heron.replace(from, to);
  expect(text).not.toBe(heron);
  return text;
};
const withoutTargets = (text: string): string => text.replace(/^targets:[\s\S]*/m, '');

const headings = ({ blocks }: Report): string[] =>
  blocks.flatMap((block) => (block.kind === 'heading' ? block.id : []));
type Table = Extract<Block, { kind: 'table' }>;
const tableOf = ({ blocks }: Report, id: string): Table => {
  const found = blocks.find((block): block is Table => block.kind === 'table' && block.id === id);
  if (found === undefined) throw new Error(`no table ${id}`);
  return found;
};
/** Numbers in SI and words of a table. */
const cells = (table: Table): (string | number)[][] =>
  table.rows.map((row) => row.map((cell) => (typeof cell === 'string' ? cell : cell.value)));
/** Items of the lists, and the facts, that stand below a heading. */
const wordsBelow = ({ blocks }: Report, id: string): string => {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === id);
  const end = blocks.findIndex((block, i) => i > start && block.kind === 'heading');
  return blocks
    .slice(start, end)
    .flatMap((block) => {
      if (block.kind === 'list') return block.items;
      if (block.kind === 'facts')
        return block.items.map(
          ({ label, value, remark }) => `${label}: ${typeof value === 'string' ? value : value.value} ${remark ?? ''}`,
        );
      return [];
    })
    .join('\n');
};

interface Data {
  laminates: {
    lid: {
      transverseShear: { H: number[][]; kx: number; sums: number[] };
      sandwich: Record<string, Record<string, Record<string, number>>>;
    };
  };
  loads: Record<
    string,
    {
      interlaminarShear: { peakXz: { stress: number } };
      sandwich: Record<string, Record<string, Record<string, number>>>;
    }
  >;
}

describe('what the report says of shear through the thickness and of a sandwich', () => {
  const whole = reported(heron);
  const data = whole.data as unknown as Data;

  it('has sections of its own, each once', () => {
    expect(headings(whole)).toEqual(
      expect.arrayContaining([
        'laminate-lid-shear',
        'laminate-lid-sandwich',
        'load-step-shear',
        'load-step-sandwich',
        'load-water-shear',
      ]),
    );
    const ids = whole.blocks.flatMap((block) => ('id' in block && /^(laminate|load)-/.test(block.id) ? block.id : []));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('shows the numbers of the JSON document', () => {
    const { H, kx, sums } = data.laminates.lid.transverseShear;
    expect(cells(tableOf(whole, 'laminate-lid-shear-stiffness'))[0]).toEqual(['Vx', H[0]![0], 0, sums[0], kx]);
    const { tool } = data.laminates.lid.sandwich;
    expect(cells(tableOf(whole, 'laminate-lid-wrinkling'))[0]).toEqual([
      'tool, x',
      tool!.x!.faceModulus,
      tool!.x!.wrinklingStress,
      tool!.x!.wrinklingStressInTheory,
      tool!.x!.wrinklingDepth,
    ]);
    const { step } = data.loads;
    expect(cells(tableOf(whole, 'load-step-wrinkling')).map((row) => row.at(-1))).toEqual([
      step!.sandwich.tool!.x!.ratio,
      step!.sandwich.tool!.y!.ratio,
      'in tension',
      'in tension',
    ]);
    expect(cells(tableOf(whole, 'load-step-shear-peaks'))[0]!.slice(0, 5)).toEqual([
      'τxz',
      4000,
      step!.interlaminarShear.peakXz.stress,
      0,
      '3',
    ]);
  });

  it('judges the assumptions of hand-book theory in plain words', () => {
    const said = wordsBelow(whole, 'laminate-lid-sandwich');
    expect(said).toMatch(/Deep core: yes[\s\S]*Thin faces: yes[\s\S]*Weak core: yes[\s\S]*may be trusted here/);
    const thin = wordsBelow(
      reported(withoutTargets(changed('thickness: 16 mm', 'thickness: 3 mm'))),
      'laminate-lid-sandwich',
    );
    expect(thin).toMatch(/Deep core: no[\s\S]*Thin faces: yes/);
    const thick = wordsBelow(reported(withoutTargets(changed('0c_2/', '0c_20/'))), 'laminate-lid-sandwich');
    expect(thick).toMatch(/Thin faces: no[\s\S]*Do not trust/);
    const stiff = withoutTargets(changed('thickness: 16 mm', 'thickness: 16 mm\n    E: 3 GPa'));
    expect(wordsBelow(reported(stiff), 'laminate-lid-sandwich')).toMatch(/Weak core: no/);
  });

  it('names the usual factors of sandwiches only where this one has such a factor', () => {
    const below = (text: string) => wordsBelow(reported(withoutTargets(text)), 'laminate-lid-shear');
    expect(below(heron)).toContain('never the 5/6');
    expect(below(heron)).not.toContain('0.005 to 0.03');
    expect(below(changed('0c_2/', '0c_20/'))).toContain('0.005 to 0.03');
    expect(below(changed('[0c_2/0f~]s', '[0c_2]s'))).toBe('');
  });

  it('says which value is wanting, and why a laminate with a core is no sandwich', () => {
    const bare = /from: pvc-80 .*/;
    const noStrength = reported(
      withoutTargets(changed(bare, 'E: 85 MPa\n    G: 28 MPa\n    nu: 0.35\n    density: 80 kg/m^3')),
    );
    expect(wordsBelow(noStrength, 'laminate-lid-sandwich')).toContain(
      'Core shear strength: not known: the core gives no S',
    );
    expect(wordsBelow(noStrength, 'load-step-sandwich')).toContain('not judged without the strength');
    expect(wordsBelow(whole, 'laminate-lid-sandwich')).toContain('E3 of the core is not given');
    const open = reported(withoutTargets(changed('[0c_2/0f~]s', '[0c_2/0f]')));
    expect(wordsBelow(open, 'laminate-lid-sandwich')).toContain('no face on the bag side');
    expect(headings(open)).not.toContain('load-step-sandwich');
    expect(headings(open)).toContain('load-step-shear');
  });

  it('leaves out what does not apply', () => {
    const solid = headings(reported(withoutTargets(changed('[0c_2/0f~]s', '[0c_2]s'))));
    expect(solid).not.toContain('laminate-lid-sandwich');
    expect(solid).toContain('laminate-lid-shear');
    const quiet = withoutTargets(heron).replace(/ {4}shear: .*\n/g, '');
    expect(headings(reported(quiet))).not.toContain('load-step-shear');
    expect(wordsBelow(reported(quiet), 'load-step-sandwich')).toBe('');
    const still = withoutTargets(heron)
      .replace(/shear: .*/g, 'shear: [0 N/m, 0 N/m]')
      .replace(/ {4}M: .*\n/g, '');
    expect(headings(reported(still)).filter((id) => /^load-.*-(shear|sandwich)$/.test(id))).toEqual([]);
  });

  it('draws the stress over the layers, and says the largest in words', () => {
    const figure = whole.blocks.find((block) => block.kind === 'figure' && block.id === 'load-step-shear-profile');
    if (figure?.kind !== 'figure') throw new Error('no figure');
    expect(figure.svg.match(/class="sv-band/g)).toHaveLength(3);
    expect(figure.alt).toContain('τxz is largest, 0.2445 MPa, at z = 0 mm');
    const alone = reported(withoutTargets(changed('shear: [4 kN/m, 2.5 kN/m]', 'shear: [4 kN/m, 0 N/m]')));
    const one = alone.blocks.find((block) => block.kind === 'figure' && block.id === 'load-step-shear-profile');
    expect(one?.kind === 'figure' && one.alt).not.toContain('τyz');
    expect(cells(tableOf(alone, 'load-step-shear-peaks'))[1]).toEqual(['τyz', 0, 0, '–', '–', '–', '–']);
  });

  it('is written in US units', () => {
    const text = render(whole, 'text', { units: 'us' });
    const from = text.indexOf('Sandwich under this load');
    expect(text.slice(from, text.indexOf('Assumption', from))).toMatch(/ksi[\s\S]*0\.008731 ksi/);
    // 0.0602 MPa of the water load, 6.895 MPa a ksi
    const shear = text.slice(text.indexOf('Shear through the thickness'));
    expect(shear.slice(0, 300)).toContain('lbf/in');
  });
});
