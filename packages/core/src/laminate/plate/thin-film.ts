import type { Note } from '../../provenance/index.js';
import { entry, largest } from '../matrix3.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Matrix3, Stiffness } from '../types.js';
import { reducedBending } from './plate.js';

/** Shares of the stiffness in the plane and of the bending stiffness above which the plies are no thin film (assumed, no source). */
const thin = { stretching: 0.2, bending: 0.1 };

/**
 * What a blister supposes of the plies that buckle and of those that do not, with how far the laminate is from it.
 *
 * @param base the plies on the other side of the delamination, when they are known
 * @throws not-admissible as `stiffness`
 */
export function thinFilmNotes(film: Stiffness, base: Laminate | undefined): Note[] {
  const assumption: Note = {
    level: 'assumption',
    text: 'Thin film: the plies that buckle are thin beside the rest of the laminate, which stays flat and keeps its strain.',
    source: 'chai-babcock-knauss-1981',
  };
  if (base === undefined) return [assumption];
  const under = stiffness(base);
  const stretching = Math.max(...[0, 1].map((i) => entry(film.A, i, i) / (entry(film.A, i, i) + entry(under.A, i, i))));
  const [filmD, underD] = [bendingOf(film), bendingOf(under)];
  const bending = Math.max(...[0, 1].map((i) => entry(filmD, i, i) / entry(underD, i, i)));
  const size = `up to ${percent(stretching)} of the stiffness in the plane, and up to ${percent(bending)} of the bending stiffness of the rest`;
  if (stretching <= thin.stretching && bending <= thin.bending)
    return [{ ...assumption, text: `${assumption.text} Here they have ${size}.` }];
  return [
    assumption,
    {
      level: 'warning',
      text: `The plies that buckle are no thin film: they have ${size}. The rest gives way with them, so they may buckle and grow earlier than computed.`,
    },
  ];
}

/** Whether bending and stretching are coupled. */
export const isUnsymmetric = ({ A, B, thickness }: Stiffness): boolean => largest(B) > 1e-9 * largest(A) * thickness;

/** Warns where D - B A⁻¹ B stands for a stack that is not symmetric. */
export function unsymmetricNotes(film: Stiffness): Note[] {
  if (!isUnsymmetric(film)) return [];
  return [
    {
      level: 'warning',
      text: 'The plies that buckle are not symmetric among themselves: D - B A⁻¹ B stands in for D, which puts buckling too early rather than too late.',
    },
  ];
}

const bendingOf = ({ A, B, D }: Stiffness): Matrix3 => reducedBending(A, B, D);

const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`;
