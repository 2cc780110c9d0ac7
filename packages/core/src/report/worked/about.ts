import { countedOf, type FoldedStep } from './fold.js';

/** "2", "1 and 4", "1 to 8", "1, 3 to 5 and 9". */
export function listed(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last !== undefined && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  const words = runs.flatMap(([from, to]) =>
    to - from < 2 ? [...new Set([from, to])].map(String) : [`${from} to ${to}`],
  );
  return words.length === 1 ? `${words[0]}` : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

const faces: Readonly<Record<string, string>> = {
  top: 'face toward the tool',
  middle: 'mid-height',
  bottom: 'face toward the bag',
};

const states: Readonly<Record<string, string>> = {
  residual: 'heat and moisture alone',
  loadAlone: 'the load without heat and moisture',
};

/** The state of a load in words. */
export const stateWords = (state: string): string => states[state] ?? state;

/** What a step is about, in words: "plies 1 and 4 of laminate skin, face toward the tool". */
export function about({ part, numbers }: Pick<FoldedStep, 'part' | 'numbers'>): string {
  const [kind = '', name = ''] = part;
  const of = countedOf(part);
  const whole = `${kindWords[kind] ?? kind} ${name}`.trim();
  const which = of === undefined ? '' : `${numbers.length === 1 ? of.one : of.many} ${listed(numbers)} of `;
  const further = part.filter((_, i) => i > 1 && (of === undefined || i < of.at - 1 || i > of.at));
  return [
    `${which}${whole}`,
    ...further.map((one) => (of?.many === 'plies' ? faces[one] : undefined) ?? states[one] ?? spaced(one)),
  ].join(', ');
}

/** A part that is called in one word, as words: "gaveWay" is "gave way". */
const spaced = (name: string): string => name.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const kindWords: Readonly<Record<string, string>> = {
  materials: 'material',
  laminates: 'laminate',
  loads: 'load',
  stitching: 'stitch plan',
  coupons: 'coupon',
  examples: 'example',
};

/** Where a step lies that is one of many alike, at the heights of the plies: in which state of the load, at which face, of which criterion. */
export function pointOf({
  part,
}: Pick<FoldedStep, 'part'>): { readonly state: string; readonly face: string; readonly further: string } | undefined {
  const plies = part.indexOf('plies');
  const at = part.findIndex((name, i) => plies >= 0 && i > plies + 1 && Object.hasOwn(faces, name));
  if (at < 0) return undefined;
  return {
    state: part.slice(2, plies).join(', '),
    face: part[at] ?? '',
    further: part.slice(at + 1).join(', '),
  };
}
