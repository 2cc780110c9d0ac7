import { describe, expect, it } from 'vitest';
import { armOf, rowsAcross, simulatePeel } from '../../../packages/core/src/fracture/index.js';
import { laminate } from '../../../packages/core/src/laminate/index.js';
import { bridgingLaw, type Pattern, stitchType } from '../../../packages/core/src/stitch/index.js';
import { cloth, light, strong } from './coupon/support.js';

/**
 * The order of merit that workshops see when they pull small glass coupons apart - unstitched far below zigzag, whose threads break, below straight
 * rows, whose plies break, and more plies higher still (common practice, no source) - from mechanics alone. Inputs invented within usual ranges:
 * a cloth of 0.45 mm (moduli and strengths of the woven ply in reference-data/plies.json), a bond of 200 J/m² (woven glass/polyester at onset is recalled as
 * 150 to 350), a light sewing thread of 40 tex. Zigzag and straight differ in where their holes lie (half as many in rows half as far apart), in the
 * strength that their locks keep (0.5 and 0.6 of the thread: sharper bends), and in the lean of the zigzag's legs (15 degrees).
 */
const straight = {
  type: '301',
  lock: 0.6,
  lean: 0,
  pattern: { kind: 'parallel', pitch: 3e-3, rowSpacing: 5e-3 },
} as const;
const zigzag = {
  type: '304',
  lock: 0.5,
  lean: 15,
  pattern: { kind: 'zigzag', pitch: 3e-3, swing: 2.5e-3, rowSpacing: 5e-3 },
} as const;

interface Seam {
  readonly type: '301' | '304';
  readonly lock: number;
  readonly lean: number;
  readonly pattern: Pattern;
}

function pulled(plies: number, seam: Seam | undefined, { thread = light, toughness = 200 } = {}) {
  const half = laminate(Array.from({ length: plies }, () => cloth));
  const arm = armOf(half);
  const law =
    seam &&
    bridgingLaw({
      type: stitchType(seam.type),
      needleThread: thread,
      thickness: 2 * half.thickness,
      path: { angle: seam.lean },
      parameters: { anchorEfficiency: seam.lock },
    });
  const rows =
    seam === undefined || law === undefined
      ? []
      : rowsAcross({
          pattern: seam.pattern,
          growth: 'across',
          width: 0.025,
          from: 0.041,
          to: 0.08,
          origin: 0.045,
          curve: law,
          failure: law.failure,
        });
  const result = simulatePeel({
    arms: [arm, arm],
    width: 0.025,
    bondToughness: toughness,
    crackLength: 0.04,
    length: 0.085,
    rows,
  });
  return { ...result, toughness: Math.max(...[...result.resistance, ...result.events].map(({ byLoad }) => byLoad)) };
}

describe('two plies of glass, one on each side', () => {
  const plain = pulled(1, undefined);
  const sewn = pulled(1, zigzag);
  const rows = pulled(1, straight);

  it('part in the bond without stitches, in the thread with a zigzag, in the plies with straight rows', () => {
    expect(plain.verdict.first).toBe('bond');
    expect(sewn.verdict.first).toBe('threadAtCrack');
    expect(rows.verdict.first).toBe('arm');
  });

  it('hold more in that order: the zigzag more than twice, straight rows more than four times', () => {
    expect(sewn.toughness / plain.toughness).toBeGreaterThan(2);
    expect(rows.toughness / plain.toughness).toBeGreaterThan(4);
    expect(rows.peakForce).toBeGreaterThan(1.3 * sewn.peakForce);
  });

  it('keep that order by the places of the holes alone', () => {
    const alike = pulled(1, { ...zigzag, lock: straight.lock, lean: 0 });
    expect(alike.verdict.first).toBe('threadAtCrack');
    expect(alike.toughness / plain.toughness).toBeGreaterThan(3);
    expect(alike.toughness).toBeLessThan(0.9 * rows.toughness);
  });

  it('keep it over the usual range of the bond', () => {
    for (const toughness of [150, 350]) {
      const [none, zig, lines] = [undefined, zigzag, straight].map((seam) => pulled(1, seam, { toughness }));
      expect([none, zig, lines].map((one) => one!.verdict.first)).toEqual(['bond', 'threadAtCrack', 'arm']);
      expect(zig!.toughness).toBeGreaterThan(1.9 * none!.toughness);
      expect(lines!.toughness).toBeGreaterThan(zig!.toughness);
    }
  });

  it('lose it where the thread is so strong that plies break in either pattern', () => {
    expect(pulled(1, zigzag, { thread: strong }).verdict.first).toBe('arm');
  });
});

describe('more plies', () => {
  it('hold more, with the same seam and thread', () => {
    for (const seam of [zigzag, straight]) {
      const forces = [1, 2, 3].map((plies) => pulled(plies, seam).peakForce);
      expect(forces[1]! / forces[0]!).toBeGreaterThan(1.5);
      expect(forces[2]! / forces[1]!).toBeGreaterThan(1.2);
    }
  });

  it('hold more than ten times the unstitched bond where the thread lets them come to their own strength', () => {
    const three = pulled(3, straight, { thread: strong });
    expect(three.verdict.first).toBe('arm');
    expect(three.toughness / 200).toBeGreaterThan(10);
  });

  it('cannot hold more than the strength of their arms allows: E h ε²/3 and no ten times for two plies', () => {
    const arm = armOf(laminate([cloth]));
    const curvature = (2 * arm.failureStrain!.compression) / arm.thickness;
    const ceiling = arm.bendingStiffness * curvature ** 2;
    expect(pulled(1, straight, { thread: strong }).toughness / ceiling).toBeLessThan(1.1);
    expect(ceiling / 200).toBeLessThan(5);
  });
});
