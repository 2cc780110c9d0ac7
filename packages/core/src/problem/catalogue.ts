import type { ProblemCode } from './problem.js';

/** What a problem code says, in plain words, each one or two sentences. */
export interface CatalogueEntry {
  /** What was found. */
  readonly meaning: string;
  /** How it usually comes about. */
  readonly cause: string;
  /** What to change. */
  readonly cure: string;
}

/**
 * Every {@link ProblemCode} with its meaning, its usual cause and its cure, in the order in which a text is looked at: the
 * file, its layout, its keys, its values, what they say together, what can be computed of them.
 */
export const problemCatalogue: Readonly<Record<ProblemCode, CatalogueEntry>> = {
  'not-text': {
    meaning: 'The file is not text in UTF-8.',
    cause:
      'An editor saved it in an older encoding or in UTF-16, or it is no text file at all: a spreadsheet, a picture.',
    cure: 'Save it as UTF-8. The place named is the first byte that does not fit.',
  },
  'too-large': {
    meaning: 'A file, an orientation code or a search is larger than the program takes on.',
    cause:
      'The wrong file was named, a repeat has a digit too many, or a search leaves more choices open than can be counted.',
    cure: 'Look at the repeat or the file named. A search becomes smaller by fewer angles or coarser steps.',
  },
  syntax: {
    meaning: 'The text is not YAML.',
    cause:
      'A line stands in the wrong column, the space behind a colon is missing, or an orientation code has no quotation marks.',
    cure: 'Let keys of one level begin in one column, and write orientation codes between quotation marks.',
  },
  tab: {
    meaning: 'A line is indented by a tab, which YAML does not allow.',
    cause: 'The editor writes tabs, or the lines were pasted from elsewhere.',
    cure: 'Replace the tabs by spaces. Most editors do it for the whole file and can be told to write spaces.',
  },
  'too-many-aliases': {
    meaning:
      'Aliases of YAML (`*name`) would unfold to so many copies that the file may be meant to exhaust the memory.',
    cause: 'Lists of aliases that stand for lists of aliases.',
    cure: 'Write repeats as an orientation code, for example `[(0/90)20]s`, instead of aliases within aliases.',
  },
  'several-documents': {
    meaning: 'The file holds more than one YAML document.',
    cause: 'Two designs were joined into one file, with a line `---` between them.',
    cure: 'Keep one design in one file.',
  },
  'duplicate-key': {
    meaning: 'One mapping has the same key twice.',
    cause: 'An entry was copied and its name was not changed, or a value was added where it stood already.',
    cure: 'Rename or remove one of the two; both places are shown.',
  },
  'unknown-key': {
    meaning: 'The design file has no such key in this place.',
    cause: 'A slip of spelling, or a key that belongs one level higher or lower.',
    cure: 'Take the spelling proposed, or look the place up in the reference of the design file.',
  },
  'missing-key': {
    meaning: 'Something that the program cannot go on without is not given.',
    cause: 'The key was forgotten, or another key asks for it, as a load with heat asks for expansion coefficients.',
    cure: 'Add the key that is named, with its unit.',
  },
  'wrong-type': {
    meaning: 'A list stands where a text belongs, a mapping where a number belongs, or the like.',
    cause: 'Brackets or a hyphen too many or too few, or a value without its own key.',
    cure: 'Write the kind of value that the message allows.',
  },
  'not-a-choice': {
    meaning: 'A word is none of those that may stand here.',
    cause: 'A slip of spelling, or a name from another design.',
    cure: 'Take one of the words listed.',
  },
  'not-a-number': {
    meaning: 'A number is wanted, and this is none, or none that is finite.',
    cause: 'A decimal comma, a word before the number; from a script: NaN or infinity out of a calculation.',
    cure: 'Write a decimal point and no thousands mark. In a script, look where the value comes from.',
  },
  'out-of-range': {
    meaning: 'The value is beyond what is possible, or beyond what the model was made for.',
    cause: 'A wrong unit or power of ten more often than a wrong number; a list of the wrong length.',
    cure: 'Compare the value with the range named, unit and power of ten first.',
  },
  'unit-missing': {
    meaning: 'A number stands without the unit that it needs.',
    cause: 'The unit was thought to be understood. There is no default unit.',
    cure: 'Write the unit behind the number: `0.25 mm`.',
  },
  'unit-unknown': {
    meaning: 'The unit is not known.',
    cause: 'A slip of spelling or of capitals: `Mpa` for `MPa`.',
    cure: 'Take the spelling proposed, or compose the unit from known ones: `g/m^2`.',
  },
  'unit-mismatch': {
    meaning: 'The unit is known, but it measures something else.',
    cause: 'A mass per area where a thickness belongs, a force where a force per width belongs.',
    cure: 'Take a unit of the quantity that the message names.',
  },
  'unknown-name': {
    meaning: 'Nothing in the design or the library has this name.',
    cause: 'A slip of spelling, an entry that was renamed or left out, or a path of a target that leads nowhere.',
    cure: 'Take the name proposed, or add the entry. `selvage data` lists the library.',
  },
  'orientation-code': {
    meaning: 'An orientation code cannot be read.',
    cause: 'A comma between plies, a bracket that is not closed, a repeat behind `s` or behind `±`.',
    cure: 'Repair the place under the carets; the rules stand on the page on the orientation code.',
  },
  'not-admissible': {
    meaning: 'The values are possible one by one, but no material or laminate can have them together.',
    cause:
      'Constants of different sources or for exchanged axes, most often a Poisson ratio too large for the ratio of the moduli.',
    cure: 'Take the set from one source, and see that `nu12` belongs to the load along the fibre.',
  },
  contradiction: {
    meaning: 'Two things that are given exclude one another.',
    cause: 'One quantity given in two ways, a key of another kind of entry, a limit above its counterpart.',
    cure: 'Decide for one and remove the other.',
  },
  'not-computable': {
    meaning: 'The input is complete and in range, yet the formula has no answer to it.',
    cause:
      'A tool gap that the core fills alone, plies without strengths under a load whose failure is asked for, loads beyond what numbers can hold.',
    cure: 'Give what is missing or change the value named; often the message says what would do.',
  },
};
