import type { Place, Problem } from './problem.js';

/** How problems are printed. */
export interface RenderProblemOptions {
  /** Shown before line and column. */
  readonly fileName?: string;
  /** ANSI colours; default off. */
  readonly colour?: boolean;
}

type Paint = (text: string) => string;
const ansi =
  (code: number, on: boolean): Paint =>
  (text) =>
    on ? `\u001b[${code}m${text}\u001b[0m` : text;

/** Control characters could move a terminal's cursor; they are shown as pictures instead. */
const visible = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not reach a terminal
  text.replace(/[\u0000-\u0008\u000a-\u001f\u007f-\u009f]/g, (c) =>
    c.charCodeAt(0) < 0x20 ? String.fromCharCode(0x2400 + c.charCodeAt(0)) : '�',
  );

const widestExcerpt = 120;

/** The source line with carets under the fault; long lines are cut around it, tabs become one space. */
function excerpt(place: Place, label: string, gutter: number, dim: Paint, mark: Paint): string[] {
  const line = place.excerpt.replace(/\t/g, ' ');
  const start = place.column - 1;
  const from = start > widestExcerpt - 30 ? start - 40 : 0;
  const shown = line.slice(from, from + widestExcerpt);
  const lead = from > 0 ? '…' : '';
  const tail = from + widestExcerpt < line.length ? '…' : '';
  const carets = '^'.repeat(Math.max(1, Math.min(place.length, shown.length - (start - from))));
  const number = String(place.line).padStart(gutter);
  return [
    `${dim(`${number} |`)} ${lead}${visible(shown)}${tail}`,
    `${dim(`${' '.repeat(gutter)} |`)} ${' '.repeat(lead.length + start - from)}${mark(carets)}${label === '' ? '' : ` ${label}`}`,
  ];
}

function header(problem: Problem, fileName: string | undefined, bold: Paint, red: Paint): string {
  const at = problem.where === undefined ? '' : `:${problem.where.line}:${problem.where.column}`;
  const file = fileName ?? (problem.where === undefined ? '' : 'input');
  const prefix = file === '' ? '' : `${bold(`${file}${at}`)}: `;
  return `${prefix}${red(`error[${problem.code}]`)}: ${visible(problem.message)}`;
}

/**
 * Prints one problem:
 *
 *     rudder.yaml:12:7: error[unknown-key]: unknown key `angel` in ply 1
 *       12 |       angel: 45
 *          |       ^^^^^ did you mean `angle`?
 */
export function renderProblem(problem: Problem, options: RenderProblemOptions = {}): string {
  const colour = options.colour ?? false;
  const [bold, red, dim] = [ansi(1, colour), ansi(31, colour), ansi(2, colour)];
  const lines = [header(problem, options.fileName, bold, red)];
  const hint = problem.hint ?? '';
  const places = [problem.where, ...(problem.also ?? []).map((also) => also.where)];
  const gutter = Math.max(4, ...places.map((place) => String(place?.line ?? '').length + 2));
  if (problem.where !== undefined) lines.push(...excerpt(problem.where, visible(hint), gutter, dim, red));
  for (const also of problem.also ?? []) {
    if (also.where !== undefined) lines.push(...excerpt(also.where, visible(also.label), gutter, dim, dim));
  }
  if (problem.where === undefined && hint !== '') lines.push(`     hint: ${visible(hint)}`);
  if (problem.allowed !== undefined) lines.push(`     allowed: ${visible(problem.allowed)}`);
  return lines.join('\n');
}

/** Prints a list of problems, one after the other, with an empty line between them. */
export function renderProblems(problems: readonly Problem[], options: RenderProblemOptions = {}): string {
  return problems.map((problem) => renderProblem(problem, options)).join('\n\n');
}
