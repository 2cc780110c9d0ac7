import { citation } from '../material/index.js';
import { fail, nearestHint } from '../problem/index.js';
import type { SourceKey } from '../provenance/index.js';
import { type CheckedExample, checkExamples } from './check.js';
import { isIndependent } from './counts.js';
import { whyNoDesign } from './designs/example-design.js';
import { exampleIds, exampleOf } from './find.js';
import { kindOf } from './kinds.js';
import { sourceName } from './source-name.js';
import { exampleSubjects, type Subject, subjectOf } from './subjects.js';

/** One line of the catalogue of examples. */
export interface ExampleEntry {
  readonly id: string;
  readonly title: string;
  readonly subject: Subject;
  readonly source: SourceKey;
  /** The source in a few characters: "Tsai and Hahn 1980". */
  readonly sourceName: string;
  /** How many values are compared. */
  readonly values: number;
  /** The largest deviation, in units of the last digit printed, with its sign; of values with a band no deviation of digits. */
  readonly worst?: number;
  /** Whether `exampleDesign` writes it as a design file. */
  readonly design: boolean;
  /** Whether no publication prints its values: they are those of an independent script. */
  readonly independent: boolean;
}

const worstOf = ({ rows }: CheckedExample): number | undefined =>
  rows
    .filter(({ band }) => band === undefined)
    .map(({ lastDigits }) => lastDigits)
    .reduce<number | undefined>(
      (worst, one) => (worst === undefined || Math.abs(one) > Math.abs(worst) ? one : worst),
      undefined,
    );

function entryOf(one: CheckedExample): ExampleEntry {
  const { id, title, source, rows } = one;
  const worst = worstOf(one);
  return {
    id,
    title,
    subject: subjectOf(kindOf(one)),
    source,
    sourceName: sourceName(source),
    values: rows.length,
    ...(worst === undefined ? {} : { worst }),
    design: whyNoDesign(exampleOf(id)) === undefined,
    independent: isIndependent(one),
  };
}

/** Examples as the lines of a catalogue, by subject and within a subject in their order; by default all of them. */
export function exampleCatalogue(examples: readonly CheckedExample[] = checkExamples()): ExampleEntry[] {
  const entries = examples.map(entryOf);
  return exampleSubjects.flatMap((subject) => entries.filter((entry) => entry.subject === subject));
}

const wordsIn = (text: string): string[] => text.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];

/** What is searched for a word: id, title and source of an example. */
const textOf = (id: string): string => {
  const { title, source } = exampleOf(id);
  return `${id} ${title} ${source} ${sourceName(source)} ${citation(source)}`;
};

/**
 * The ids of the examples that a word is about: those of a subject, of one id, or those in whose id, title or source a word begins so.
 * Case does not count.
 *
 * @throws unknown-name when there is none
 */
export function findExamples(word: string): string[] {
  if (exampleIds.includes(word)) return [word];
  const sought = word.trim().toLowerCase();
  const inSubject = exampleIds.filter((id) => subjectOf(kindOf(exampleOf(id))) === sought);
  if (inSubject.length > 0) return inSubject;
  const found = exampleIds.filter((id) => {
    const text = textOf(id).toLowerCase();
    return sought !== '' && (wordsIn(text).some((one) => one.startsWith(sought)) || text.includes(` ${sought}`));
  });
  if (found.length > 0) return found;
  const known = [...exampleIds, ...exampleSubjects, ...new Set(exampleIds.flatMap((id) => wordsIn(textOf(id))))];
  return fail({
    code: 'unknown-name',
    message: `there is no worked example \`${word}\`, and no subject, title or source with that word`,
    allowed: `an id, a word of a title or a source, or a subject: ${exampleSubjects.join(', ')}`,
    ...nearestHint(word, known),
  });
}
