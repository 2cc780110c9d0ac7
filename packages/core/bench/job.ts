import { type InPlaneConstants, reducedStiffness } from '../src/material/index.js';

/** Random laminates of one material, every ply with an angle of a usual set and a thickness of its own. */
export interface Job {
  readonly material: InPlaneConstants;
  /** Plane-stress stiffness of the material, given to everyone. */
  readonly Q: readonly [number, number, number, number];
  readonly laminates: readonly { readonly angles: readonly number[]; readonly thicknesses: readonly number[] }[];
}

/**
 * What everyone must compute for a laminate, in one order: A, B, D (27), the 6x6 inverse (36), 7 constants in plane, 7 in bending, and the
 * least Tsai-Wu strength ratio of all faces of its plies under the load.
 */
export type Answer = number[];

/** The angles to choose from: every 15 degrees. */
export const angles = Array.from({ length: 12 }, (_, k) => 15 * k - 75);

/** Invented, Pa. */
export const strengths = { Xt: 1500e6, Xc: 1200e6, Yt: 50e6, Yc: 200e6, S: 70e6 };

/** Invented: Nx, Ny, Nxy (N/m), Mx, My, Mxy (N). */
export const load = [1e5, 2e4, 1e4, 10, 5, 2] as const;

/** Tsai-Wu strength ratio of a stress in ply axes, as one writes it. */
export function tsaiWuRatio(s1: number, s2: number, s12: number): number {
  const { Xt, Xc, Yt, Yc, S } = strengths;
  const [F11, F22] = [1 / (Xt * Xc), 1 / (Yt * Yc)];
  const F12 = -0.5 * Math.sqrt(F11 * F22);
  const a = F11 * s1 ** 2 + F22 * s2 ** 2 + s12 ** 2 / S ** 2 + 2 * F12 * s1 * s2;
  const b = (1 / Xt - 1 / Xc) * s1 + (1 / Yt - 1 / Yc) * s2;
  return (-b + Math.sqrt(b ** 2 + 4 * a)) / (2 * a);
}

/** Invented carbon/epoxy, a seeded choice of angles and thicknesses (0.1 to 0.3 mm): the same job in every run. */
export function makeJob(laminates: number, plies: number): Job {
  const random = seeded(plies);
  const material = { E1: 130e9, E2: 9e9, G12: 5e9, nu12: 0.3 };
  return {
    material,
    Q: reducedStiffness(material),
    laminates: Array.from({ length: laminates }, () => ({
      angles: Array.from({ length: plies }, () => angles[Math.floor(random() * angles.length)]!),
      thicknesses: Array.from({ length: plies }, () => 1e-4 * (1 + 2 * random())),
    })),
  };
}

/** A small linear congruential generator: the same numbers from the same seed on every machine. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
