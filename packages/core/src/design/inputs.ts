import type { Document } from 'yaml';
import { fail, nearestHint, type Path, type Problem, SelvageError } from '../problem/index.js';
import { editedText, type InputValue } from './edit-text.js';
import { checkDesign, type Design, designText, parseDesign, type ReadOptions } from './read.js';
import { locate, type SourceDocument } from './source.js';

export type { InputValue } from './edit-text.js';

/** An input of a design file by its dotted path (`stitching.edge.pitch`, `laminates.skin.stack.2.angle`) and the value it is to have. */
export interface InputChange {
  readonly path: string;
  readonly value: InputValue;
}

/** A design file taken apart once, so that many variants of it can be made. */
export interface DesignInputs {
  readonly text: string;
  readonly source: SourceDocument;
  /** The values as written. */
  readonly data: unknown;
  /** As read. */
  readonly design: Design;
  readonly options: ReadOptions;
}

/**
 * A design file, its text or its bytes, taken apart.
 * @throws SelvageError what is wrong with it, as `readDesign` and `readDesignBytes` say it
 */
export function designInputs(file: string | Uint8Array, options: ReadOptions = {}): DesignInputs {
  const text = typeof file === 'string' ? file : designText(file);
  const { source, data } = parseDesign(text.replace(/^\uFEFF/, ''));
  return { text: source.text, source, data, design: checkDesign(data, source, options), options };
}

const isHolder = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** The keys of a dotted path; whole numbers count the entries of lists from 0. The last key of a change may be one that the file leaves out. */
function keysOf({ data }: DesignInputs, path: string, mayAdd = false): (string | number)[] {
  const keys: (string | number)[] = [];
  let value = data;
  const parts = path.split('.');
  for (const [i, part] of parts.entries()) {
    if (!isHolder(value)) return fail(noInput(path, keys, part, value));
    const added = mayAdd && i > 0 && i === parts.length - 1 && !Array.isArray(value);
    if (!Object.hasOwn(value, part) && !added) fail(noInput(path, keys, part, value));
    keys.push(Array.isArray(value) ? Number(part) : part);
    value = value[part];
  }
  if (isHolder(value)) {
    fail({
      code: 'unknown-name',
      message: `\`${path}\` is not one value of the design file`,
      allowed: `one of the values in it: ${named(Object.keys(value))}`,
      path: keys,
    });
  }
  return keys;
}

const named = (names: readonly string[]): string => names.slice(0, 20).join(', ');

function noInput(path: string, keys: Path, part: string, value: unknown): Problem {
  const names = isHolder(value) ? Object.keys(value) : [];
  return {
    code: 'unknown-name',
    message: `the design file has no \`${[...keys, part].join('.')}\`${[...keys, part].join('.') === path ? '' : `, so no \`${path}\``}`,
    allowed:
      names.length === 0
        ? `\`${keys.join('.')}\` has nothing below it`
        : `${keys.length === 0 ? 'a path begins with' : `after \`${keys.join('.')}\``}: ${named(names)}`,
    ...nearestHint(part, names),
    ...(keys.length === 0 ? {} : { path: keys }),
  };
}

const at = (data: unknown, keys: Path): unknown => keys.reduce<unknown>((value, key) => (value as never)[key], data);

/** The value of an input as written. @throws SelvageError `unknown-name` no such value, with the nearest right spelling */
export function inputAt(inputs: DesignInputs, path: string): InputValue {
  return at(inputs.data, keysOf(inputs, path)) as InputValue;
}

/** Every value of a design file with its dotted path, in the order of the file. */
export function inputList({ data }: Pick<DesignInputs, 'data'>): readonly InputChange[] {
  const found: InputChange[] = [];
  const walk = (value: unknown, path: string): void => {
    if (!isHolder(value)) found.push({ path, value: value as InputValue });
    else for (const [key, one] of Object.entries(value)) walk(one, path === '' ? key : `${path}.${key}`);
  };
  walk(data, '');
  return found;
}

/** A copy of nested values in which one has changed; what lies off the way to it is shared. */
function replaced(data: unknown, [key, ...rest]: Path, value: InputValue): unknown {
  if (key === undefined) return value;
  const copy = Array.isArray(data) ? [...data] : { ...(data as object) };
  (copy as Record<string | number, unknown>)[key] = replaced((data as never)[key], rest, value);
  return copy;
}

/**
 * The design with some inputs changed; its problems show the lines of the file it was made from.
 * @throws SelvageError `unknown-name` no such input; what `readDesign` throws of the new values
 */
export function variant(inputs: DesignInputs, changes: readonly InputChange[]): Design {
  const data = changes.reduce<unknown>(
    (made, { path, value }) => replaced(made, keysOf(inputs, path, true), value),
    inputs.data,
  );
  return checkDesign(data, inputs.source, inputs.options);
}

/**
 * The text of the design file with some inputs changed; everything else stays to the byte.
 * @throws SelvageError `unknown-name` no such input; `contradiction` a value that is tied to another place of the file by an alias
 */
export function variantText(inputs: DesignInputs, changes: readonly InputChange[]): string {
  let { source, data } = inputs;
  for (const { path, value } of changes) {
    const keys = keysOf(inputs, path, true);
    const tied = () => new SelvageError(locate([aliased(path, keys)], inputs.source));
    const text = editedText(source, keys, value) ?? reprinted(source, keys, value);
    if (text === undefined) throw tied();
    data = replaced(data, keys, value);
    const made = parseDesign(text);
    // An anchor on the value has changed other places too.
    if (JSON.stringify(made.data) !== JSON.stringify(data)) throw tied();
    source = made.source;
  }
  return source.text;
}

/** Where a key is added in a place that has no text to stand in: the whole file printed anew. */
function reprinted(source: SourceDocument, keys: Path, value: InputValue): string | undefined {
  const document = source.document.clone() as Document;
  if (document.hasIn(keys) || !document.hasIn(keys.slice(0, -1))) return undefined;
  document.setIn(keys, value);
  return document.toString({ lineWidth: 0 });
}

const aliased = (path: string, keys: Path): Problem => ({
  code: 'contradiction',
  message: `\`${path}\` is tied to another place of the file by an alias`,
  allowed: 'values that stand where they are used, or a change where they stand',
  path: keys,
});

/** Problems with their places in the file of the inputs. */
export const locateIn = ({ source }: DesignInputs, problems: readonly Problem[]): Problem[] => locate(problems, source);
