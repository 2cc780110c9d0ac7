import type { Ply } from '../../material/index.js';
import type { Laminate } from '../types.js';
import { layOf } from './lay.js';

/** What a failed ply loses: `matrix` by its mode, `total` all of its stiffness whatever the mode. */
export const discounts = ['matrix', 'total'] as const;

/** What a failed ply loses: `matrix` by its mode, `total` all of its stiffness whatever the mode. */
export type Discount = (typeof discounts)[number];

/** Condition of a ply: whole; its matrix cracked, its fibres whole; failed. */
export type Damage = 'whole' | 'cracked' | 'failed';

/**
 * A ply with what its damage leaves.
 *
 * Cracked: E2, G12 and ν12 times the factor, of a cloth, whose weft bears along 2, G12 and ν12 only; failed: E1, E2 and G12 times the factor. Either stays admissible, so that the
 * laminate stays positive definite. Expansion stays as it is.
 */
function discounted(ply: Ply, damage: Damage, factor: number): Ply {
  const { E1, E2, G12, nu12 } = ply;
  switch (damage) {
    case 'whole':
      return ply;
    case 'cracked':
      return {
        ...ply,
        E2: layOf(ply) === 'cloth' ? E2 : E2 * factor,
        G12: G12 * factor,
        nu12: nu12 * factor,
      };
    case 'failed':
      return { ...ply, E1: E1 * factor, E2: E2 * factor, G12: G12 * factor };
  }
}

/** A laminate with what the damage leaves of its plies. */
export const damaged = (laminate: Laminate, damage: readonly Damage[], factor: number): Laminate => ({
  ...laminate,
  plies: laminate.plies.map((ply, k) => discounted(ply, damage[k] ?? 'whole', factor)),
});
