import temml from 'temml';
import type { UnitSystem } from '../../quantity/index.js';
import type { StepBlock } from '../blocks.js';
import { escapeMarkup as e } from '../figures/index.js';
import type { Chain, Written } from '../formula/index.js';
import { type PrintedMatrix, printedStep, reproduced } from './step.js';
import { matrixTex } from './step-tex.js';

/** MathML of a formula; a fault of ours in its LaTeX throws. */
const mathml = (tex: string): string => temml.renderToString(`\\displaystyle ${tex}`, { throwOnError: true });

/** The same formula as MathML and as plain text; the page shows one of the two. */
const formula = (math: string, ...lines: readonly string[]): string =>
  `<div class="formula"><div class="math">${math}</div><pre class="plain">${lines.map(e).join('\n')}</pre></div>`;

/** Characters of plain text beyond which a formula is taken to be wider than a page, than a sheet of A4 or a tablet, than a phone. */
const widest = { page: 95, sheet: 62, phone: 40 };

/**
 * What stands right of an equal sign, in terms between which a line may break. Where a term is too wide for that it is text, which folds; numbers
 * are text on a phone in any case.
 */
function lineHtml(before: Written, part: Written, numbers: boolean): string {
  const { terms = [part] } = part;
  const longest = Math.max(...terms.map(({ text }) => text.length));
  const text = `${before.text} = ${part.text}`.trimStart();
  if (longest > widest.page) return `<div class="spelt">${e(text)}</div>`;
  const set = terms.map(({ tex }, i) => mathml(i === 0 ? `${before.tex} = ${tex}` : `{} ${tex}`)).join(' ');
  if (!numbers && longest <= widest.phone) return `<div>${set}</div>`;
  const folds = longest > widest.sheet ? 'sheet' : 'phone';
  return `<div class="or-text ${folds}"><span>${set}</span><span>${e(text)}</span></div>`;
}

const nothing: Written = { text: '', tex: '' };

/** Each equal sign on a line of its own. */
function chainHtml({ left, right }: Chain): string {
  const text = right.map((part, i) => `${i === 0 ? left.text : ' '.repeat([...left.text].length)} = ${part.text}`);
  return formula(right.map((part, i) => lineHtml(i === 0 ? left : nothing, part, i > 0)).join(''), ...text);
}

const matrixText = ({ name, unit, rows }: PrintedMatrix): string =>
  `${name} = [${rows.map((row) => row.join(' ')).join('; ')}] ${unit}`.trimEnd();

/** A step as HTML: title, formulas as MathML and as text, source. */
export function stepHtml(step: StepBlock, units: UnitSystem, linked: (key: string, text: string) => string): string {
  const { chains, matrices } = printedStep(step, units);
  const id = `step-${e(step.id)}`;
  return [
    `<article class="step" id="${id}" aria-labelledby="${id}-title">`,
    `<h3 id="${id}-title"><span class="mark">${step.number}</span> ${e(step.title)}</h3>`,
    `<p class="of">${e(step.of)} <code>${e(step.part)}</code> <code>${e(step.rule)}</code></p>`,
    ...(step.form === undefined ? [] : [formula(mathml(step.form.tex), step.form.text)]),
    ...chains.map(chainHtml),
    ...matrices.map((matrix) => formula(`<div class="matrix">${mathml(matrixTex(matrix))}</div>`, matrixText(matrix))),
    ...(step.remark === undefined ? [] : [`<p class="remark">${e(step.remark)}</p>`]),
    `<p class="origin">Source: ${linked(step.source, step.sourceText)}${e(reproduced(step))}</p>`,
    '</article>',
  ].join('\n');
}
