import type { Ply } from '../material/index.js';

/** A ply with what its place in a pattern is judged by. */
export interface Layer {
  readonly ply: Ply;
  readonly thickness: number;
  readonly stiffness: readonly number[];
  readonly directions: readonly number[];
}

/** Whether two numbers agree to 1e-9 of a scale. */
export const near = (value: number, other: number, scale: number): boolean => Math.abs(value - other) <= 1e-9 * scale;

/** Signs that a stiffness row takes when the angle changes sign. */
export const flipped = [1, 1, -1, 1, -1, 1] as const;
/** Signs of the same angle. */
export const kept = [1, 1, 1, 1, 1, 1] as const;

/** Whether two plies are equally stiff, the other with the given signs. */
export function sameStiffness(one: Layer, other: Layer, signs: readonly number[]): boolean {
  const scale = Math.max(...one.stiffness.map(Math.abs));
  return one.stiffness.every((value, i) => near(value, (signs[i] ?? 1) * (other.stiffness[i] ?? 0), scale));
}

/** Whether two plies have the same thickness and heat expansion in their own axes. */
function sameKind(one: Layer, other: Layer): boolean {
  const [e, f] = [one.ply.expansion, other.ply.expansion];
  const scale = Math.max(...[e?.alpha1, e?.alpha2].map((a) => Math.abs(a ?? 0)));
  const expands =
    e === f ||
    (e !== undefined && f !== undefined && near(e.alpha1, f.alpha1, scale) && near(e.alpha2, f.alpha2, scale));
  return expands && near(one.thickness, other.thickness, one.thickness);
}

/** Whether two plies are the same but for their place. */
export function alike(layer: Layer, other: Layer | undefined): boolean {
  return other !== undefined && sameKind(layer, other) && sameStiffness(layer, other, kept);
}

/** Whether two plies are the same but for the sign of their angle. */
export function opposite(layer: Layer, other: Layer | undefined): boolean {
  return other !== undefined && sameKind(layer, other) && sameStiffness(layer, other, flipped);
}

/** Whether the other ply is this one turned by a right angle. */
export function crossed(layer: Layer, other: Layer | undefined): boolean {
  if (other === undefined || !sameKind(layer, other)) return false;
  const [q11 = 0, q12 = 0, , q22 = 0, , q66 = 0] = other.stiffness;
  return sameStiffness(layer, { ...other, stiffness: [q22, q12, 0, q11, 0, q66] }, kept);
}
