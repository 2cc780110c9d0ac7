import type { InputValue } from '../design/index.js';
import type { Note } from '../provenance/index.js';
import { roundOff } from './amount.js';

/** A point of a study: inputs in the order of their paths, and what came of them. */
interface Point {
  readonly inputs: readonly InputValue[];
  readonly values?: readonly number[];
}

/** Values of a quantity along one input, the other inputs held: a list for each of the lines. */
function linesOf(points: readonly Point[], input: number, quantity: number): readonly (readonly number[])[] {
  const lines = new Map<string, number[]>();
  for (const { inputs, values } of points) {
    const value = values?.[quantity];
    if (value === undefined) continue;
    const key = JSON.stringify(inputs.filter((_, i) => i !== input));
    lines.set(key, [...(lines.get(key) ?? []), value]);
  }
  return [...lines.values()].filter(({ length }) => length > 1);
}

/** Whether numbers are the same but for round-off. */
function isStill(line: readonly number[]): boolean {
  const [low, high] = [Math.min(...line), Math.max(...line)];
  return high - low <= roundOff * Math.max(Math.abs(low), Math.abs(high));
}

/** A note for each input that moves none of the quantities anywhere, or leaves some of them where they are. */
export function stillNotes(
  paths: readonly string[],
  quantities: readonly string[],
  points: readonly Point[],
): readonly Note[] {
  return paths.flatMap((path, input): Note[] => {
    const still = quantities.filter((_, quantity) => {
      const lines = linesOf(points, input, quantity);
      return lines.length > 0 && lines.every(isStill);
    });
    if (still.length === 0) return [];
    const names = still.join(', ');
    const verb = still.length === quantities.length && still.length > 1 ? 'moves none of' : 'does not move';
    return [{ level: 'warning', text: `${path} ${verb} ${names}: the same at every point` }];
  });
}
