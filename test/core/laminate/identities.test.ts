import fc from 'fast-check';
import { describe, it } from 'vitest';
import {
  type Laminate,
  laminate,
  type PlyPoint,
  type Response,
  respond,
  type Vector3,
} from '../../../packages/core/src/laminate/index.js';
import { anyAngle, anyLaminate, evenly, expectNear, turned } from './plies.js';

// Identities of the response that hold for every stack and every load, whatever the library computes along the way.

const dot = (p: readonly number[], q: readonly number[]): number => p.reduce((sum, value, i) => sum + value * q[i]!, 0);
const size = (p: readonly number[], q: readonly number[]): number => dot(p.map(Math.abs), q.map(Math.abs));

const three = fc.tuple(evenly(-1, 1), evenly(-1, 1), evenly(-1, 1));

interface Forces {
  readonly N: Vector3;
  readonly M: Vector3;
}

/** Forces and moments of sizes at which a thin laminate stretches and bends alike. */
const forcesOn = ({ thickness: h }: Laminate, n: Vector3, m: Vector3): Forces => ({
  N: n.map((value) => value * 1e5) as unknown as Vector3,
  M: m.map((value) => value * 1e5 * h) as unknown as Vector3,
});

/** Swelling strains that differ along and across the fibre, put into every ply. */
const wet = ({ plies }: Laminate): Laminate =>
  laminate(plies.map((ply) => ({ ...ply, moistureExpansion: { beta1: 0.02, beta2: 0.4 } })));

/** The integral through the thickness of what is quadratic in z inside each ply, by Simpson's rule: exact. */
const through = (r: Response, of: (point: PlyPoint, ply: number) => number): number =>
  r.plies.reduce(
    (sum, { top, middle, bottom }, k) =>
      sum + ((bottom.z - top.z) / 6) * (of(top, k) + 4 * of(middle, k) + of(bottom, k)),
    0,
  );

describe('energy', () => {
  it('of the plies, half stress times strain in their own axes, is half N·ε + M·κ', () => {
    fc.assert(
      fc.property(anyLaminate, three, three, (stack, n, m) => {
        const { N, M } = forcesOn(stack, n, m);
        const r = respond(stack, { N, M });
        const stored = through(r, ({ stress12, mechanicalStrain12 }) => dot(stress12, mechanicalStrain12) / 2);
        const work = (dot(N, r.strain) + dot(M, r.curvature)) / 2;
        expectNear([stored], [work], 1e-10, size(N, r.strain) + size(M, r.curvature) + 1e-300);
      }),
    );
  });

  it('is the work of the resultants on the whole deformation, with heat, moisture and held strains too', () => {
    fc.assert(
      fc.property(anyLaminate, three, three, fc.integer({ min: -150, max: 150 }), (each, n, m, temperatureChange) => {
        const stack = wet(each);
        const { N, M } = forcesOn(stack, n, m);
        for (const load of [
          { N, M },
          { N, curvature: [0, 0, 0] as const },
          { strain: [1e-3, null, null] as const, M },
        ]) {
          const r = respond(stack, { ...load, temperatureChange, temperatureGradient: 2000, moisture: 0.01 });
          const inner = through(r, ({ stress, strain }) => dot(stress, strain));
          // Where free strain is all there is, stress is what is left of this.
          const peak = through(r, ({ strain12 }, k) => stack.plies[k]!.E1 * size(strain12, strain12));
          expectNear([inner], [dot(r.N, r.strain) + dot(r.M, r.curvature)], 1e-9, peak + 1e-300);
        }
      }),
    );
  });
});

describe('reciprocity', () => {
  it('of two loads: each does the same work on the deformation of the other (Betti)', () => {
    fc.assert(
      fc.property(anyLaminate, three, three, three, three, (stack, n, m, p, q) => {
        const [one, other] = [forcesOn(stack, n, m), forcesOn(stack, p, q)];
        const [r, s] = [respond(stack, one), respond(stack, other)];
        const scale = size(one.N, s.strain) + size(one.M, s.curvature) + 1e-300;
        expectNear(
          [dot(one.N, s.strain) + dot(one.M, s.curvature)],
          [dot(other.N, r.strain) + dot(other.M, r.curvature)],
          1e-9,
          scale,
        );
      }),
    );
  });

  it('of a load and heat: N·ε + M·κ of the heat is the stress of the load on the free strain of every ply', () => {
    fc.assert(
      fc.property(anyLaminate, three, three, fc.integer({ min: -150, max: 150 }), (stack, n, m, change) => {
        const { N, M } = forcesOn(stack, n, m);
        const loaded = respond(stack, { N, M });
        const heated = respond(stack, { temperatureChange: change });
        const onFree = through(loaded, ({ stress12 }, k) => {
          const { alpha1, alpha2 } = stack.plies[k]!.expansion!;
          return (stress12[0] * alpha1 + stress12[1] * alpha2) * change;
        });
        const peak = through(loaded, ({ stress12 }, k) => {
          const { alpha1, alpha2 } = stack.plies[k]!.expansion!;
          return (Math.abs(stress12[0] * alpha1) + Math.abs(stress12[1] * alpha2)) * Math.abs(change);
        });
        const work = dot(N, heated.strain) + dot(M, heated.curvature);
        expectNear([work], [onFree], 1e-9, peak + size(N, heated.strain) + size(M, heated.curvature) + 1e-300);
      }),
    );
  });
});

describe('plies, load and axes turned together', () => {
  /** Tensors by the product R s Rᵀ, the shear of a strain halved: not by the double-angle or the c², s² forms. */
  const rotated = ([x, y, xy]: Vector3, degrees: number, shear: 1 | 2): number[] => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const R = [
      [c, -s],
      [s, c],
    ];
    const t = [
      [x, xy / shear],
      [xy / shear, y],
    ];
    const entry = (i: number, j: number): number =>
      [0, 1].reduce((sum, k) => sum + [0, 1].reduce((part, l) => part + R[i]![k]! * t[k]![l]! * R[j]![l]!, 0), 0);
    return [entry(0, 0), entry(1, 1), shear * entry(0, 1)];
  };

  it('leave every ply its stress and strain in its own axes, and turn the response with them', () => {
    fc.assert(
      fc.property(
        anyLaminate,
        three,
        three,
        anyAngle,
        fc.integer({ min: -150, max: 150 }),
        (each, n, m, by, temperatureChange) => {
          const stack = wet(each);
          const { N, M } = forcesOn(stack, n, m);
          const heat = { temperatureChange, temperatureGradient: 2000, moisture: 0.01 };
          const before = respond(stack, { N, M, ...heat });
          const turn = (v: Vector3) => rotated(v, by, 1) as unknown as Vector3;
          const after = respond(turned(stack, by), { N: turn(N), M: turn(M), ...heat });
          const strains = [...before.strain, ...before.curvature.map((value) => value * stack.thickness)];
          const scale = Math.max(...strains.map(Math.abs)) + 1e-300;
          expectNear(after.strain, rotated(before.strain, by, 2), 1e-9, scale);
          expectNear(after.curvature, rotated(before.curvature, by, 2), 1e-9, scale / stack.thickness);
          before.plies.forEach((ply, k) => {
            for (const face of ['top', 'middle', 'bottom'] as const) {
              const [old, now] = [ply[face], after.plies[k]![face]];
              expectNear(now.strain12, old.strain12, 1e-8, scale);
              // What hindered free strain would make of stress, which cancels in part.
              const peak = stack.plies[k]!.E1 * Math.max(scale, ...old.strain12.map(Math.abs));
              expectNear(now.stress12, old.stress12, 1e-8, 2 * peak);
            }
          });
        },
      ),
    );
  });
});
