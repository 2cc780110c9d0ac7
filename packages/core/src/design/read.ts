import * as z from 'zod/mini';
import { fail, type Problem, SelvageError } from '../problem/index.js';
import { type DesignFile, designSchema } from './schema/design.js';
import { type DesignSource, locate, parseSource, placeAt, type SourceDocument, syntaxProblems } from './source.js';
import { mergeMisspelled, type SchemaIssue, translate } from './translate.js';

/** A design as read: typed, finite, SI (angles in degrees); names are not yet resolved. */
export interface Design extends DesignFile {
  readonly source: DesignSource;
}

/** How a design file is read. */
export interface ReadOptions {
  /** Name shown in problems. */
  readonly fileName?: string;
}

/** Largest file read, in bytes: a design of thousands of plies has less than a tenth of it. */
const largestFile = 2 ** 20;
const mostAliases = 100;

/** The values of a design file, nothing checked yet. @throws SelvageError see {@link readDesign} */
export function parseDesign(text: string): { source: SourceDocument; data: unknown } {
  if (text.length > largestFile) {
    fail({ code: 'too-large', message: `the file has ${text.length} characters`, allowed: `at most ${largestFile}` });
  }
  const source = parseSource(text);
  const syntax = syntaxProblems(source);
  if (syntax.length > 0) throw new SelvageError(syntax);
  try {
    return { source, data: source.document.toJS({ maxAliasCount: mostAliases }) };
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    const first = text.indexOf('&');
    return fail({
      code: 'too-many-aliases',
      message: `aliases unfold to more than ${mostAliases} copies`,
      allowed: 'fewer aliases, or none',
      where: placeAt(source, Math.max(first, 0), Math.max(first, 0) + 1),
    });
  }
}

/**
 * Reads a design file: YAML 1.2 or JSON, quantities with units, every key checked.
 * Collects all problems of the text, in the order of the file. A byte-order mark and Windows line ends are accepted.
 * @param text the file's text
 * @returns the design, quantities in SI
 * @throws SelvageError `syntax`, `tab`, `duplicate-key`, `several-documents`, `too-many-aliases`, `too-large`, `unknown-key`, `missing-key`,
 * `wrong-type`, `not-a-choice`, `not-a-number`, `out-of-range`, `unit-missing`, `unit-unknown`, `unit-mismatch`, each with its place
 */
export function readDesign(text: string, options: ReadOptions = {}): Design {
  const { source, data } = parseDesign(text.replace(/^\uFEFF/, ''));
  return checkDesign(data, source, options);
}

/**
 * The values of a file as a schema reads them.
 * @param whole what the file is, in words: `the design`
 * @throws SelvageError with places in the file
 */
export function bySchema<Schema extends z.core.$ZodType>(
  schema: Schema,
  data: unknown,
  source: SourceDocument,
  whole: string,
): z.output<Schema> {
  const result = z.safeParse(schema, data);
  if (result.success) return result.data;
  const problems = result.error.issues.flatMap((issue) => translate(issue as unknown as SchemaIssue, data, whole));
  throw new SelvageError(locate(mergeMisspelled(problems), source));
}

/** The values of a design file as a design. @throws SelvageError with places in the file that the values came from */
export function checkDesign(data: unknown, source: SourceDocument, options: ReadOptions = {}): Design {
  if (data === null || data === undefined) {
    fail({ code: 'missing-key', message: 'the file is empty', allowed: 'a design: format, title, laminates' });
  }
  const file = bySchema(designSchema, data, source, 'the design');
  if (Object.keys(file.laminates).length === 0) {
    const problem = {
      code: 'missing-key' as const,
      message: '`laminates` is empty',
      allowed: 'at least one laminate',
      path: ['laminates'],
      atKey: true,
    };
    throw new SelvageError(locate([problem], source));
  }
  return {
    ...file,
    source: { text: source.text, ...(options.fileName === undefined ? {} : { fileName: options.fileName }) },
  };
}

/**
 * Reads a design from the bytes of a file: UTF-8, with or without byte-order mark.
 * @throws SelvageError `not-text` for other encodings, saying where the first bad byte is; and all that {@link readDesign} throws
 */
export function readDesignBytes(bytes: Uint8Array, options: ReadOptions = {}): Design {
  return readDesign(designText(bytes), options);
}

/** The text of a design file. @throws SelvageError `too-large`, `not-text` */
export function designText(bytes: Uint8Array): string {
  if (bytes.length > largestFile) {
    fail({ code: 'too-large', message: `the file has ${bytes.length} bytes`, allowed: `at most ${largestFile}` });
  }
  return decode(bytes);
}

function decode(bytes: Uint8Array): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    fail({ code: 'not-text', message: 'the file is UTF-16', allowed: 'UTF-8', hint: 'save it as UTF-8' });
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    const zero = text.indexOf('\0');
    if (zero < 0) return text;
    return fail(notText(text.slice(0, zero), 'a zero byte', text));
  } catch (error) {
    if (error instanceof SelvageError) throw error;
    const loose = new TextDecoder('utf-8').decode(bytes);
    const bad = loose.indexOf('\uFFFD');
    return fail(notText(loose.slice(0, bad), 'bytes that are not UTF-8', loose));
  }
}

function notText(before: string, what: string, whole: string): Problem {
  const lines = before.split('\n');
  const last = lines[lines.length - 1] ?? '';
  const excerpt = (whole.split('\n')[lines.length - 1] ?? '').replace(/\r$/, '');
  return {
    code: 'not-text',
    message: `the file holds ${what}`,
    allowed: 'UTF-8 text',
    hint: 'save it as UTF-8',
    where: { line: lines.length, column: last.length + 1, length: 1, excerpt },
  };
}
