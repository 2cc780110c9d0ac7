import type { Ply } from '../material/index.js';
import type { Note, SourceKey } from '../provenance/index.js';

/** A stack of plies, first ply at the tool side (z = -thickness/2), last at the bag side. SI units. */
export interface Laminate {
  readonly plies: readonly Ply[];
  /** m */
  readonly thickness: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Three components in the order x, y, xy (or 1, 2, 12), shear as engineering strain. */
export type Vector3 = readonly [number, number, number];

/** Three by three, row-major, as plain arrays. */
export type Matrix3 = readonly [readonly number[], readonly number[], readonly number[]];

/** Engineering constants of a laminate; moduli in Pa. `etaxyx` is the shear strain per axial strain under stress along x. */
export interface EngineeringConstants {
  readonly Ex: number;
  readonly Ey: number;
  readonly Gxy: number;
  readonly nuxy: number;
  readonly nuyx: number;
  readonly etaxyx: number;
  readonly etaxyy: number;
}

/** Stiffness of a laminate and its inverse, about the mid-plane: N = A e + B k, M = B e + D k; e = a N + b M, k = bᵀ N + d M. */
export interface Stiffness {
  /** N/m */
  readonly A: Matrix3;
  /** N */
  readonly B: Matrix3;
  /** N m */
  readonly D: Matrix3;
  /** m/N */
  readonly a: Matrix3;
  /** 1/N; not symmetric in general. */
  readonly b: Matrix3;
  /** 1/(N m) */
  readonly d: Matrix3;
  /** m */
  readonly thickness: number;
  /** Condition number in the 1-norm of the stiffness scaled to one unit (A, B/t, D/t²). */
  readonly condition: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** State at one height of one ply. Stress in Pa; strain is the whole one, the free strain of heat and moisture included. */
export interface PlyPoint {
  /** m from the mid-plane, negative toward the tool side. */
  readonly z: number;
  /** Laminate axes x, y, xy. */
  readonly stress: Vector3;
  readonly strain: Vector3;
  /** Ply axes 1, 2, 12. */
  readonly stress12: Vector3;
  readonly strain12: Vector3;
  /** The part of `strain12` that stress makes: whole less free strain. */
  readonly mechanicalStrain12: Vector3;
}
