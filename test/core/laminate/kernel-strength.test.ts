import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allocateBatch,
  type Criterion,
  evaluateBatch,
  failure,
  failureCriteria,
  type Laminate,
  LOAD_STRIDE,
  laminate,
  makeQbarTable,
  makeStrengthTable,
} from '../../../packages/core/src/laminate/index.js';
import { evenly, expectNear, graphite, plyOf, problemCode } from './plies.js';

/** Invented: strengths of a carbon and of a glass ply, and a core that cannot break. */
const materials = [
  { ...graphite, strengths: { Xt: 1500e6, Xc: 1200e6, Yt: 40e6, Yc: 240e6, S: 68e6 } },
  {
    E1: 39e9,
    E2: 8.6e9,
    G12: 3.8e9,
    nu12: 0.28,
    expansion: { alpha1: 7e-6, alpha2: 21e-6 },
    strengths: { Xt: 1080e6, Xc: 620e6, Yt: 39e6, Yc: 128e6, S: 89e6 },
  },
  { E1: 6e7, E2: 6e7, G12: 2.3e7, nu12: 0.3, expansion: { alpha1: 40e-6, alpha2: 40e-6 }, core: true },
] as const;
const angles = [0, 15, -30, 45, -45, 60, 90];

/** Laminates as rows of the table: material i at angle j is row i x angles + j. */
const anyRows = fc.array(fc.nat(materials.length * angles.length - 1), { minLength: 1, maxLength: 8 });
const strongRows = anyRows.map((rows) => [...rows, 3]);
const component = evenly(-1e5, 1e5);
const anyLoad = fc
  .tuple(component, component, component, component, component, component)
  .map((load) => load.map((value, i) => (i < 3 ? value : value * 1e-3)));

const plyAt = (row: number) =>
  plyOf(materials[Math.floor(row / angles.length)]!, angles[row % angles.length]!, 1e-4 * (1 + (row % 3)));

const laminateOf = (rows: readonly number[]): Laminate => laminate(rows.map(plyAt));

function batchOf(
  stacks: readonly (readonly number[])[],
  criterion: Criterion,
  loads: readonly (readonly number[])[],
  temperatureChange?: readonly number[],
) {
  const strength = {
    table: makeStrengthTable(materials, angles, criterion),
    loads: Float64Array.from(loads.flat()),
    ...(temperatureChange === undefined ? {} : { temperatureChange: Float64Array.from(temperatureChange) }),
  };
  const plies = stacks.flat();
  const { batch, out } = allocateBatch(stacks.length, plies.length, makeQbarTable(materials, angles), strength);
  stacks.forEach((rows, k) => {
    batch.plyOffsets[k + 1] = batch.plyOffsets[k]! + rows.length;
  });
  batch.row.set(plies);
  batch.thickness.set(plies.map((row) => plyAt(row).thickness));
  return { batch, out: { ...out, ratio: out.ratio!, weakest: out.weakest! } };
}

const asLoad = ([Nx = 0, Ny = 0, Nxy = 0, Mx = 0, My = 0, Mxy = 0]: readonly number[]) =>
  ({ N: [Nx, Ny, Nxy], M: [Mx, My, Mxy] }) as const;

describe('the least strength ratio of the batch kernel', () => {
  it.each(failureCriteria)('is that of `failure` for every laminate, load and temperature, by %s', (criterion) => {
    fc.assert(
      fc.property(
        fc.array(strongRows, { minLength: 1, maxLength: 3 }),
        fc.array(anyLoad, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(undefined, 0, -60, 25),
        (stacks, loads, change) => {
          const { batch, out } = batchOf(
            stacks,
            criterion,
            loads,
            change === undefined ? undefined : loads.map(() => change),
          );
          evaluateBatch(batch, out);
          stacks.forEach((rows, k) => {
            loads.forEach((load, l) => {
              const heat = change === undefined ? {} : { temperatureChange: change };
              const found = failure(laminateOf(rows), { ...asLoad(load), ...heat }, criterion);
              const [ratio, weakest] = [out.ratio[k * loads.length + l]!, out.weakest[k * loads.length + l]!];
              if (found.ratio === undefined) expect([ratio, weakest]).toEqual([Number.POSITIVE_INFINITY, -1]);
              else {
                expectNear([ratio], [found.ratio], 1e-9);
                const ply = found.perPly.find((one) => one.ply === Math.floor(weakest / 2) + 1);
                const face = weakest % 2 === 0 ? ply?.top : ply?.bottom;
                expectNear([face?.ratio ?? Number.NaN], [found.ratio], 1e-9);
              }
            });
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('depends on the laminate and the load alone, bit for bit: not on the place in the batch or what was there before', () => {
    fc.assert(
      fc.property(fc.array(strongRows, { minLength: 1, maxLength: 4 }), anyLoad, anyLoad, (stacks, one, other) => {
        const { batch, out } = batchOf(stacks, 'tsaiWu', [one, other], [0, -40]);
        out.ratio.fill(Number.NaN);
        out.weakest.fill(7);
        evaluateBatch(batch, out);
        stacks.forEach((rows, k) => {
          const alone = batchOf([rows], 'tsaiWu', [one, other], [0, -40]);
          evaluateBatch(alone.batch, alone.out);
          expect([...out.ratio.subarray(2 * k, 2 * k + 2)]).toEqual([...alone.out.ratio]);
          expect([...out.weakest.subarray(2 * k, 2 * k + 2)]).toEqual([...alone.out.weakest]);
        });
      }),
      { numRuns: 50 },
    );
  });

  it('falls as the load rises: R of twice the load is half, and all stiffness stays as without loads', () => {
    fc.assert(
      fc.property(strongRows, anyLoad, fc.constantFrom(...failureCriteria), (rows, load, criterion) => {
        const { batch, out } = batchOf([rows], criterion, [load, load.map((value) => 2 * value)]);
        evaluateBatch(batch, out);
        const [R = 0, half = 0] = out.ratio;
        if (R === Number.POSITIVE_INFINITY) expect(half).toBe(R);
        else expectNear([half], [R / 2], 1e-12);
        const { strength: _, ...bare } = batch;
        const alone = allocateBatch(1, rows.length, batch.qbarTable);
        evaluateBatch(bare, alone.out);
        expect([...alone.out.values]).toEqual([...out.values]);
      }),
      { numRuns: 50 },
    );
  });

  it('is Infinity with no face where nothing can break, and 0 where the laminate is not computed', () => {
    const core = 2 * angles.length;
    const { batch, out } = batchOf([[core], [0]], 'tsaiWu', [[1e4, 0, 0, 0, 0, 0]]);
    batch.row[1] = 999;
    evaluateBatch(batch, out);
    expect([...out.status]).toEqual([0, 1]);
    expect([...out.ratio]).toEqual([Number.POSITIVE_INFINITY, 0]);
    expect([...out.weakest]).toEqual([-1, -1]);
  });

  it('is 0 where the stress of cooling alone breaks a ply', () => {
    const { batch, out } = batchOf([[0, 6, 6, 0]], 'maxStress', [[1e3, 0, 0, 0, 0, 0]], [-2000]);
    evaluateBatch(batch, out);
    expect(out.ratio[0]).toBe(0);
    expect(out.weakest[0]).toBeGreaterThanOrEqual(0);
  });

  it('refuses arrays that are too short and criteria it does not know', () => {
    const { batch, out } = batchOf([[0, 6]], 'tsaiWu', [[1e3, 0, 0, 0, 0, 0]], [0]);
    const strength = batch.strength!;
    const { table } = strength;
    const { ratio: _, ...noRatio } = out;
    const short = [
      () => evaluateBatch({ ...batch, strength: { ...strength, loads: new Float64Array(LOAD_STRIDE + 1) } }, out),
      () => evaluateBatch({ ...batch, strength: { ...strength, temperatureChange: new Float64Array(0) } }, out),
      () =>
        evaluateBatch(
          { ...batch, strength: { ...strength, table: { ...table, stress: table.stress.subarray(1) } } },
          out,
        ),
      () => evaluateBatch({ ...batch, strength: { ...strength, table: { ...table, constants: [] } } }, out),
      () => evaluateBatch(batch, noRatio),
      () => evaluateBatch(batch, { ...out, weakest: new Int32Array(0) }),
    ];
    expect(short.map(problemCode)).toEqual(short.map(() => 'out-of-range'));
    const unknown = 'hope' as Criterion;
    expect(problemCode(() => makeStrengthTable(materials, angles, unknown))).toBe('not-a-choice');
    expect(
      problemCode(() =>
        evaluateBatch({ ...batch, strength: { ...strength, table: { ...table, criterion: unknown } } }, out),
      ),
    ).toBe('not-a-choice');
  });

  it('refuses loads, temperatures and materials that are not finite, heat on a material without expansion, and offsets that fall', () => {
    const load = [1e3, 0, 0, 0, 0, 0];
    const { batch, out } = batchOf([[0, 6]], 'tsaiWu', [load], [0]);
    const strength = batch.strength!;
    const evaluate = (changed: Partial<typeof batch>) => () => evaluateBatch({ ...batch, ...changed }, out);
    const { expansion: _, ...cold } = materials[0];
    const coldTable = makeStrengthTable([cold, ...materials.slice(1)], angles, 'tsaiWu');
    const heat = Float64Array.of(-10);
    expect(
      [
        evaluate({ strength: { ...strength, loads: Float64Array.from([Number.NaN, ...load.slice(1)]) } }),
        evaluate({ strength: { ...strength, loads: Float64Array.from([Number.POSITIVE_INFINITY, ...load.slice(1)]) } }),
        evaluate({ strength: { ...strength, temperatureChange: Float64Array.of(Number.NaN) } }),
        () => makeStrengthTable([{ ...materials[0], E1: Number.NaN }], [0], 'puck'),
        () => makeStrengthTable(materials, [Number.NaN], 'puck'),
        () => makeQbarTable([{ ...materials[0], E1: Number.NaN }], [0]),
        () => makeQbarTable(materials, [Number.POSITIVE_INFINITY]),
      ].map(problemCode),
    ).toEqual(Array(7).fill('not-a-number'));
    expect(problemCode(evaluate({ strength: { ...strength, table: coldTable, temperatureChange: heat } }))).toBe(
      'not-computable',
    );
    evaluateBatch({ ...batch, strength: { ...strength, table: coldTable } }, out);
    expect(out.ratio[0]).toBeGreaterThan(0);
    expect(problemCode(evaluate({ plyOffsets: Int32Array.of(2, 0) }))).toBe('out-of-range');
    expect(problemCode(evaluate({ plyOffsets: Int32Array.of(-1, 2) }))).toBe('out-of-range');
  });

  it('takes a part of a batch by a part of its offsets', () => {
    const load = [1e3, 200, 0, 1, 0, 0];
    const { batch, out } = batchOf(
      [
        [0, 6],
        [3, 4, 8],
      ],
      'puck',
      [load],
    );
    evaluateBatch(batch, out);
    const alone = batchOf([[3, 4, 8]], 'puck', [load]);
    evaluateBatch({ ...batch, plyOffsets: batch.plyOffsets.subarray(1) }, alone.out);
    expect(alone.out.ratio[0]).toBe(out.ratio[1]);
  });

  it('keeps no memory: a million laminates leave less than a byte each', () => {
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    const stacks = Array.from({ length: 1000 }, (_, k) => [0, 1, 2, 3].map((i) => (k * 7 + i * 5) % 14));
    const { batch, out } = batchOf(stacks, 'tsaiWu', [[1e4, 2e3, 1e3, 1, 2, 3]]);
    evaluateBatch(batch, out);
    collect();
    const before = process.memoryUsage();
    for (let run = 0; run < 1000; run++) evaluateBatch(batch, out);
    collect();
    const after = process.memoryUsage();
    expect(after.heapUsed - before.heapUsed).toBeLessThan(1e6);
    expect(after.arrayBuffers - before.arrayBuffers).toBeLessThan(1e6);
  });
});
