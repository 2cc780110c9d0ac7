import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml';
import type { Path, Place, Problem } from '../problem/index.js';

/** The text that a design was read from. */
export interface DesignSource {
  readonly text: string;
  readonly fileName?: string;
}

/** A YAML document with what is needed to say where things are. */
export interface SourceDocument {
  readonly document: Document.Parsed;
  readonly lines: LineCounter;
  readonly text: string;
}

/** Parses YAML 1.2 (JSON is a subset) and keeps positions; syntax errors stay in `document.errors`. */
export function parseSource(text: string): SourceDocument {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    version: '1.2',
    prettyErrors: false,
    uniqueKeys: true,
    strict: true,
  });
  return { document, lines, text };
}

/** A place from character offsets; it never runs over the end of its line. */
export function placeAt({ lines, text }: SourceDocument, start: number, end: number): Place {
  const { line, col } = lines.linePos(Math.min(start, text.length));
  const from = lines.lineStarts[line - 1] ?? 0;
  const next = lines.lineStarts[line] ?? text.length + 1;
  const excerpt = text.slice(from, next - 1).replace(/\r$/, '');
  const length = Math.max(1, Math.min(end, from + excerpt.length) - start);
  return { line, column: col, length, excerpt };
}

const rangeOf = (node: unknown): readonly [number, number] | undefined => {
  const range = (node as Node | null | undefined)?.range;
  return range === undefined || range === null ? undefined : [range[0], Math.max(range[1], range[0] + 1)];
};

interface Found {
  readonly key?: unknown;
  readonly value: unknown;
}

function step(node: unknown, part: string | number, document: Document): Found | undefined {
  const target = isAlias(node) ? node.resolve(document) : node;
  if (isMap(target)) {
    const pair = target.items.find((item) => isScalar(item.key) && String(item.key.value) === String(part));
    return pair === undefined ? undefined : { key: pair.key, value: pair.value };
  }
  if (isSeq(target)) {
    const item = target.items[Number(part)];
    return item === undefined ? undefined : { value: isPair(item) ? item.value : item };
  }
  return undefined;
}

/** Offset of the text inside a scalar: behind an opening quote. */
const quote = (node: unknown): number =>
  isScalar(node) && (node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE') ? 1 : 0;

/** Where a path leads: the key or the value; for a path that breaks off, the deepest key that exists. */
function placeOf(
  source: SourceDocument,
  path: Path,
  options: { atKey?: boolean; within?: Problem['within'] } = {},
): Place | undefined {
  let found: Found = { value: source.document.contents };
  let complete = true;
  for (const part of path) {
    const next = step(found.value, part, source.document);
    if (next === undefined) {
      complete = false;
      break;
    }
    found = next;
  }
  const atKey = (options.atKey === true || !complete) && found.key !== undefined;
  const range = rangeOf(atKey ? found.key : found.value) ?? rangeOf(found.key);
  if (range === undefined) return undefined;
  if (atKey || options.within === undefined || !complete)
    return placeAt(source, range[0], complete || atKey ? range[1] : range[0] + 1);
  const start = range[0] + quote(found.value) + options.within.offset;
  return placeAt(source, start, start + options.within.length);
}

/** Fills in the places of problems that only know their path, puts all in the order of the text, and the same one only once. */
export function locate(problems: readonly Problem[], source: SourceDocument): Problem[] {
  const located = problems.map((problem): Problem => {
    if (problem.where !== undefined || problem.path === undefined) return problem;
    const where = placeOf(source, problem.path, {
      ...(problem.atKey === undefined ? {} : { atKey: problem.atKey }),
      ...(problem.within === undefined ? {} : { within: problem.within }),
    });
    const also = problem.also?.map((other) => {
      const place = other.where ?? (other.path === undefined ? undefined : placeOf(source, other.path));
      return place === undefined ? other : { ...other, where: place };
    });
    return { ...problem, ...(where === undefined ? {} : { where }), ...(also === undefined ? {} : { also }) };
  });
  const seen = new Set<string>();
  const once = located.filter(({ message, where }) => {
    const key = `${where?.line}:${where?.column} ${message}`;
    return !seen.has(key) && seen.add(key);
  });
  const order = (place: Place | undefined): number => (place === undefined ? -1 : place.line * 1e5 + place.column);
  return once.sort((a, b) => order(a.where) - order(b.where));
}

const quotedCode = 'an orientation code needs quotes: stack: "[0/90]s"';

/** What the YAML parser complained about, and keys that no design may hold, as problems with places. */
export function syntaxProblems(source: SourceDocument): Problem[] {
  const problems = source.document.errors.map((error) => syntaxProblem(error, source));
  // One tab makes many lines unreadable: what follows from it is not worth a word.
  const tabs = problems.filter((problem) => problem.code === 'tab');
  if (tabs.length > 0) return tabs;
  // Likewise one wrong indentation: its first consequence stands for all.
  const first = source.document.errors.findIndex((error) => layoutErrors.has(error.code));
  const worth = problems.filter((_, i) => i === first || !layoutErrors.has(source.document.errors[i]?.code ?? ''));
  return [...worth, ...forbiddenKeys(source)];
}

/** What the YAML parser says when lines stand in the wrong column or a colon lacks its space. */
const layoutErrors: ReadonlySet<string> = new Set(['BLOCK_AS_IMPLICIT_KEY', 'MULTILINE_IMPLICIT_KEY', 'BAD_INDENT']);
const layoutAllowed = 'keys of one level begin in one column, and a space follows each colon';

/** A fault of layout, placed where a reader can see it. */
function layoutProblem(code: string, start: number, where: Place, source: SourceDocument): Problem {
  const tight = /^([A-Za-z_][\w-]*):(?=[^\s/])/.exec(source.text.slice(start));
  if (tight !== null) {
    return {
      code: 'syntax',
      message: `a space is missing behind the colon of \`${tight[1]}\``,
      allowed: layoutAllowed,
      where: placeAt(source, start, start + tight[0].length),
    };
  }
  const end = source.text.indexOf('\n', start);
  const below = /\S/.exec(source.text.slice(end < 0 ? source.text.length : end));
  const at = code === 'BLOCK_AS_IMPLICIT_KEY' && below !== null ? end + below.index : start;
  return {
    code: 'syntax',
    message:
      'this line does not stand in the column of its neighbours: it is deeper than a line above that already holds a value',
    allowed: layoutAllowed,
    where: at === start ? where : placeAt(source, at, at + 1),
  };
}

/** `__proto__` means something else to JavaScript than to a reader; the schema would drop it in silence. */
function forbiddenKeys(source: SourceDocument): Problem[] {
  const problems: Problem[] = [];
  visit(source.document, {
    Pair: (_, { key }) => {
      if (!isScalar(key) || key.value !== '__proto__') return;
      const [start, end] = rangeOf(key) ?? [0, 1];
      problems.push({
        code: 'unknown-key',
        message: '`__proto__` cannot be a key',
        where: placeAt(source, start, end),
      });
    },
  });
  return problems;
}

function syntaxProblem(error: YAMLError, source: SourceDocument): Problem {
  const [start, end] = error.pos;
  const where = placeAt(source, start, Math.max(end, start + 1));
  if (error.code === 'DUPLICATE_KEY') return duplicateKey(source, start, where);
  if (error.code === 'TAB_AS_INDENT') {
    return {
      code: 'tab',
      message: 'a tab is used for indentation',
      allowed: 'spaces',
      hint: 'replace the tab by spaces',
      where,
    };
  }
  if (error.code === 'MULTIPLE_DOCS') {
    return {
      code: 'several-documents',
      message: 'the file holds more than one document',
      allowed: 'one document; no second `---`',
      where,
    };
  }
  if (layoutErrors.has(error.code)) return layoutProblem(error.code, start, where, source);
  const quote = /^missing closing (["'])/i.exec(error.message)?.[1];
  if (quote !== undefined) {
    const opening = Math.max(0, source.text.lastIndexOf(quote, start - 1));
    return {
      code: 'syntax',
      message: 'a quotation mark is not closed',
      allowed: `a closing ${quote}`,
      where: placeAt(source, opening, opening + 1),
    };
  }
  const looksLikeCode = /\][0-9_]*[sStT]|\[[^\]]*[±~/]/.test(where.excerpt);
  const hint = looksLikeCode ? quotedCode : undefined;
  return {
    code: 'syntax',
    message: `not valid YAML: ${plain(error.message)}`,
    where,
    ...(hint === undefined ? {} : { hint }),
  };
}

/** First letter lower case, no final stop. */
const plain = (message: string): string =>
  message.charAt(0).toLowerCase() + message.slice(1).replace(/\.$/, '').split('\n')[0];

function duplicateKey(source: SourceDocument, offset: number, where: Place): Problem {
  const key = /^["']?([^"':\s]+)/.exec(source.text.slice(offset))?.[1] ?? '';
  const first = firstKey(source.document.contents, key, offset);
  return {
    code: 'duplicate-key',
    message: `key \`${key}\` is given twice`,
    allowed: 'each key once',
    where: { ...where, length: key.length },
    ...(first === undefined
      ? {}
      : { also: [{ label: 'first given here', where: placeAt(source, first, first + key.length) }] }),
  };
}

/** Offset of the first key of the same name in the mapping that holds a key at `offset`. */
function firstKey(node: unknown, key: string, offset: number): number | undefined {
  if (isMap(node)) {
    const here = node.items.some((item) => rangeOf(item.key)?.[0] === offset);
    if (here) return rangeOf(node.items.find((item) => isScalar(item.key) && String(item.key.value) === key)?.key)?.[0];
    return firstOf(
      node.items.map((item) => item.value),
      key,
      offset,
    );
  }
  return isSeq(node) ? firstOf(node.items, key, offset) : undefined;
}

function firstOf(nodes: readonly unknown[], key: string, offset: number): number | undefined {
  for (const node of nodes) {
    const found = firstKey(node, key, offset);
    if (found !== undefined) return found;
  }
  return undefined;
}
