import type { Note, SourceKey } from '../../provenance/index.js';
import type { Load } from '../load.js';
import type { ShearForces } from '../shear/index.js';
import type { AllenCriteria, AllenStiffness } from './allen.js';

/** Mean stress of a face along x and y, Pa, tension positive. */
export type FaceStress = readonly [x: number, y: number];

/** What a sandwich is checked under; without anything its limits alone are given. */
export interface SandwichOptions {
  /** Of face wrinkling; 0.5 when not given, 0.909 in theory. */
  readonly coefficient?: number;
  /** N/m, for the shear stress in the core. */
  readonly shear?: ShearForces;
  /** For the stress of the faces. */
  readonly load?: Load;
  /** Stress of the faces, in place of that under the load. */
  readonly faceStress?: { readonly tool?: FaceStress; readonly bag?: FaceStress };
}

/** Wrinkling of one face under compression along one direction. */
export interface Wrinkling {
  /** Modulus of the face in bending, Pa. */
  readonly faceModulus: number;
  /** Compression at which it wrinkles, Pa, positive: with the coefficient of the options, with that of theory, on a half space. */
  readonly stress: number;
  readonly inTheory: number;
  readonly deepCore: number;
  /** Depth to which the core moves, m. */
  readonly depth: number;
  /** Mean stress of the face where it is known, Pa. */
  readonly faceStress?: number;
  /** Wrinkling stress over the compression of the face; absent when it is not compressed or not known. */
  readonly ratio?: number;
}

/** A face of a sandwich, with the stress at which it wrinkles along x and y; m. */
export interface SandwichFace {
  readonly thickness: number;
  readonly x: Wrinkling;
  readonly y: Wrinkling;
}

/** The core of a sandwich; m, Pa. */
export interface SandwichCore {
  readonly thickness: number;
  /** Through the thickness, Pa. */
  readonly E: number;
  /** True where a ply of the core gives no modulus through its thickness, and that of its plane stands for it. */
  readonly modulusAssumed: boolean;
  /** Pa, in the planes xz and yz. */
  readonly Gx: number;
  readonly Gy: number;
  /** Pa */
  readonly shearStrength?: number;
}

/** Hand-book stiffness along one direction beside that of the laminate. */
export interface SandwichDirection {
  readonly allen: AllenStiffness;
  readonly criteria: AllenCriteria;
  /** The hand-book D over the bending stiffness of the laminate, 1/d11 or 1/d22, less 1. */
  readonly difference: number;
  /** Shear stiffness by equal energy (`transverseShear`), N/m. */
  readonly H: number;
}

/** Shear stress in the core under the given shear forces, Pa, both components together. */
export interface CoreShear {
  /** Largest in the core by equilibrium. */
  readonly stress: number;
  /** V/d, that of thin faces and a weak core, d between their neutral planes. */
  readonly nominal: number;
  /** Strength over stress, where a strength is given and a stress acts. */
  readonly ratio?: number;
}

interface Explained {
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** The laminate is no sandwich, and why. */
export interface NoSandwich extends Explained {
  readonly isSandwich: false;
  readonly reason: string;
}

/** Checks of a sandwich. */
export interface Sandwich extends Explained {
  readonly isSandwich: true;
  readonly core: SandwichCore;
  /** Distance of the mid-planes of the faces, m. */
  readonly d: number;
  readonly tool: SandwichFace;
  readonly bag: SandwichFace;
  readonly x: SandwichDirection;
  readonly y: SandwichDirection;
  readonly coreShear?: CoreShear;
}
