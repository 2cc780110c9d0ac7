import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curedShape, respond, type Vector3 } from '../../../packages/core/src/laminate/index.js';
import { evenly, graphite, stackOf } from './plies.js';

const bare = { notes: [], sources: [] };
const shape = (curvature: Vector3) => curedShape({ curvature, ...bare }, 1e-3);

describe('the cured shape', () => {
  it('is told by the signs and sizes of the principal curvatures', () => {
    expect(shape([0, 0, 0]).kind).toBe('flat');
    expect(shape([2, 0.1, 0]).kind).toBe('cylinder');
    expect(shape([2, 1, 0]).kind).toBe('dome');
    expect(shape([2, -1, 0]).kind).toBe('saddle');
    expect(shape([0.01, -0.01, 2]).kind).toBe('twist');
    expect(shape([1, 1, 2]).kind).toBe('cylinder');
  });

  it('of [0/90] that cools is a saddle along x and y, of [45/-45] a twist, of [0/90]s flat', () => {
    const cooled = (code: string) => respond(stackOf(graphite, code, 0.125e-3), { temperatureChange: -100 });
    const saddle = curedShape(cooled('[0/90]'), 0.25e-3);
    expect(saddle.kind).toBe('saddle');
    expect(saddle.principal[0]).toBeCloseTo(-saddle.principal[1], 9);
    expect(Math.abs(saddle.direction) % 90).toBeCloseTo(0, 9);
    expect(saddle.notes.some(({ source }) => source === 'hyer-1981')).toBe(true);
    expect(curedShape(cooled('[45/-45]'), 0.25e-3).kind).toBe('twist');
    const flat = curedShape(cooled('[0/90]s'), 0.5e-3);
    expect(flat.kind).toBe('flat');
    expect(flat.riseOfThickness).toBeUndefined();
  });

  it('gives back the curvatures that were turned by the direction', () => {
    const any = evenly(-5, 5);
    fc.assert(
      fc.property(any, any, any, (kx, ky, kxy) => {
        const { principal, direction } = shape([kx, ky, kxy]);
        const [k1, k2] = principal;
        const [c, s] = [Math.cos((direction * Math.PI) / 180), Math.sin((direction * Math.PI) / 180)];
        expect(k1 * c * c + k2 * s * s).toBeCloseTo(kx, 9);
        expect(k1 * s * s + k2 * c * c).toBeCloseTo(ky, 9);
        expect(2 * (k1 - k2) * s * c).toBeCloseTo(kxy, 9);
        expect(Math.abs(k1)).toBeGreaterThanOrEqual(Math.abs(k2) * (1 - 1e-8));
        expect(direction).toBeGreaterThan(-90 - 1e-9);
        expect(direction).toBeLessThanOrEqual(90 + 1e-9);
      }),
    );
  });

  it('rises by the thickness over the length that it names: a shallow arc of radius 1/k', () => {
    const { riseOfThickness: L = 0, principal } = shape([2, -1, 0]);
    const R = 1 / principal[0];
    expect((R - Math.sqrt(R * R - (L * L) / 4)) / 1e-3).toBeCloseTo(1, 2);
  });
});
