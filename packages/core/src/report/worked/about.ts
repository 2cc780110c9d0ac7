import { countedOf, type FoldedStep } from './fold.js';
import { plyOf } from './select.js';

/** "2", "1 and 4", "1 to 8", "1, 3 to 5 and 9". */
function listed(numbers: readonly number[]): string {
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

/** What a step is about, in words: "plies 1 and 4 of laminate skin, face toward the tool". */
export function about({ part, numbers }: Pick<FoldedStep, 'part' | 'numbers'>): string {
  const [kind = '', name = ''] = part;
  const of = countedOf(part);
  const whole = `${kindWords[kind] ?? kind} ${name}`.trim();
  const which = of === undefined ? '' : `${numbers.length === 1 ? of.one : of.many} ${listed(numbers)} of `;
  const further = part.filter((_, i) => i > 1 && (of === undefined || i < of.at - 1 || i > of.at));
  return [`${which}${whole}`, ...further.map((one) => faces[one] ?? one)].join(', ');
}

const kindWords: Readonly<Record<string, string>> = {
  materials: 'material',
  laminates: 'laminate',
  loads: 'load',
  stitching: 'stitch plan',
  coupons: 'coupon',
  examples: 'example',
};

/** Whether a step is one of many alike, at the heights of a ply. */
export const isPoint = (step: Pick<FoldedStep, 'part'>): boolean =>
  plyOf(step) !== undefined && faces[step.part.at(-1) ?? ''] !== undefined;
