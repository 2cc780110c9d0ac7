import type { Note } from '../../provenance/index.js';

/** Share of the crack length up to which an opening, and of the span up to which a deflection leaves beams straight enough. */
const straightOpening = 0.4;
const straightBending = 0.1;

/**
 * Toughness by load of straight levers over the true one, for two like arms opened by a share of the crack length: 1/F, F = 1 - 0.3 share², with
 * the lever of the bent arm shorter than the crack.
 *
 * @source iso-15024 (large-displacement correction, recalled); the elastica gives the same within 1 % up to a share of 1
 */
export function leverExcess(share: number): number {
  // Past a share of 1 the parabola leaves the elastica; the value there is then a lower bound.
  return 1 / (1 - 0.3 * Math.min(share, 1) ** 2);
}

/** True energy release at the tip of two like arms held open by a share of the crack length, over that of straight ones: 1 + share²/4, of the elastica within 2 % up to a share of 0.8. */
export function heldOpenRelease(share: number): number {
  return 1 + share ** 2 / 4;
}

/** True toughness over that by load of a straight beam deflected by a share of its span: about 1 + 20 share², for cracks of half the half span on supports without friction. */
export function bentRelease(share: number): number {
  return 1 + 20 * share ** 2;
}

const percent = (ratio: number): string => `${(100 * (ratio - 1)).toFixed(0)} %`;

/** Warns of arms opened too far for linear beams, and says by how much. */
export function openingNote(largest: number, atOnset: number | undefined): readonly Note[] {
  if (!(largest > straightOpening)) return [];
  const reach = `Displacement reaches ${largest.toFixed(2)} of the crack length; linear beams hold to about ${straightOpening} (common practice).`;
  if (atOnset === undefined) return [{ level: 'warning', text: reach }];
  const least = atOnset > 1 ? 'more than ' : '';
  const size = `At the largest displacement of an onset, ${atOnset.toFixed(2)}, straight levers overstate the toughness by load by ${least}${percent(leverExcess(atOnset))}.`;
  return [{ level: 'warning', text: `${reach} ${size}`, source: 'iso-15024' }];
}

/** The same of a specimen that is bent. */
export function bendingNote(largest: number, atOnset: number | undefined): readonly Note[] {
  if (!(largest > straightBending)) return [];
  const reach = `Displacement reaches ${largest.toFixed(2)} of the span; linear beams hold to about ${straightBending} (common practice).`;
  const size =
    atOnset === undefined
      ? ''
      : ` At the largest displacement of an onset, ${atOnset.toFixed(2)}, a straight beam understates the toughness by load by about ${percent(bentRelease(atOnset))}: bent, it is thrust together by its supports.`;
  return [{ level: 'warning', text: `${reach}${size}` }];
}

/** The same of an edge that is held open. */
export function wedgeNote(share: number): readonly Note[] {
  if (!(share > straightOpening)) return [];
  const text = `The opening is ${share.toFixed(2)} of the split; linear beams hold to about ${straightOpening} (common practice). Straight arms understate the energy release of so wide an opening by ${share > 1 ? 'more than' : 'about'} ${percent(heldOpenRelease(Math.min(share, 1)))}: the split runs somewhat further.`;
  return [{ level: 'warning', text }];
}
