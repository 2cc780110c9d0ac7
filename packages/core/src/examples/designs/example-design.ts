import { Document, isMap, isPair, isScalar, type Node, visit } from 'yaml';
import { citation } from '../../material/index.js';
import { fail } from '../../problem/index.js';
import { accessInWords } from '../../provenance/index.js';
import { exampleOf } from '../find.js';
import type { WorkedExample } from '../types.js';
import { designParts } from './kinds.js';
import type { DesignParts, Entry, Held, Term } from './parts.js';

/** Why an example cannot be written as a design file; undefined where it can. */
export function whyNoDesign(example: WorkedExample): string | undefined {
  const parts = designParts(example);
  return 'held' in parts ? undefined : parts.why;
}

/**
 * A worked example as a design file: YAML, complete and valid, its numbers in the units of the source. Comments name the source, say
 * what the source does not give, and where in the numbers of the report (JSON, SI) each published value is found.
 *
 * @param id of a worked example
 * @throws unknown-name for an id that is not there; not-computable for an example that a design file cannot hold, with what can be had instead
 */
export function exampleDesign(id: string): string {
  const example = exampleOf(id);
  const parts = designParts(example);
  if ('held' in parts) return written(example, parts);
  return fail({
    code: 'not-computable',
    message: `the example \`${id}\` has no design file: ${parts.why}`,
    allowed: parts.instead,
  });
}

function written(example: WorkedExample, parts: DesignParts): string {
  const document = new Document({
    format: 1,
    title: example.title,
    notes: `Worked example ${example.id} of ${originOf(example)}. The numbers are those of the source${exceptOurs(parts)}.`,
    materials: withOrigin(example, parts.materials),
    laminates: parts.laminates,
    ...(parts.loads === undefined ? {} : { loads: parts.loads }),
  });
  document.commentBefore = comment(example, parts)
    .map((line) => ` ${line}`.trimEnd())
    .join('\n');
  const isFlat = (item: unknown): boolean => isScalar(isPair(item) ? item.value : item);
  visit(document, {
    Collection(_, node, above) {
      // Below the entries of a section; what has many keys is read more easily line by line.
      if (above.length >= 5 && node.items.length <= 5) node.flow = (node.items as unknown[]).every(isFlat);
    },
    Pair(_, pair, above) {
      if (above.length === 2 && isMap(pair.value)) (pair.key as Node).spaceBefore = true;
    },
  });
  return document.toString({ lineWidth: 0 });
}

const exceptOurs = ({ ours = [] }: Pick<DesignParts, 'ours'>): string =>
  ours.length === 0 ? '' : ', but for what the head of the file names';

const originOf = ({ source, where }: WorkedExample): string => `${citation(source)}; ${where}`;

/** Materials with the source of their numbers, unless they are assumed. */
function withOrigin(example: WorkedExample, materials: DesignParts['materials']): Record<string, Entry> {
  const origin = { source: originOf(example), basis: example.access === 'computed' ? 'derived' : 'published' };
  return Object.fromEntries(
    Object.entries(materials).map(([name, entry]) => [name, 'basis' in entry ? entry : { ...entry, ...origin }]),
  );
}

function comment(example: WorkedExample, { ours = [], held }: DesignParts): string[] {
  const { id, access, values } = example;
  const found = Object.entries(values).flatMap(([key, { printed, unit }]) => {
    const place = held[key];
    return place === undefined ? [] : [`  ${`${key} = ${printed} ${unit}`.trimEnd()}: ${heldInWords(place)}`];
  });
  const missing = Object.keys(values).filter((key) => held[key] === undefined);
  return [
    `Worked example ${id} as a design file.`,
    `Source: ${originOf(example)}; ${accessInWords(access)}.`,
    ours.length === 0 ? 'The numbers are those of the source.' : 'The numbers are those of the source, but for these:',
    ...ours.map((text) => `  ${text}`),
    'Its values, and where the numbers of the report (--format json, SI) hold them:',
    ...found,
    ...(missing.length === 0 ? [] : [`No results of a design: ${missing.join(', ')}.`]),
  ];
}

const short = (value: number): string => String(Number(value.toPrecision(6)));

function termInWords({ at, times = 1, inverse }: Term): string {
  if (inverse) return `${short(times)} / ${at}`;
  return times === 1 ? at : times === -1 ? `-${at}` : `${short(times)} x ${at}`;
}

function heldInWords({ terms, plus, size }: Held): string {
  const sum = [...(plus === undefined ? [] : [String(plus)]), ...terms.map(termInWords)]
    .join(' + ')
    .replace('+ -', '- ');
  return size ? `${sum}, its size` : sum;
}
