import { fail } from '../../problem/index.js';
import type { FaceStiffness } from './face.js';
import type { SandwichParts } from './find-core.js';

/** Bending stiffness, N m, and shear stiffness, N/m, of a sandwich along one direction as its faces are taken thin or thick. */
export interface AllenStiffness {
  /** Distance of the neutral planes of the faces, m: that of their mid-planes when each face is symmetric in itself. */
  readonly d: number;
  /** Both faces about the common neutral plane: E1 t1 E2 t2 d²/(E1 t1 + E2 t2), which is E t d²/2 for equal faces. */
  readonly apart: number;
  /** The faces about their own neutral planes, E t³/12 each with the modulus in bending. */
  readonly local: number;
  /** The core about its own, Ec c³/12. */
  readonly core: number;
  /** All three. */
  readonly D: number;
  /** Gc d²/c. */
  readonly S: number;
}

/**
 * Limits of the assumptions, each fulfilled above 100: then the faces' own bending stiffness, or that of the core, is less than a per cent of the
 * faces' about the common neutral plane - of faces that are alike, and homogeneous through their thickness. For laminated faces
 * `difference` tells how far the formula is off.
 */
export interface AllenCriteria {
  /** 3 (d/t)² of the thicker face, d between the mid-planes. */
  readonly thinFaces: number;
  /** 6 Ef t d²/(Ec c³) of the softer face. */
  readonly weakCore: number;
}

/** The value above which the assumption of thin faces, or that of a weak core, costs less than a per cent with homogeneous faces. */
export const thinFaceWeakCoreLimit = 100;

/**
 * Stiffness of a sandwich along one direction by hand-book theory: the faces act at their neutral planes with their moduli held from
 * bending, and bend about these planes with their moduli in bending.
 *
 * @param Ec, Gc of the core in that direction, Pa
 * @source Allen 1969, ch. 2
 */
export function allenStiffness(
  { tool, core, bag }: SandwichParts,
  faces: readonly [tool: FaceStiffness, bag: FaceStiffness],
  { Ec, Gc }: { readonly Ec: number; readonly Gc: number },
): AllenStiffness {
  const c = core.thickness;
  const d = c + (tool.thickness + bag.thickness) / 2 + faces[1].neutral - faces[0].neutral;
  const [k1, k2] = [faces[0].membrane * tool.thickness, faces[1].membrane * bag.thickness];
  const apart = (k1 * k2 * d * d) / (k1 + k2);
  const local = (faces[0].bending * tool.thickness ** 3 + faces[1].bending * bag.thickness ** 3) / 12;
  const inCore = (Ec * c ** 3) / 12;
  return { d, apart, local, core: inCore, D: apart + local + inCore, S: (Gc * d * d) / c };
}

/** The two criteria along one direction. @source Allen 1969, ch. 2 */
export function allenCriteria(
  { tool, core, bag }: SandwichParts,
  faces: readonly [tool: FaceStiffness, bag: FaceStiffness],
  Ec: number,
): AllenCriteria {
  const c = core.thickness;
  const d = c + (tool.thickness + bag.thickness) / 2;
  const softer = Math.min(faces[0].membrane * tool.thickness, faces[1].membrane * bag.thickness);
  return {
    thinFaces: 3 * (d / Math.max(tool.thickness, bag.thickness)) ** 2,
    weakCore: (6 * softer * d * d) / (Ec * c ** 3),
  };
}

/** Share by which the hand-book D may depart from that of the laminate and still be trusted. */
export const handBookTolerance = 0.01;

/** Sandwich beam or wide strip on two supports under a half sine wave of load. */
export interface SandwichSpan {
  /** m */
  readonly span: number;
  /** Pa at mid-span. */
  readonly pressure: number;
}

/**
 * Deflection at mid-span under p sin(π x/span), thin faces and thick ones.
 *
 * Thin: p/(k⁴ D) + p/(k² S) with k = π/span. Thick: the faces' own stiffness Dl also resists the shear deflection; with D0 = D - Dl and
 * θ = k² D0/S, p (1 + θ)/(k⁴ (D0 + Dl (1 + θ))).
 *
 * @returns m
 * @throws out-of-range when span or pressure is not finite, or the span not above 0; when D or S is not above 0, or the faces' own
 *   stiffness not from 0 to D
 * @source Allen 1969, ch. 2
 */
export function allenDeflection(
  { D, local, S }: AllenStiffness,
  { span, pressure: p }: SandwichSpan,
): { readonly thinFaces: number; readonly thickFaces: number } {
  if (!(span > 0 && Number.isFinite(span) && Number.isFinite(p))) {
    fail({
      code: 'out-of-range',
      message: `the span is ${span} m and the pressure ${p} Pa`,
      allowed: 'a finite span above 0 and a finite pressure',
    });
  }
  demandStiffness(D, local, S);
  const k2 = (Math.PI / span) ** 2;
  const theta = (k2 * (D - local)) / S;
  return {
    thinFaces: p / (k2 * k2 * D) + p / (k2 * S),
    thickFaces: (p * (1 + theta)) / (k2 * k2 * (D - local + local * (1 + theta))),
  };
}

/** A sandwich without stiffness bends without limit. */
function demandStiffness(D: number, local: number, S: number): void {
  if (!(D > 0 && Number.isFinite(D))) {
    fail({ code: 'out-of-range', message: `D = ${D} N m`, allowed: 'a finite bending stiffness above 0' });
  }
  if (!(S > 0 && Number.isFinite(S))) {
    fail({ code: 'out-of-range', message: `S = ${S} N/m`, allowed: 'a finite shear stiffness above 0' });
  }
  if (!(local >= 0 && local <= D)) {
    fail({
      code: 'out-of-range',
      message: `local = ${local} N m`,
      allowed: `bending stiffness of the faces about themselves from 0 to D = ${D} N m`,
    });
  }
}
