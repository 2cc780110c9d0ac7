import { assemble, type Model, readDesign, workedDesign } from '../../design/index.js';
import { checkExample, exampleDesign, exampleOf, rulesShown } from '../../examples/index.js';
import { fail } from '../../problem/index.js';
import { uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { kinds, type UnitSystem } from '../../quantity/index.js';
import { holderOf, type Recorded, type RecordedStep, resultsOf, rules, symbols } from '../../working/index.js';
import type { Block, Report } from '../blocks.js';
import { exampleBlocks } from '../example-blocks.js';
import { kindOf, symbolText } from '../formula/index.js';
import { heading, slug, table } from '../sections/build.js';
import { sourcesSection } from '../sections/sources.js';
import { pointOf } from './about.js';
import { type FoldedStep, foldSteps } from './fold.js';
import { leftOut } from './left-out.js';
import { pointTables } from './point-tables.js';
import { selectSteps, type WorkingSelection } from './select.js';
import { stepBlocks } from './step-block.js';

/** Which steps are shown, and how. */
export interface WorkedOptions extends WorkingSelection {
  /** Significant digits, 2 to 15; 4 when not given. */
  readonly digits?: number;
  readonly units?: UnitSystem;
}

const usualDigits = 4;

/** @throws out-of-range for a number of digits that cannot be */
function checkDigits(digits: number): void {
  if (Number.isInteger(digits) && digits >= 2 && digits <= 15) return;
  fail({ code: 'out-of-range', message: `digits = ${digits}`, allowed: 'a whole number from 2 to 15' });
}

/**
 * The working of a design as a report: each step with its formula in symbols, the same with numbers and units, the result, the source, and the
 * published examples that the formula reproduces. Of a whole design the heights of the plies are written out for one ply of each load and
 * listed in tables for the others; a part or a ply that is asked for is written out in full.
 *
 * @param model as `assemble` gives it
 * @throws unknown-name for a part, ply or step that is not there; out-of-range for a number of digits that cannot be; as `workedSteps`
 */
export function workedReport(model: Model, options: WorkedOptions = {}): Report {
  return reportOf(workedDesign(model), model, `${model.title}: the working`, options);
}

/**
 * A published example with its printed values beside the computed ones, and the working of its design.
 *
 * @param id of an example that a design can express
 * @throws unknown-name for an id, part, ply or step that is not there; not-computable for an example that no design expresses
 */
export function workedExampleReport(id: string, options: WorkedOptions = {}): Report {
  const model = assemble(readDesign(exampleDesign(id)));
  const example = checkExample(exampleOf(id));
  const working = reportOf(workedDesign(model), model, `${example.title}: the working`, options);
  return {
    ...working,
    blocks: [...exampleBlocks(example), ...working.blocks],
    data: { example, ...working.data },
  };
}

function reportOf({ steps: all, notes }: Recorded, model: Model, title: string, options: WorkedOptions): Report {
  const { digits = usualDigits } = options;
  checkDigits(digits);
  const steps = selectSteps(all, options);
  const whole = options.of === undefined && options.ply === undefined;
  const told = new Set<string>();
  let number = 0;
  const numbered = (step: FoldedStep): Block[] => {
    number++;
    const first = !told.has(step.rule);
    told.add(step.rule);
    return stepBlocks(step, number, digits, rulesShown[step.rule] ?? [], first);
  };
  const groups = byTop(steps);
  const body = [...groups].flatMap(([top, those]): Block[] => {
    const about = uniqueNotes(notes.flatMap((one) => (holderOf(one) === top ? one.notes : [])));
    return [
      heading(2, headingOf(top), slug(top)),
      ...groupBlocks(top, foldSteps(those), whole, digits, numbered),
      ...(about.length === 0 ? [] : [{ kind: 'notes' as const, notes: about }]),
    ];
  });
  const cited = notes
    .flatMap((one) => (groups.has(holderOf(one)) ? one.notes : []))
    .flatMap(({ source }) => source ?? []);
  return {
    title,
    subtitle:
      'Every step as the computation wrote it down. A number is called by the part that stands under the title of its step, a point and its symbol, as in laminates.skin.A11.',
    units: options.units ?? model.units,
    blocks: [
      ...(groups.size > 1 ? [partsParagraph([...groups.keys()])] : []),
      ...(whole ? leftOut(model) : []),
      ...body,
      ...symbolTable(steps),
      ...sourcesSection(uniqueSources([...steps.map(({ rule }) => rules[rule].source), ...cited])),
    ],
    data: { steps: steps.map(stepData) },
  };
}

const partsParagraph = (parts: readonly string[]): Block => ({
  kind: 'paragraph',
  text: `Parts: ${parts.join(', ')}. One of them: --of PART; less of it: --ply N, --upto STEP.`,
});

/** The steps of one part of the design; of a whole design the heights of one ply are written out and those of all stand in tables. */
function groupBlocks(
  top: string,
  steps: readonly FoldedStep[],
  whole: boolean,
  digits: number,
  numbered: (step: FoldedStep) => Block[],
): Block[] {
  const points = steps.filter((step) => pointOf(step) !== undefined);
  const shown = whole ? decidingPly(steps, points) : undefined;
  const hidden = (step: FoldedStep): boolean =>
    shown !== undefined && pointOf(step) !== undefined && !step.numbers.includes(shown);
  const written = steps.filter((step) => !hidden(step)).flatMap(numbered);
  if (!steps.some(hidden)) return written;
  return [
    ...written,
    {
      kind: 'paragraph',
      text: `The heights of ply ${shown} are written out above; those of all plies follow in tables. To see another ply written out, ask for it: --ply N, or --of ${top}.`,
    },
    ...pointTables(points, top, digits),
  ];
}

/** The ply whose heights are written out: the one that fails first, or else the first. */
function decidingPly(steps: readonly FoldedStep[], points: readonly FoldedStep[]): number | undefined {
  const first = steps
    .filter(({ values, part }) => values.n_fpf !== undefined && !part.includes('loadAlone'))
    .reduce<FoldedStep | undefined>(
      (least, one) => (least === undefined || (one.values.R_fpf ?? 0) < (least.values.R_fpf ?? 0) ? one : least),
      undefined,
    );
  return first?.values.n_fpf ?? points[0]?.numbers[0];
}

/** Steps by the part of the design that they belong to. */
function byTop(steps: readonly RecordedStep[]): Map<string, RecordedStep[]> {
  const groups = new Map<string, RecordedStep[]>();
  for (const step of steps) {
    const top = holderOf(step);
    groups.set(top, [...(groups.get(top) ?? []), step]);
  }
  return groups;
}

const headings: Readonly<Record<string, string>> = {
  materials: 'Material',
  laminates: 'Laminate',
  loads: 'Load',
  stitching: 'Stitch plan',
  coupons: 'Coupon',
  examples: 'Example',
};

function headingOf(top: string): string {
  const [kind = '', name = ''] = [top.split('.')[0], top.split('.').slice(1).join('.')];
  return `${headings[kind] ?? kind} ${name}`.trim();
}

/** What the symbols of the steps mean. */
function symbolTable(steps: readonly RecordedStep[]): Block[] {
  const used = new Set(
    [...new Set(steps.map(({ rule }) => rule))].flatMap((rule) => {
      const { formulas, sums, results = [] } = rules[rule];
      const written = Object.entries({ ...formulas, ...sums }).flat();
      return [...results, ...written.flatMap((text) => text.match(/[A-Za-z]\w*/g) ?? [])];
    }),
  );
  const names = Object.keys(symbols).filter((name) => used.has(name));
  if (names.length === 0) return [];
  return [
    heading(2, 'Symbols', 'symbols'),
    table(
      'symbols',
      'Symbols of the formulas; the name is how a quantity is called in a file of answers',
      [{ label: 'Symbol' }, { label: 'Name' }, { label: 'Meaning' }],
      names.map((name) => [symbolText(name), name, symbols[name]?.meaning ?? '']),
    ),
  ];
}

/** A step for a program: SI numbers. */
function stepData(step: RecordedStep): Record<string, unknown> {
  const { part, rule, values, rows } = step;
  const { title, formulas, sums, source, where } = rules[rule];
  return {
    part: part.join('.'),
    rule,
    title,
    ...(formulas === undefined ? {} : { formulas }),
    ...(sums === undefined ? {} : { sums }),
    results: Object.fromEntries(resultsOf(step.rule).map((symbol) => [symbol, values[symbol]])),
    values,
    ...(rows === undefined ? {} : { rows }),
    units: Object.fromEntries(Object.keys(values).map((symbol) => [symbol, kinds[kindOf(symbol)].si])),
    source,
    ...(where === undefined ? {} : { where }),
  };
}
