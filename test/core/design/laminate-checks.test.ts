import {
  assemble,
  compute,
  edgeDelamination,
  ellipseBlister,
  laminate,
  plateBuckling,
  plateDeflection,
  plateVibration,
  readDesign,
  stripBlister,
} from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { moistureExpansionOf, thermalExpansionOf } from '../../../packages/core/src/laminate/index.js';
import { report } from '../../../packages/core/src/report/index.js';
import { render } from '../../../packages/core/src/report/render/index.js';
import { faultIn, problemsIn } from './faults.js';

const file = `format: 1
title: T
materials:
  ud: { kind: ply, E1: 140 GPa, E2: 10 GPa, G12: 5 GPa, nu12: 0.3, thickness: 0.2 mm, density: 1600 kg/m^3, expansion: { alpha1: 0.1e-6 1/K, alpha2: 30e-6 1/K }, moistureExpansion: { beta1: 0.01, beta2: 0.5 } }
  bare: { kind: ply, E1: 140 GPa, E2: 10 GPa, G12: 5 GPa, nu12: 0.3, thickness: 0.2 mm }
  sheet: { kind: ply, E1: 70 GPa, E2: 70 GPa, G12: 26.92307692307692 GPa, nu12: 0.3, thickness: 1 mm, density: 2700 kg/m^3 }
threads:
  t75: { linearDensity: 75 tex, density: 1440 kg/m^3 }
laminates:
  edge:
    material: ud
    stack: "[45/-45/0/90]s"
    freeEdge: { strain: 0.3 %, temperatureChange: -60 K, toughness: 300 J/m^2 }
    panel: { length: 200 mm, width: 100 mm, compression: [20 N/mm, -5 N/mm], pressure: 2 kPa, modes: 3 }
    blister: { shape: strip, interface: 2, length: 40 mm, strain: -0.25 % }
  odd:
    material: bare
    stack: "[0_3/90]"
    freeEdge: {}
    panel: { length: 200 mm, width: 100 mm }
    blister: { shape: strip, interface: 1, length: 30 mm, strain: -0.3 %, toughness: 200 J/m^2 }
  plain: { material: sheet, stack: "[0]" }
stitching:
  rows: { laminate: edge, thread: t75, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm }
`;
/** The same with an elliptic blister in the first laminate. */
const elliptic = file.replace(
  'blister: { shape: strip, interface: 2, length: 40 mm, strain: -0.25 % }',
  'blister: { shape: ellipse, interface: 2, length: 40 mm, width: 30 mm, strain: [-0.3 %, 0.1 %, 0.05 %], toughness: 300 J/m^2 }',
);
const withText = (from: string, to: string, of: string = file): string => {
  expect(of).toContain(from);
  return of.replace(from, to);
};
const computed = new Map<string, ReturnType<typeof compute>>();
const results = (text: string = file) => {
  const found = computed.get(text) ?? compute(assemble(readDesign(text)));
  computed.set(text, found);
  return found;
};
type Data = Readonly<Record<string, never>>;
const dataOf = (name: string, text?: string) =>
  (results(text).data as unknown as { laminates: Record<string, Data> }).laminates[name] as unknown as {
    freeEdge: Data;
    panel: Data;
    blister: Data;
    expansion?: { thermal?: Data; moisture?: Data };
    sources: readonly string[];
  };
const stackOf = (name: string) => results().model.laminates.find((one) => one.name === name)!.laminate;
const printed = (text: string = file, units: 'metric' | 'us' = 'metric') =>
  render(report(results(text), { units }), 'text', { width: 100, units });

const problems = (text: string) => problemsIn(() => results(text));
const fault = (text: string) => faultIn(() => results(text));

describe('the JSON document holds what the library gives', () => {
  it('of the free edge, per interface', () => {
    const found = edgeDelamination(stackOf('edge'), { strain: 3e-3, temperatureChange: -60, toughness: 300 });
    const { freeEdge } = dataOf('edge');
    expect(freeEdge).toMatchObject({ strain: 0.003, temperatureChange: -60, toughness: 300 });
    const { interfaces, critical } = freeEdge as unknown as { interfaces: object[]; critical: object };
    expect(interfaces).toHaveLength(7);
    found.interfaces.forEach(({ below, z, angles, alike, single, pair, peel }, i) => {
      expect(interfaces[i]).toMatchObject({
        below,
        z,
        angles,
        alike,
        peel: { sense: peel.sense, edgeMoment: peel.moment, relative: peel.relative },
      });
      if (single === undefined || pair === undefined) return;
      expect(interfaces[i]).toMatchObject({
        single: { G: single.G, perSquare: single.perSquare, fronts: 1, onsetTension: single.onset!.tension },
        pair: { G: pair.G, modulus: pair.modulus, fronts: 2, onsetCompression: pair.onset!.compression },
      });
    });
    expect(critical).toMatchObject({ below: found.critical!.below, G: found.critical!.G });
    expect(freeEdge).toMatchObject({ midPlanePeel: { sense: found.midPlanePeel.sense } });
  });

  it('of the panel: buckling, modes and deflection', () => {
    const [stack, plate] = [stackOf('edge'), { a: 0.2, b: 0.1 }];
    const { thin, withShear } = plateBuckling(stack, plate, { Nx: -20e3, Ny: 5e3 });
    const deflection = plateDeflection(stack, plate, { pressure: 2000, shape: 'uniform' });
    const { panel } = dataOf('edge');
    expect(panel).toMatchObject({ buckling: { thin, withShear }, length: 0.2, width: 0.1 });
    expect(panel).toMatchObject({ deflectionThin: deflection.thin, deflection: deflection.withShear });
    const modes = plateVibration(stack, plate, { modes: 3 }).modes.map(({ m, n, thin, withShear }) => ({
      m,
      n,
      frequencyThin: thin,
      frequency: withShear,
    }));
    expect(panel).toMatchObject({ modes });
  });

  it('of an elliptic and of a strip blister: the thinner side buckles', () => {
    const { plies } = stackOf('edge');
    const [film, base] = [laminate(plies.slice(0, 2)), laminate(plies.slice(2))];
    const strain = [-3e-3, 1e-3, 5e-4] as const;
    const ellipse = ellipseBlister(film, { a: 0.02, b: 0.015, strain, toughness: 300, base });
    expect(dataOf('edge', elliptic).blister).toMatchObject({
      side: 'tool',
      layers: [1, 2],
      multiplier: ellipse.multiplier,
      criticalStrain: ellipse.strain,
      G: ellipse.G,
      growthMultiplier: ellipse.growthMultiplier,
      growthStrain: strain.map((value) => value * ellipse.growthMultiplier!),
    });
    const strip = stripBlister(laminate(stackOf('odd').plies.slice(0, 1)), {
      length: 0.03,
      strain: -3e-3,
      toughness: 200,
    });
    expect(dataOf('odd').blister).toMatchObject({
      G: strip.G,
      criticalStrain: strip.criticalStrain,
      growthStrain: strip.growthStrain,
      multiplier: strip.criticalStrain / -3e-3,
      growthMultiplier: strip.growthStrain! / -3e-3,
    });
  });

  it('of the expansion, where every layer has the coefficients', () => {
    const { expansion } = dataOf('edge');
    const [thermal, moisture] = [thermalExpansionOf(stackOf('edge')), moistureExpansionOf(stackOf('edge'))];
    expect(expansion).toEqual({
      thermal: { strain: thermal.strain, curvature: thermal.curvature },
      moisture: { strain: moisture.strain, curvature: moisture.curvature },
    });
    expect(dataOf('odd')).not.toHaveProperty('expansion');
  });

  it('names the sources of the models', () => {
    expect(dataOf('edge', elliptic).sources).toEqual(
      expect.arrayContaining(['obrien-1982', 'timoshenko-gere-1961', 'hutchinson-suo-1992']),
    );
  });
});

describe('cases with closed forms, through a design file', () => {
  const side = 0.1;
  const D = (70e9 * 1e-9) / (12 * (1 - 0.09));
  const square = withText(
    '"[0]" }',
    '"[0]", panel: { length: 100 mm, width: 100 mm, compression: [1 N/mm, 0 N/mm] } }',
  );
  const panel = () =>
    dataOf('plain', square).panel as unknown as {
      buckling: { thin: { Nx: number; m: number; n: number } };
      modes: { frequencyThin: number }[];
    };

  it('an isotropic square plate buckles at 4 π² D/b² in one half wave each way', () => {
    const { thin } = panel().buckling;
    expect((-thin.Nx * side ** 2) / (Math.PI ** 2 * D)).toBeCloseTo(4, 9);
    expect([thin.m, thin.n]).toEqual([1, 1]);
  });

  it('and vibrates at π/b² √(D/ρt), less the inertia of turning normals', () => {
    // ω² = D (2π²/b²)²/(ρt (1 + t²/12 · 2π²/b²)): rotary inertia takes 0.008 % here.
    const turning = 1 + ((1e-3 ** 2 / 12) * 2 * Math.PI ** 2) / side ** 2;
    const expected = (Math.PI / side ** 2) * Math.sqrt(D / 2.7 / turning);
    expect(panel().modes[0]!.frequencyThin / expected).toBeCloseTo(1, 9);
    expect(turning).toBeGreaterThan(1.0001);
  });

  it('a symmetric laminate does not bend when it cools, an unsymmetric one does', () => {
    const curvatures = (code: string) => {
      const { thermal } = dataOf('edge', withText('"[45/-45/0/90]s"', code)).expansion!;
      return (thermal as unknown as { curvature: number[] }).curvature;
    };
    for (const value of curvatures('"[45/-45/0/90]s"')) expect(Math.abs(value)).toBeLessThan(1e-12);
    const [x = 0, y = 0, xy = 0] = curvatures('"[0_4/90_4]"');
    // The layers across shrink more along x, and lie at the bag side: heat makes that side longer, which is positive.
    expect(x).toBeGreaterThan(1e-3);
    expect(y).toBeCloseTo(-x, 9);
    expect(Math.abs(xy)).toBeLessThan(1e-12);
  });

  it('[0/90]s under tension parts at the 0/90 interface, where the layers across are pulled open', () => {
    const text = withText('"[45/-45/0/90]s"', '"[0/90]s"').replace(', temperatureChange: -60 K', '');
    const { first, critical, interfaces, midPlanePeel } = dataOf('edge', text.replace('interface: 2', 'interface: 1'))
      .freeEdge as unknown as {
      first: { tension: { below: number; strain: number }; compression: { strain: number } };
      critical: { below: number };
      interfaces: { alike: boolean; single?: { perSquare: number }; pair?: { perSquare: number } }[];
      midPlanePeel: { sense: string };
    };
    expect(first.tension.below).toBe(1);
    expect(critical.below).toBe(1);
    expect(interfaces.map(({ alike }) => alike)).toEqual([false, true, false]);
    // Energy: G = c ε², so that onset stands at √(Gc/c). The pair does not bend and is alike in tension and compression; one interface
    // alone closes when compressed, which lowers its G.
    const { single, pair } = interfaces[0]!;
    const most = Math.max(single!.perSquare, pair!.perSquare);
    expect(first.tension.strain).toBeCloseTo(Math.sqrt(300 / most), 9);
    expect(-first.compression.strain).toBeGreaterThanOrEqual(first.tension.strain);
    expect(-first.compression.strain).toBeLessThanOrEqual(Math.sqrt(300 / pair!.perSquare) * (1 + 1e-9));
    expect(midPlanePeel.sense).toBe('opening');
  });
});

describe('targets understand the new numbers', () => {
  const cases = [
    ['laminates.edge.panel.buckling.withShear.multiplier, atLeast: 1.5', 'number'],
    ['laminates.edge.panel.buckling.thin.Nx, atMost: -20 N/mm', 'forcePerLength'],
    ['laminates.edge.panel.modes.0.frequency, atLeast: 100 Hz', 'frequency'],
    ['laminates.edge.panel.deflection, atMost: 1 mm', 'length'],
    ['laminates.edge.freeEdge.critical.onsetTension, atLeast: 0.3 %', 'strain'],
    ['laminates.edge.freeEdge.first.compression.strain, atMost: -0.3 %', 'strain'],
    ['laminates.edge.freeEdge.interfaces.2.single.G, atMost: 1 in*lbf/in^2', 'toughness'],
    ['laminates.edge.freeEdge.interfaces.2.z, atMost: 0 mm', 'length'],
    ['laminates.edge.blister.G.1, atMost: 300 J/m^2', 'toughness'],
    ['laminates.edge.blister.growthMultiplier, atLeast: 1', 'number'],
    ['laminates.odd.blister.criticalStrain, atMost: -0.01 %', 'strain'],
    ['laminates.edge.expansion.thermal.strain.0, atMost: 5e-6 1/K', 'expansion'],
    ['laminates.edge.expansion.thermal.curvature.0, atMost: 1 1/m/K', 'curvatureExpansion'],
    ['laminates.edge.expansion.moisture.strain.1, atMost: 0.2', 'number'],
  ] as const;
  const lines = cases.map(([target]) => `  - { quantity: ${target} }\n`).join('');
  it.each(cases.map((one, i) => [...one, i] as const))('%s', (_, kind, i) => {
    expect(results(`${elliptic}targets:\n${lines}`).targets[i]).toMatchObject({ kind, met: true });
  });
});

describe('problems point at the key at fault', () => {
  it.each([
    [
      'a strain of the edge in the wrong unit',
      'strain: 0.3 %, temperature',
      'strain: 3 mm, temperature',
      'unit-mismatch',
      'mm',
    ],
    ['a strain of the edge of 50 %', 'strain: 0.3 %, temperature', 'strain: 50 %, temperature', 'out-of-range', '50 %'],
    [
      'no toughness at all',
      'temperatureChange: -60 K, toughness: 300',
      'temperatureChange: -60 K, toughness: 0',
      'out-of-range',
      '0 J/m^2',
    ],
    [
      'heat on layers without expansion',
      'freeEdge: {}',
      'freeEdge: { temperatureChange: -60 K }',
      'not-computable',
      '-60 K',
    ],
    [
      'a panel without width',
      'panel: { length: 200 mm, width: 100 mm }',
      'panel: { length: 200 mm }',
      'missing-key',
      'panel',
    ],
    [
      'a panel of no length',
      'panel: { length: 200 mm, width: 100 mm }',
      'panel: { length: 0 mm, width: 100 mm }',
      'out-of-range',
      '0 mm',
    ],
    ['a panel that is only pulled', '[20 N/mm, -5 N/mm]', '[-20 N/mm, 0 N/mm]', 'out-of-range', '[-20 N/mm, 0 N/mm]'],
    ['one compression', '[20 N/mm, -5 N/mm]', '20 N/mm', 'wrong-type', '20 N/mm'],
    ['half a mode', 'modes: 3', 'modes: 2.5', 'out-of-range', '2.5'],
    ['a pressure in metres', 'pressure: 2 kPa', 'pressure: 2 m', 'unit-mismatch', 'm'],
    ['a blister of unknown shape', 'shape: ellipse', 'shape: square', 'not-a-choice', 'square'],
    ['an interface that is none', 'interface: 2', 'interface: 8', 'out-of-range', '8'],
    ['half an interface', 'interface: 2', 'interface: 1.5', 'out-of-range', '1.5'],
    ['an ellipse without width', 'length: 40 mm, width: 30 mm', 'length: 40 mm', 'missing-key', 'blister'],
    ['a circle with a width', 'shape: ellipse', 'shape: circle', 'contradiction', 'width'],
    [
      'a strip with a width',
      'shape: strip, interface: 1,',
      'shape: strip, interface: 1, width: 20 mm,',
      'contradiction',
      'width',
    ],
    [
      'a strip with three strains',
      'strain: -0.3 %, toughness: 200',
      'strain: [-0.3 %, 0 %, 0 %], toughness: 200',
      'contradiction',
      'strain',
    ],
    ['an ellipse with one strain', '[-0.3 %, 0.1 %, 0.05 %]', '-0.3 %', 'contradiction', '-0.3 %'],
    ['an ellipse without strain', 'strain: [-0.3 %, 0.1 %, 0.05 %], ', '', 'missing-key', 'blister'],
    [
      'an ellipse that is pulled',
      '[-0.3 %, 0.1 %, 0.05 %]',
      '[0.3 %, 0.1 %, 0 %]',
      'out-of-range',
      '[0.3 %, 0.1 %, 0 %]',
    ],
    ['a strain among three in the wrong unit', '[-0.3 %, 0.1 %', '[-0.3 %, 0.1 mm', 'unit-mismatch', 'mm'],
    ['two strains', '[-0.3 %, 0.1 %, 0.05 %]', '[-0.3 %, 0.1 %]', 'out-of-range', '[-0.3 %, 0.1 %]'],
    ['a key that does not exist', 'freeEdge: {}', 'freeEdge: { toughnes: 300 J/m^2 }', 'unknown-key', 'toughnes'],
  ])('%s', (_, from, to, code, at) => {
    expect(fault(withText(from, to, file.includes(from) ? file : elliptic))).toEqual([code, at]);
  });

  it('all of one laminate at once', () => {
    const text = withText('interface: 2', 'interface: 9').replace('modes: 3', 'modes: 2.5');
    expect(problems(text).map(({ code }) => code)).toEqual(['out-of-range', 'out-of-range']);
  });
});

describe('the report', () => {
  it('says which interface opens first and at which strain, and that thread is not counted', () => {
    const text = printed().replace(/\s+/g, ' ');
    expect(text).toMatch(
      /pulled, the edge opens first between layers 3 and 4 \(0° \| 90°\): a crack there grows at a strain of \d+·10⁻⁶, where G is 300 J\/m²/,
    );
    expect(text).toContain('in the given state the stress at the edge pulls the mid-plane open');
    expect(text).toContain(
      'These numbers are for the unstitched laminate: what thread does to it is not counted (stitch plan rows).',
    );
    expect(printed(withText('laminate: edge, thread', 'laminate: odd, thread')).split('Laminate odd')[0]).not.toContain(
      'unstitched',
    );
  });

  it('says where the faces of a crack would touch, and nothing where none do', () => {
    const said = (code: string) => printed(withText('"[45/-45/0/90]s"', `"${code}"`)).replace(/\s+/g, ' ');
    expect(said('[90/45/-45/0]s')).toMatch(
      /the faces of a crack would touch at the edge, which lowers its G, between the layers [^.]*3 \| 4/,
    );
    expect(said('[0/90]s')).not.toContain('would touch at the edge');
  });

  it('says nothing of peel below the threshold', () => {
    const text = withText('"[0_3/90]"', '"[0_4]"');
    expect(printed(text)).toContain('the layers are alike in laminate axes');
    expect(printed(text).split('Laminate odd')[1]).not.toContain('mid-plane open');
  });

  it('says by how much bend-twist coupling is missed, and that clamped sides are not covered', () => {
    const text = printed().replace(/\s+/g, ' ');
    expect(text).toMatch(/Bend-twist coupling is left out: D16\/\(D11³ D22\)\^¼ or D26\/\(D11 D22³\)\^¼ is 0\.2\d/);
    expect(text).toContain('clamped or free sides and shear forces are not covered');
  });

  it('says which layer lacks a density in place of frequencies', () => {
    expect(printed()).toContain('no natural frequencies: layer bare has no density');
    expect(dataOf('odd').panel).not.toHaveProperty('modes');
  });

  it('says in capitals what fails: panel, blister and edge', () => {
    expect(printed(withText('[20 N/mm', '[200 N/mm'))).toContain('THE PANEL BUCKLES UNDER THE GIVEN COMPRESSION');
    const text = printed(withText('toughness: 200', 'toughness: 10')).replace(/\s+/g, ' ');
    expect(text).toContain('IT GROWS UNDER THE GIVEN STRAIN');
    expect(printed(withText('strain: 0.3 %, temp', 'strain: 2 %, temp')).replace(/\s+/g, ' ')).toContain(
      'THE CRACK GROWS',
    );
    const cooled = withText('-60 K, toughness: 300', '-400 K, toughness: 5');
    expect(printed(cooled).replace(/\s+/g, ' ')).toContain('THE CHANGE OF TEMPERATURE ALONE PARTS THE EDGE');
  });

  it('says what is missing where a state, a toughness or a strain is not given', () => {
    const text = printed(withText('strain: -0.3 %, toughness: 200 J/m^2', 'toughness: 200 J/m^2')).replace(/\s+/g, ' ');
    expect(text).toContain('no strain of onset: `toughness` is not given');
    expect(text).toMatch(/most energy is released between layers 3 and 4 \(0° \| 90°\): [\d.]+ J\/m² at 0\.1 % strain/);
    expect(text).toContain('no `strain` is given: G is not computed');
    const bare = printed(withText(', strain: -0.3 %, toughness: 200 J/m^2', ', strain: -0.3 %'));
    expect(bare).toContain('whether it grows is not judged: `toughness` is not given');
  });

  it('tells expansion as a change of length, and the shape that cooling gives', () => {
    const text = printed(withText('"[45/-45/0/90]s"', '"[0_4/90_4]"'));
    expect(text).toContain('Change of 1 m, 100 K colder');
    expect(text.replace(/\s+/g, ' ')).toContain('100 K colder, nothing holding it, it becomes a saddle');
    expect(printed()).toContain('100 K colder, nothing holding it, it stays flat');
  });

  it('is in the units of the reader', () => {
    const text = printed(file, 'us').replace(/\s+/g, ' ');
    expect(text).toContain('Change of 3 ft, 100 °F colder');
    expect(text).toContain('in·lbf/in²');
    expect(text).toContain('Panel 7.874 in by 3.937 in');
    expect(text).toContain('psi');
  });
});
