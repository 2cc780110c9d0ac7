import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../../packages/core/src/design/index.js';
import { searchProblem } from '../../../../packages/core/src/study/search/index.js';
import { withSearch } from './designs.js';

const entries = (name: string) => [0, 1, 2].flatMap((i) => [0, 1, 2].map((j) => `laminates.skin.${name}.${i}.${j}`));
const constants = ['Ex', 'Ey', 'Gxy', 'nuxy', 'nuyx', 'etaxyx', 'etaxyy'];
const criteria = ['maxStress', 'maxStrain', 'tsaiHill', 'tsaiWu', 'hashin', 'puck'];
const quantities = [
  'laminates.skin.thickness',
  'laminates.skin.arealMass',
  'laminates.other.arealMass',
  ...['A', 'B', 'D', 'a', 'b', 'd'].flatMap(entries),
  ...['inPlane', 'flexural'].flatMap((group) => constants.map((name) => `laminates.skin.${group}.${name}`)),
  ...['pull', 'bend'].flatMap((load) => criteria.map((criterion) => `loads.${load}.failure.${criterion}.ratio`)),
];

/** A search over a stack with every quantity that the kernel knows among its limits, none of which binds. */
const everything = (stack: string, watched: readonly string[] = quantities): string =>
  withSearch(`  stack: ${stack}
  minimise: [laminates.skin.thickness]
  targets: false
  constraints:
${watched.map((path) => `    - { quantity: ${path}, atLeast: ${limitOf(path)} }`).join('\n')}
`);

const unitOf: readonly (readonly [RegExp, string])[] = [
  [/thickness/, ' m'],
  [/Mass/, ' kg/m^2'],
  [/\.A\./, ' N/m'],
  [/\.B\./, ' N'],
  [/\.D\./, ' N*m'],
  [/\.(Ex|Ey|Gxy)$/, ' Pa'],
];
const limitOf = (path: string): string => `"-1e30${unitOf.find(([pattern]) => pattern.test(path))?.[1] ?? ''}"`;

/** Largest of the numbers of a block, so that an entry that cancels is compared with its neighbours. */
const blockOf = (path: string): string => path.replace(/\.\d\.\d$/, '').replace(/\.(eta\w+|nu\w+)$/, '.ratios');

function compared(text: string, genomes: readonly (readonly number[])[], relative = 1e-12): void {
  const inputs = designInputs(text);
  const kernel = searchProblem(inputs);
  const design = searchProblem(inputs, { path: 'design' });
  expect([kernel.evaluator.path, design.evaluator.path]).toEqual(['kernel', 'design']);
  const { quantities: paths } = kernel.goals;
  const flat = Int32Array.from(genomes.flat());
  const run = ({ evaluator }: typeof kernel) => {
    const values = new Float64Array(genomes.length * paths.length);
    const computed = new Uint8Array(genomes.length);
    evaluator.evaluate(flat, genomes.length, values, computed);
    return { values, computed };
  };
  const [fast, slow] = [run(kernel), run(design)];
  expect(fast.computed).toEqual(slow.computed);
  genomes.forEach((_, k) => {
    if (slow.computed[k] === 0) return;
    const of = (values: Float64Array, i: number): number => values[k * paths.length + i]!;
    const scale = new Map<string, number>();
    paths.forEach((path, i) => {
      scale.set(blockOf(path), Math.max(scale.get(blockOf(path)) ?? 0, Math.abs(of(slow.values, i))));
    });
    paths.forEach((path, i) => {
      const apart = Math.abs(of(fast.values, i) - of(slow.values, i));
      expect(apart, `${path} of ${genomes[k]!.join()}`).toBeLessThanOrEqual(relative * scale.get(blockOf(path))!);
    });
  });
}

/** A search over fabrics and a core; heat acts on all of them, for which the core needs its expansion. */
const fabrics = (core: string): string =>
  everything(
    '{ laminate: skin, choices: [{ angle: 0, material: biax }, { angle: 30, material: biax }, { angle: 0, material: cloth }, { angle: 0, material: foam }], plies: 3, symmetric: true }',
    quantities
      .filter((path) => !path.startsWith('loads.'))
      .concat('laminates.skin.fibreArealMass', 'laminates.skin.resinArealMass'),
  ).replace(
    'laminates:\n',
    `  biax: { kind: fabric, architecture: multiaxial, layers: [{ angle: 45, arealMass: 200 g/m^2 }, { angle: -30, arealMass: 150 g/m^2 }], fibre: e-glass, resin: epoxy-infusion, fibreVolumeFraction: 50 % }
  cloth: { kind: fabric, from: e-glass-twill-300, resin: epoxy-infusion, fibreVolumeFraction: 50 % }
  foam: { kind: core, thickness: 3 mm, E: 130 MPa, G: 48 MPa, density: 130 kg/m^3, ${core} }
laminates:
`,
  );

describe('the two ways to compute a candidate', () => {
  it('agree in every quantity of a symmetric stack', () => {
    const stack = '{ laminate: skin, materials: [ud, stiff], angles: [0, 30, 45, -45, 90], plies: 4, symmetric: true }';
    const genomes = fc.sample(fc.array(fc.nat(9), { minLength: 4, maxLength: 4 }), { numRuns: 40, seed: 1 });
    compared(everything(stack), genomes);
  });

  it('agree in every quantity of an unsymmetric stack, of either length', () => {
    const stack = '{ laminate: skin, materials: [ud, stiff], angles: [0, 30, 45, -45, 90], plies: [3, 5] }';
    const sample = fc.sample(fc.array(fc.nat(9), { minLength: 5, maxLength: 5 }), { numRuns: 40, seed: 2 });
    compared(
      everything(stack),
      sample.map((plies, k) => (k % 2 === 0 ? [0, ...plies.slice(0, 3), 0, 0] : [1, ...plies])),
    );
  });

  it('agree for fabrics of several layers, mirrored upside down, and for a core', () => {
    const text = fabrics('alpha: 60e-6 1/K');
    const genomes = [0, 1, 2, 3].flatMap((a) => [0, 1, 2, 3].flatMap((b) => [0, 1, 2, 3].map((c) => [a, b, c])));
    // The sandwich's condition number costs three digits of the small entries of its inverse.
    compared(text, genomes, 1e-10);
  });

  it('go by whole designs where a choice is one that the design does not take', () => {
    expect(searchProblem(designInputs(fabrics('nu: 0.3'))).evaluator.path).toBe('design');
  });

  it('go by whole designs for what the kernel does not know', () => {
    const stack = '{ laminate: skin, angles: [0, 90], plies: 2, symmetric: true }';
    const pathOf = (text: string) => searchProblem(designInputs(text)).evaluator.path;
    expect(pathOf(everything(stack, ['laminates.skin.arealMass']))).toBe('kernel');
    expect(pathOf(everything(stack, ['laminates.skin.inPlaneRestrained.Ex']))).toBe('design');
    expect(pathOf(everything(stack, ['stitching.rows.penetrationDensity']).replace('-1e30"', '-1 1/m^2"'))).toBe(
      'design',
    );
    const watched = everything(stack, ['loads.pull.failure.tsaiWu.ratio']);
    expect(pathOf(watched)).toBe('kernel');
    expect(pathOf(watched.replace('temperatureChange: -60 K', 'temperatureGradient: -60 K/mm'))).toBe('design');
    expect(pathOf(watched.replace('N: [60 kN/m, 10 kN/m, 5 kN/m]', 'strain: [0.1 %, 0, 0]'))).toBe('design');
  });
});
