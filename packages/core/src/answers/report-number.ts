import { type Model, numbersAt, quantityAt } from '../design/index.js';
import { SelvageError } from '../problem/index.js';
import type { Quantity } from './quantities.js';

/** A number of the JSON report by its path; undefined when there is none, or when it cannot be computed. */
export function reportNumber(model: Model, path: string): Quantity | undefined {
  try {
    const { value, kind } = quantityAt(numbersAt(model, [path]), path);
    const names = path.split('.');
    return { key: path, part: names.slice(0, -1), symbol: names[names.length - 1] ?? '', kind, value, computed: true };
  } catch (error) {
    if (error instanceof SelvageError) return undefined;
    throw error;
  }
}
