import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../packages/core/src/design/index.js';
import { sensitivity } from '../../../packages/core/src/study/index.js';
import { problemsIn } from '../design/faults.js';
import { plate } from './designs.js';

const inputs = designInputs(plate);
const density = 'stitching.rows.penetrationDensity';
const thickness = 'laminates.plate.thickness';
const fraction = 'stitching.rows.arealFraction';

const codeOf = (run: () => unknown) => problemsIn(run)[0]!.code;

describe('sensitivities of a design', () => {
  const found = sensitivity(inputs, [density, thickness, fraction]);
  const of = (path: string) =>
    found.inputs.find((one) => one.path === path)!.responses.map(({ elasticity }) => elasticity);

  it('are the powers of closed forms, to the square of the step', () => {
    // 1/(p s); areal mass over fibre density and fibre fraction; n t/(rho p s).
    expect(of('stitching.rows.pitch')[0]).toBeCloseTo(-1, 3);
    expect(of('stitching.rows.rowSpacing')[2]).toBeCloseTo(-1, 3);
    expect(of('materials.cloth.fibreVolumeFraction')[1]).toBeCloseTo(-1, 3);
    expect(of('threads.thread.linearDensity')).toEqual([0, 0, expect.closeTo(1, 9)]);
    expect(of('threads.thread.density')[2]).toBeCloseTo(-1, 3);
  });

  it('are central differences: the error falls with the square of the step', () => {
    const error = (step: number) =>
      Math.abs(1 + sensitivity(inputs, [density], { step }).inputs[0]!.responses[0]!.elasticity);
    expect(error(0.02) / error(0.01)).toBeCloseTo(4, 2);
  });

  it('rank the inputs by their largest elasticity', () => {
    const largest = found.inputs.map(({ responses }) => Math.max(...responses.map((one) => Math.abs(one.elasticity))));
    expect(largest).toEqual([...largest].sort((a, b) => b - a));
  });

  it('name the inputs that move nothing', () => {
    const { idle, inputs: moving } = sensitivity(inputs, [density]);
    expect(idle).toContain('materials.cloth.fibreVolumeFraction');
    expect(moving.map(({ path }) => path)).toEqual(['stitching.rows.pitch', 'stitching.rows.rowSpacing']);
  });

  it('count the number of a needle as the width of its blade, which holes follow where no width is given', () => {
    const text = plate.replace('pitch:', 'needle: 110, pitch:');
    const { inputs: moving, idle } = sensitivity(designInputs(text), [density, 'stitching.rows.needleDiameter']);
    expect(moving.find(({ path }) => path === 'stitching.rows.needle')!.responses[1]!.elasticity).toBeCloseTo(1, 9);
    expect(idle).not.toContain('stitching.rows.needle');
    const net = sensitivity(designInputs(text), ['stitching.rows.netWidth']);
    // Net width 1 - d/p, a blade 1.1 mm wide every 4 mm.
    const needle = net.inputs.find(({ path }) => path === 'stitching.rows.needle')!;
    expect(needle.responses[0]!.elasticity).toBeCloseTo(-(1.1 / 4) / (1 - 1.1 / 4), 9);
  });

  it('do not move numbers that name or count something, and list them apart', () => {
    const text = plate.replace('pitch:', 'strandsInNeedle: 2, pitch:');
    const { inputs: moving, idle, nominal, fixed } = sensitivity(designInputs(text), [density]);
    expect(nominal).toEqual(expect.arrayContaining(['stitching.rows.stitchType', 'stitching.rows.strandsInNeedle']));
    const others = [...moving.map(({ path }) => path), ...idle, ...fixed.map(({ path }) => path)];
    for (const path of nominal) expect(others).not.toContain(path);
  });

  it('leave out words and targets, and say what they could not move', () => {
    const all = [...found.inputs.map(({ path }) => path), ...found.idle];
    expect(all).not.toContain('title');
    expect(all.some((path) => path.startsWith('targets'))).toBe(false);
    const loaded = designInputs(`${plate}loads:\n  pull: { laminate: plate, M: [40 N, 0 N, 5 N] }\n`);
    expect(sensitivity(loaded, [density]).fixed).toEqual([{ path: 'loads.pull.M.1', why: 'is zero' }]);
  });

  it('take a step of its own for an input', () => {
    const one = sensitivity(inputs, [density], { steps: { 'stitching.rows.pitch': 0.1 } });
    const pitch = one.inputs.find(({ path }) => path === 'stitching.rows.pitch')!;
    expect(pitch.step).toBe(0.1);
    expect(pitch.responses[0]!.low * 0.9).toBeCloseTo(pitch.responses[0]!.high * 1.1, 6);
  });

  it('move an input with a tolerance by its standard deviation', () => {
    const text = `${plate}tolerances:\n  - { input: stitching.rows.pitch, relative: 10 % }\n`;
    const pitch = sensitivity(designInputs(text), [density]).inputs.find(
      ({ path }) => path === 'stitching.rows.pitch',
    )!;
    // The ends of a normal range are two standard deviations from the middle.
    expect(pitch.step).toBeCloseTo(0.05, 12);
    expect(pitch.responses[0]!.low * 0.95).toBeCloseTo(pitch.responses[0]!.high * 1.05, 6);
  });

  it('refuse a step that is none, no quantity, and one that is not there', () => {
    expect(codeOf(() => sensitivity(inputs, [density], { step: 1e-7 }))).toBe('out-of-range');
    expect(codeOf(() => sensitivity(inputs, [density], { steps: { a: 0.6 } }))).toBe('out-of-range');
    expect(codeOf(() => sensitivity(inputs, []))).toBe('out-of-range');
    expect(codeOf(() => sensitivity(inputs, ['laminates.plate.thikness']))).toBe('unknown-name');
  });
});
