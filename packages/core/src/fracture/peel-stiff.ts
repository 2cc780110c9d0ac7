import type { Note } from '../provenance/index.js';
import type { PeelSpecimen } from './peel-specimen.js';
import type { SpecimenState } from './types.js';

/**
 * Bending lengths √(EI b/P) in a free arm. The shape of an arm depends on their number only (a cantilever under P a²/EI b, its square; Bisshopp & Drucker
 * 1945, recalled): with one its end turns by 26° and has gone 0.3 of its length aside, where straight beams still nearly hold; with two
 * it turns by 56°, and 2 P/b is 1/(1 - cos 56°) = 2.3 times what the load amounts to.
 */
const asBeam = 1;
const upright = 2;

/** Warns of arms that stay too straight all the way to be peeled. */
export function stiffArmsNote({ arms, width }: PeelSpecimen, states: readonly SpecimenState[]): readonly Note[] {
  const stiffness = Math.max(...arms.map(({ bendingStiffness }) => bendingStiffness)) * width;
  const bend = ({ load }: SpecimenState): number => Math.sqrt(stiffness / load);
  const loaded = states.filter(({ load }) => load > 0);
  const best = loaded.reduce<SpecimenState | undefined>(
    (most, one) => (most === undefined || one.crackLength / bend(one) > most.crackLength / bend(most) ? one : most),
    undefined,
  );
  if (best === undefined || best.crackLength >= upright * bend(best)) return [];
  const [length, free] = [bend(best), best.crackLength].map((one) => `${Number((one * 1000).toPrecision(2))} mm`);
  const source = 'bisshopp-drucker-1945';
  const text =
    best.crackLength < asBeam * bend(best)
      ? `The arms are too stiff to be peeled: their bending length √(EI b/P) is at least ${length}, the free arm ${free}. Arms shorter than one bending length open like a double cantilever beam instead of standing up in a T, and 2 P/b would far overstate the toughness: predict and test them as type dcb.`
      : `The free arms are short for a peel: their bending length √(EI b/P) is at least ${length}, the free arm ${free}. Up to some ${upright} bending lengths they do not stand up in a T, and 2 P/b reads more than twice the toughness: start from a longer crack, or read G = (2 P/b)(1 - cos θ) with the angle θ by which the ends turn.`;
  return [{ level: 'warning', text, source }];
}
