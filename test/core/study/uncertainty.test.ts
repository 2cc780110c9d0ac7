import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../packages/core/src/design/index.js';
import { uncertainInputs, uncertainty } from '../../../packages/core/src/study/index.js';
import { problemsIn, underlined } from '../design/faults.js';
import { plate } from './designs.js';

const withTolerances = (...lines: string[]) =>
  designInputs(`${plate}tolerances:\n${lines.map((line) => `  - ${line}\n`).join('')}`);
const codeOf = (run: () => unknown) => problemsIn(run)[0]!.code;

const density = 'stitching.rows.penetrationDensity';
const thickness = 'laminates.plate.thickness';
const threadMass = 'stitching.rows.threadMassPerArea';
const tex = '{ input: threads.thread.linearDensity, relative: 10 % }';
const pitch = '{ input: stitching.rows.pitch, plusMinus: 0.2 mm }';
const spacing = '{ input: stitching.rows.rowSpacing, plusMinus: 0.05 cm, distribution: uniform }';

describe('tolerances of a design', () => {
  it('become distributions in the unit of their input', () => {
    const found = uncertainInputs(
      withTolerances(
        tex,
        spacing,
        '{ input: stitching.rows.pitch, between: [3.8 mm, 4.5 mm], distribution: triangular }',
        '{ input: materials.cloth.fibreVolumeFraction, between: [40 %, 60 %], distribution: lognormal }',
      ),
    ).map(({ distribution }) => distribution);
    expect(found[0]).toEqual({ kind: 'normal', mean: 75, standardDeviation: 3.75 });
    expect(found[1]).toEqual({ kind: 'uniform', low: 4.5, high: 5.5 });
    expect(found[2]).toEqual({ kind: 'triangular', low: 3.8, likeliest: 4, high: 4.5 });
    expect(found[3]).toMatchObject({ kind: 'lognormal', median: expect.closeTo(Math.sqrt(2400), 9) });
    expect((found[3] as { logDeviation: number }).logDeviation).toBeCloseTo(Math.log(1.5) / 4, 12);
  });

  it.each([
    ['{ input: stitching.rows.pich, relative: 1 % }', 'unknown-name', 'stitching.rows.pich'],
    ['{ input: targets.0.atMost, relative: 1 % }', 'out-of-range', 'targets.0.atMost'],
    ['{ input: laminates.plate.stack, relative: 1 % }', 'not-a-number', 'laminates.plate.stack'],
    ['{ input: stitching.rows.pitch, plusMinus: 1 N }', 'unit-mismatch', '1 N'],
    ['{ input: stitching.rows.pitch, plusMinus: some }', 'not-a-number', 'some'],
    ['{ input: stitching.rows.pitch, plusMinus: -1 mm }', 'out-of-range', '-1 mm'],
    ['{ input: stitching.rows.pitch, between: [3 mm, 2 N] }', 'unit-mismatch', '2 N'],
  ])('%s is refused with %s at its place', (line, code, at) => {
    const [problem] = problemsIn(() => uncertainInputs(withTolerances(line)));
    expect([problem!.code, underlined(problem!)]).toEqual([code, at]);
  });

  it.each([
    [['{ input: stitching.rows.pitch }'], 'missing-key'],
    [['{ input: stitching.rows.pitch, relative: 1 %, plusMinus: 1 mm }'], 'contradiction'],
    [['{ input: stitching.rows.pitch, between: [5 mm, 3 mm] }'], 'contradiction'],
    [['{ input: stitching.rows.pitch, between: [-5 mm, 3 mm], distribution: lognormal }'], 'out-of-range'],
    [[pitch, pitch], 'contradiction'],
  ])('%s is refused with %s', (lines, code) => {
    expect(codeOf(() => uncertainInputs(withTolerances(...lines)))).toBe(code);
  });
});

describe('uncertainty of a design', () => {
  const inputs = withTolerances(tex, pitch, spacing);
  const found = uncertainty(inputs, [density, threadMass], { samples: 2000 });
  const [d, m] = found.quantities;

  it('agrees with closed-form moments of 1/(p s)', () => {
    // Means of 1/p of a narrow normal p (to the fourth moment) and of 1/s of a uniform s, which are independent.
    const cv = 0.1 / 4;
    const meanOverPitch = (1 + cv ** 2 + 3 * cv ** 4) / 4e-3;
    const meanOverSpacing = Math.log(5.5 / 4.5) / 1e-3;
    const squareOverPitch = (1 + 3 * cv ** 2 + 15 * cv ** 4) / 4e-3 ** 2;
    const squareOverSpacing = 1 / (4.5e-3 * 5.5e-3);
    const mean = meanOverPitch * meanOverSpacing;
    const deviation = Math.sqrt(squareOverPitch * squareOverSpacing - mean ** 2);
    const { mean: sampled, standardDeviation } = d!.summary;
    expect(Math.abs(sampled.value - mean)).toBeLessThan(4 * sampled.standardError);
    expect(Math.abs(standardDeviation.value - deviation)).toBeLessThan(4 * standardDeviation.standardError);
    expect(d!.linear.standardDeviation / deviation).toBeCloseTo(1, 1);
    expect(d!.linear.mean).toBeCloseTo(1 / (4e-3 * 5e-3), 6);
  });

  it('is exact where the quantity is proportional to a normal input', () => {
    const { quantities } = uncertainty(withTolerances(tex), [threadMass], { samples: 2000 });
    const { linear, summary, nominal } = quantities[0]!;
    expect(linear.standardDeviation / nominal).toBeCloseTo(0.05, 9);
    const { standardDeviation } = summary;
    expect(Math.abs(standardDeviation.value - 0.05 * nominal)).toBeLessThan(4 * standardDeviation.standardError);
    const above = summary.percentiles.find(({ share }) => share === 0.95)!;
    expect(above.range!.low).toBeLessThan(nominal * (1 + 1.644854 * 0.05));
    expect(above.range!.high).toBeGreaterThan(nominal * (1 + 1.644854 * 0.05));
  });

  it('names the input that causes the spread, and gives none to one that does nothing', () => {
    // Variances of ln: tex 0, pitch (0.025)², spacing (0.1)²/3 at first order.
    const shares = d!.linear.effects.map(({ share }) => share);
    const [p, s] = [0.025 ** 2, 0.1 ** 2 / 3];
    expect(shares[0]).toBeCloseTo(0, 12);
    expect(shares[1]).toBeCloseTo(p / (p + s), 2);
    expect(d!.causes[0]!.low).toBeLessThan(0);
    expect(d!.causes[0]!.high).toBeGreaterThan(0);
    expect(Math.abs(d!.causes[2]!.value - s / (p + s))).toBeLessThan(0.06);
    const t = 0.05 ** 2;
    expect(Math.abs(m!.causes[0]!.value - t / (t + p + s))).toBeLessThan(0.06);
  });

  it('takes round-off for no scatter', () => {
    const { quantities, notes } = uncertainty(withTolerances(pitch), ['laminates.plate.inPlane.Ex'], { samples: 100 });
    const [still] = quantities;
    expect(still!.summary.standardDeviation.value).toBe(0);
    expect(still!.linear.standardDeviation).toBe(0);
    expect(still!.causes[0]).toEqual({ value: 0, low: 0, high: 0 });
    expect(notes.filter(({ text }) => /bent|not enough/.test(text))).toEqual([]);
    // Thickness does not move a modulus, but changes its last digits.
    const thicker = uncertainty(
      designInputs(`format: 1
title: Plies
materials:
  ud: { kind: ply, E1: 181 GPa, E2: 10.3 GPa, G12: 7.17 GPa, nu12: 0.28, thickness: 0.125 mm }
laminates:
  skin: { material: ud, stack: "[0/±45/90]s" }
tolerances:
  - { input: materials.ud.thickness, relative: 5 % }
`),
      ['laminates.skin.inPlane.Ex'],
      { samples: 100 },
    );
    expect(thicker.quantities[0]!.summary.standardDeviation.value).toBe(0);
    expect(thicker.quantities[0]!.convergence.settled).toBe(true);
  });

  it('warns of a range that leaves the value of the design out', () => {
    const off = '{ input: stitching.rows.pitch, between: [5 mm, 6 mm], distribution: uniform }';
    const { notes } = uncertainty(withTolerances(off), [density], { samples: 100 });
    expect(notes.some(({ level, text }) => level === 'warning' && text.includes('stitching.rows.pitch'))).toBe(true);
  });

  it('gives the same bits for the same seed and others for another', () => {
    const [one, again, other] = [1, 1, 2].map((seed) => uncertainty(inputs, [density], { samples: 200, seed }));
    expect(again).toEqual(one);
    expect(other!.quantities[0]!.summary.mean.value).not.toBe(one!.quantities[0]!.summary.mean.value);
  });

  it('says how likely a target is met', () => {
    const { targets, allMet } = uncertainty(
      withTolerances('{ input: materials.cloth.fibreVolumeFraction, between: [44 %, 50 %], distribution: uniform }'),
      [thickness],
      { samples: 2000 },
    );
    // Eight cloths of 300 g/m² of a fibre of the library: thickness = 8 w/(rho Vf), below 2 mm above a fibre fraction.
    const nominal = uncertainty(withTolerances(pitch), [thickness], { samples: 100 }).quantities[0]!.nominal;
    const least = (nominal * 0.5) / 2e-3;
    const exact = (0.5 - least) / 0.06;
    expect(targets[0]!.probability.low).toBeLessThan(exact);
    expect(targets[0]!.probability.high).toBeGreaterThan(exact);
    expect(allMet).toEqual(targets[0]!.probability);
  });

  it('leaves out a few samples that cannot be computed and says so, and stops at many', () => {
    const few = '{ input: materials.cloth.fibreVolumeFraction, between: [60 %, 75.1 %], distribution: uniform }';
    const { failed, notes } = uncertainty(withTolerances(few), [thickness], { samples: 2000 });
    expect(failed).toBeGreaterThan(0);
    expect(notes.some(({ text }) => text.includes('could not be computed'))).toBe(true);
    const many = '{ input: materials.cloth.fibreVolumeFraction, between: [60 %, 90 %], distribution: uniform }';
    expect(codeOf(() => uncertainty(withTolerances(many), [thickness], { samples: 200 }))).toBe('not-computable');
  });

  it('needs tolerances, a quantity and enough samples', () => {
    expect(codeOf(() => uncertainty(designInputs(plate), [density]))).toBe('missing-key');
    expect(codeOf(() => uncertainty(inputs, []))).toBe('out-of-range');
    expect(codeOf(() => uncertainty(inputs, [density], { samples: 50 }))).toBe('out-of-range');
    expect(codeOf(() => uncertainty(inputs, ['stitching.rows.nothing']))).toBe('unknown-name');
  });
});
