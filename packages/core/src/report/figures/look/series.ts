import type { Dye } from './palette.js';

/** Dashes by name, px along the line; 0.1 is a round dot. */
export const dashes = {
  stitched: '7 5',
  dotted: '0.1 4.4',
  dashdot: '10 5 0.1 5',
  long: '17 6',
  dashdots: '10 5 0.1 5 0.1 5',
  centre: '12 3 2 3',
} as const;

/** How a series is told apart: by dye, by dashes and by sign, each enough alone; by a character in a terminal. */
export interface SeriesLook {
  readonly dye: Dye;
  /** Solid without. */
  readonly dash?: keyof typeof dashes;
  /** The sign at a point, drawn around 0 0. */
  readonly sign: string;
  readonly character: string;
}

const first: SeriesLook = {
  dye: 'indigo',
  sign: 'm-3.8 0a3.8 3.8 0 1 0 7.6 0a3.8 3.8 0 1 0 -7.6 0Z',
  character: '*',
};

const looks: readonly SeriesLook[] = [
  first,
  { dye: 'madder', dash: 'stitched', sign: 'm-3.5 -3.5h7v7h-7Z', character: 'o' },
  { dye: 'verdigris', dash: 'dotted', sign: 'm0 -4.8l4.4 7.6h-8.8Z', character: 'x' },
  { dye: 'heather', dash: 'dashdot', sign: 'm0 -5l4.4 5l-4.4 5l-4.4 -5Z', character: '#' },
  { dye: 'weld', dash: 'long', sign: 'm0 4.8l4.4 -7.6h-8.8Z', character: '%' },
  { dye: 'walnut', dash: 'dashdots', sign: 'm-3.6 -3.6l7.2 7.2m0 -7.2l-7.2 7.2', character: '~' },
];

/** No drawing tells more series apart. */
export const mostSeries = looks.length;

/** The look of a series by its place among all, from 0. */
export const seriesLook = (index: number): SeriesLook => looks[index] ?? first;

/** Classes of the line of a series: dye, width, dashes. */
export function seriesLine(index: number): string {
  const { dye, dash } = seriesLook(index);
  return `sv-${dye} sv-thick${dash === undefined ? '' : ` sv-${dash}`}`;
}

/** Bars to the right of zero are filled, those to the left hollow. */
export const barLook = { positive: 'sv-indigo sv-tint-indigo', negative: 'sv-madder sv-paper' } as const;
