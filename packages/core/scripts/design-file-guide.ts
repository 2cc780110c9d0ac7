import { designJsonSchema } from '../src/design/index.js';

interface Schema {
  readonly description?: string;
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly items?: Schema | readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly required?: readonly string[];
}

const head = `# The design file

This page is generated from the schema of the program (packages/core/scripts/write-design-file-guide.ts).

A design file is YAML 1.2 (JSON is a subset of it), one document, at most 1 MiB, UTF-8. Every key that is not listed here is an error, and every
error is reported with its line and column. A quantity is a number with its unit in one text: \`0.25 mm\`, \`5.7 oz/yd^2\`, \`1200 denier\`, \`5/8 in\`.
A bare number where a unit is needed is an error that proposes units. Angles may be bare: they are degrees. Fractions may be given as \`0.5\` or \`50 %\`.
Names are a letter, then letters, digits, \`-\` or \`_\`. \`selvage schema\` prints the same as JSON Schema (draft-07) for editors.
`;

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** The object that holds the keys of an entry: the schema itself, the entries of a mapping, or the items of a list. */
function inner(schema: Schema): Schema | undefined {
  if (schema.properties !== undefined) return schema;
  if (typeof schema.additionalProperties === 'object') return inner(schema.additionalProperties);
  if (schema.items !== undefined && !Array.isArray(schema.items)) return inner(schema.items as Schema);
  const choice = (schema.anyOf ?? []).map(inner).find((one) => one !== undefined);
  return choice;
}

function keyTable(schema: Schema): string[] {
  const rows = Object.entries(schema.properties ?? {}).map(([key, value]) => {
    const needed = schema.required?.includes(key) === true ? 'yes' : '';
    const fixed = value.const === undefined ? '' : ` always \`${String(value.const)}\``;
    return `| \`${key}\` | ${needed} | ${cell(value.description ?? inner(value)?.description ?? '')}${fixed} |`;
  });
  return ['| key | needed | meaning |', '| --- | --- | --- |', ...rows];
}

/** Sections for objects below the keys of an entry. */
function below(name: string, schema: Schema, level: number): string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, value]) => {
    const object = inner(value);
    return object === undefined ? [] : section(`${name}.${key}`, object, level);
  });
}

function section(name: string, schema: Schema, level: number): string[] {
  return [
    '',
    `${'#'.repeat(level)} \`${name}\``,
    '',
    `${schema.description ?? ''}`,
    '',
    ...keyTable(schema),
    ...below(name, schema, level + 1),
  ];
}

/** The reference page as Markdown. */
export function designFileGuide(): string {
  const schema = designJsonSchema() as Schema;
  const lines = [head, '## Top level', '', ...keyTable(schema)];
  for (const [key, value] of Object.entries(schema.properties ?? {})) {
    const entries = typeof value.additionalProperties === 'object' ? value.additionalProperties : undefined;
    const kinds = entries?.oneOf ?? entries?.anyOf;
    if (kinds !== undefined) {
      lines.push('', `## \`${key}\``, '', value.description ?? '');
      for (const kind of kinds)
        lines.push(...section(`${key}.NAME, kind ${String(kind.properties?.kind?.const)}`, kind, 3));
      continue;
    }
    const object = inner(value);
    if (object !== undefined) lines.push(...section(entries === undefined ? `${key}[]` : `${key}.NAME`, object, 2));
  }
  return `${lines.join('\n')}\n`;
}
