import { describe, expect, it } from 'vitest';
import { edgeDelamination } from '../../../../packages/core/src/laminate/edge/index.js';
import { respond } from '../../../../packages/core/src/laminate/index.js';
import { expectNear, graphite, stackOf } from '../plies.js';

/**
 * Energy of a beam of unit length and stiffness that wants the curvature -1 but may not go below a wall: clamped in the wall's line at 0,
 * free at 1. Cubic elements, each unknown in turn brought to the least energy, deflections kept from 0 on.
 */
function beamOverWall(elements: number): number {
  const h = 1 / elements;
  const element = [
    [12, 6 * h, -12, 6 * h],
    [6 * h, 4 * h * h, -6 * h, 2 * h * h],
    [-12, -6 * h, 12, -6 * h],
    [6 * h, 2 * h * h, -6 * h, 4 * h * h],
  ].map((row) => row.map((value) => value / h ** 3));
  const count = 2 * elements + 2;
  const K = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  for (let e = 0; e < elements; e++) {
    for (const [i, row] of element.entries()) {
      for (const [j, value] of row.entries()) K[2 * e + i]![2 * e + j]! += value;
    }
  }
  // ½ ∫ (w'' + 1)² = ½ w·K w + w'(1) + ½
  const load = new Array<number>(count).fill(0);
  load[count - 1] = 1;
  const w = new Array<number>(count).fill(0);
  for (let sweep = 0; sweep < 20_000; sweep++) {
    for (let i = 2; i < count; i++) {
      const rest = K[i]!.reduce((sum, value, j) => sum + (j === i ? 0 : value * w[j]!), load[i]!);
      const least = -rest / K[i]![i]!;
      w[i] = i % 2 === 0 ? Math.max(0, least) : least;
    }
  }
  const product = K.reduce((sum, row, i) => sum + w[i]! * row.reduce((inner, value, j) => inner + value * w[j]!, 0), 0);
  return product / 2 + w[count - 1]! + 0.5;
}

describe('parts of an edge that would bend into each other', () => {
  it('keep three quarters of the energy of lying flat on each other: a beam over a wall touches it at its end alone', () => {
    expectNear([beamOverWall(4) / 0.5], [0.75], 1e-8);
  });

  const stack = stackOf(graphite, '[90/45/-45/0]s', 1e-4);
  const at = (strain: number) => edgeDelamination(stack, { strain }).interfaces[2]!;

  it('do so when pulled or when compressed, not both: then G is that of free parts', () => {
    const [pulled, compressed] = [at(4e-3), at(-4e-3)];
    expect([pulled.single!.touches, compressed.single!.touches]).toEqual([true, false]);
    expect([pulled.pair!.touches, compressed.pair!.touches]).toEqual([true, false]);
    expect(compressed.single!.G).toBeGreaterThan(3 * pulled.single!.G);
    expectNear([pulled.single!.G], [pulled.single!.perSquare * 16e-6], 1e-9);
  });

  it('are told by the curvatures of the parts', () => {
    const curvature = (code: string) =>
      respond(stackOf(graphite, code, 1e-4), { strain: [4e-3, null, null], curvature: [0, null, 0] }).curvature[1];
    // Toward the edge a part with the larger curvature drops below the other.
    expect(curvature('[90/45/-45]')).toBeLessThan(curvature('[0/0/-45/45/90]'));
  });

  it('are told alike at an interface and its mirror image', () => {
    const found = edgeDelamination(stack, { strain: 4e-3 }).interfaces.map(({ single }) => single?.touches);
    expect(found).toEqual(found.toReversed());
    expect(found).toContain(true);
  });

  it('are named in a note, and only then', () => {
    const texts = (code: string, strain: number) =>
      edgeDelamination(stackOf(graphite, code, 1e-4), { strain })
        .notes.map(({ text }) => text)
        .join();
    expect(texts('[90/45/-45/0]s', 4e-3)).toContain('would bend into each other');
    expect(texts('[30/-30]s', 4e-3)).not.toContain('would bend into each other');
  });
});
