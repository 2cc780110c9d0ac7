import type { CheckedAnswer, CheckedAnswers, Explanation, RecognisedSlip } from '../../answers/index.js';
import { formatNumber, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell, Report } from '../blocks.js';
import { heading, listOf, table } from '../sections/build.js';
import { percentCell } from '../studies/cells.js';
import { slipDid, slipLook } from './slip-words.js';

/** Digits of a right value where fewer were written. */
const leastDigits = 4;

/** The right value in the unit of the answer; what is as good as zero is zero. */
function rightText({ right, digits, unit, deviation }: CheckedAnswer): string {
  const value = deviation === undefined ? 0 : right / unit.size;
  const number = formatNumber(value, Math.max(leastDigits, Math.min(digits, 15)));
  if (unit.text === '') return number;
  return /^1[0e]/.test(unit.text) ? `${number}·${unit.text}` : `${number} ${unit.text}`;
}

/** A larger deviation says more as a factor. */
const largestPercent = 1000;

/** The deviation in percent, or how many times the right value the answer is. */
function deviationText({ deviation, value, right }: CheckedAnswer): string {
  if (deviation === undefined) return '';
  const percent = deviation * 100;
  if (Math.abs(percent) <= largestPercent) return percentCell(percent);
  return `${formatNumber(Number((value / right).toPrecision(3)), 3)} times`;
}

const sameSlip = (one: RecognisedSlip, other: RecognisedSlip): boolean =>
  one.name === other.name && one.detail === other.detail;

/** Every slip of the sheet once, in the order of the answers: its number is its place. */
function numbered(answers: readonly CheckedAnswer[]): RecognisedSlip[] {
  const found: RecognisedSlip[] = [];
  for (const slip of answers.flatMap(({ explanations }) => explanations.flatMap(({ slips }) => slips))) {
    if (!found.some((other) => sameSlip(other, slip))) found.push(slip);
  }
  return found;
}

/** "slip 1", "slip 1 or 3", "slip 1 with 2". */
function slipNumbers(explanations: readonly Explanation[], known: readonly RecognisedSlip[]): string {
  const number = (slip: RecognisedSlip): number => known.findIndex((other) => sameSlip(other, slip)) + 1;
  return `slip ${explanations.map(({ slips }) => slips.map(number).join(' with ')).join(' or ')}`;
}

function verdictText({ verdict, explanations }: CheckedAnswer, known: readonly RecognisedSlip[]): string {
  if (verdict === 'slip') return slipNumbers(explanations, known);
  if (verdict === 'rounded') {
    return explanations.length === 0 ? 'right to 1 %' : `right to 1 %, or ${slipNumbers(explanations, known)}`;
  }
  return verdict;
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** How many answers are what. */
function summary({ answers, counts }: CheckedAnswers): string {
  const { right, rounded, slip, wrong } = counts;
  const all = answers.length;
  if (right === all) return all === 1 ? 'The answer is right.' : `All ${all} answers are right.`;
  const parts = [
    `${right + rounded} of ${counted(all, 'answer is', 'answers are')} right${rounded === 0 ? '' : `, ${rounded} of them to 1 %, as rounding on the way leaves it`}`,
    ...(slip === 0 ? [] : [`${counted(slip, 'is', 'are')} what a known slip gives`]),
    ...(wrong === 0 ? [] : [`${counted(wrong, 'is', 'are')} wrong in a way that no known slip explains`]),
  ];
  return `${parts.join('; ')}.`;
}

function answersTable({ answers }: CheckedAnswers, known: readonly RecognisedSlip[]): Block {
  return table(
    'answers',
    'Answers',
    ['Quantity', 'Verdict', 'Yours', 'Right value', 'Deviation'].map((label) => ({ label })),
    answers.map((one): Cell[] => [one.key, verdictText(one, known), one.given, rightText(one), deviationText(one)]),
  );
}

/** What to look at, for each slip that explains an answer. */
function slipsSection(answers: readonly CheckedAnswer[], known: readonly RecognisedSlip[]): Block[] {
  if (known.length === 0) return [];
  const items = known.map((slip, i) => {
    const of = answers.filter(({ explanations }) =>
      explanations.some(({ slips }) => slips.some((other) => sameSlip(other, slip))),
    );
    const told = known.findIndex(({ name }) => name === slip.name) < i;
    return `Slip ${i + 1}, ${slipDid(slip)}: ${of.map(({ key }) => key).join(', ')}.${told ? '' : ` ${slipLook(slip.name)}`}`;
  });
  return [heading(2, 'What to look at', 'slips'), ...listOf(items)];
}

/** The slip that explains most answers, once, at the end; others that explain as many give the same ones. */
function sharedText({ shared, counts }: CheckedAnswers): Block[] {
  const off = counts.slip + counts.wrong;
  const most = shared[0]?.count ?? 0;
  const leading = shared.filter(({ count }) => count === most);
  if (leading.length === 0) return [];
  const how = leading.map(slipDid).join(', or from ');
  const many = most === off ? `All ${off} answers` : `${most} of ${off} answers`;
  return [{ kind: 'paragraph', text: `${many} that are not right follow from ${how}. Look there first.` }];
}

const howJudged =
  'Right is what lies within half a unit of the last digit that you wrote, or within 0.1 %; up to 1 % is taken for rounding on the way. A slip is named where the design, computed anew with the slip made, gives your number; that it was made is a guess.';

const answerData = (one: CheckedAnswer): Record<string, unknown> => {
  const { written, key, kind, given, value, right, deviation, verdict, explanations } = one;
  return {
    quantity: written,
    key,
    kind,
    given,
    value,
    right,
    deviation: deviation ?? null,
    verdict,
    explanations: explanations.map(({ slips, value: slipped }) => ({
      slips: slips.map(({ name, detail }) => ({ name, detail: detail ?? null })),
      value: slipped,
    })),
  };
};

/**
 * The report on a sheet of answers: each with the right value in its own unit, its deviation and its verdict; then what may have gone wrong,
 * and what several answers have in common.
 * @param checked from `checkAnswers`
 * @returns `data` holds the same for a program, SI
 */
export function answersReport(
  checked: CheckedAnswers,
  { units = 'metric' }: { readonly units?: UnitSystem } = {},
): Report {
  const known = numbered(checked.answers);
  return {
    title: `${checked.title}: your answers`,
    units,
    blocks: [
      { kind: 'paragraph', text: summary(checked) },
      answersTable(checked, known),
      ...slipsSection(checked.answers, known),
      ...sharedText(checked),
      { kind: 'paragraph', text: howJudged },
    ],
    data: {
      format: 1,
      title: checked.title,
      counts: checked.counts,
      answers: checked.answers.map(answerData),
      shared: checked.shared.map(({ name, detail, count }) => ({ name, detail: detail ?? null, count })),
    },
  };
}
