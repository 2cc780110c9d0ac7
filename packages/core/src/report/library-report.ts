import { entrySources, type LibraryEntry, library } from '../material/index.js';
import { fail, nearestHint } from '../problem/index.js';
import { accessInWords, uniqueSources } from '../provenance/index.js';
import type { Block, Cell, Report } from './blocks.js';
import { heading, table } from './sections/build.js';
import { sourcesSection } from './sections/sources.js';

const libraryKinds = Object.keys(library) as (keyof typeof library)[];

/** A value as the source gives it: number, unit and, where known, the range. */
function valueText(value: LibraryEntry['values'][string]): string {
  const range = value.low === undefined || value.high === undefined ? '' : ` (${value.low} to ${value.high})`;
  return `${value.value}${range}${value.unit === '' ? '' : ` ${value.unit}`}`;
}

function overview(kind: keyof typeof library): Block[] {
  const rows = Object.entries(library[kind] as Record<string, LibraryEntry>).map(([id, entry]): Cell[] => [
    id,
    entry.label,
    Object.entries(entry.values)
      .slice(0, 5)
      .map(([name, value]) => `${name} ${valueText(value)}`)
      .join('; '),
    entrySources(entry).join(', '),
  ]);
  return [
    heading(2, kind.charAt(0).toUpperCase() + kind.slice(1), kind),
    table(
      kind,
      `The library’s ${kind}`,
      [{ label: 'Id' }, { label: 'Description' }, { label: 'First values' }, { label: 'Sources' }],
      rows,
    ),
  ];
}

function details(kind: keyof typeof library, id: string): Block[] {
  const shelf = library[kind] as Record<string, LibraryEntry>;
  const entry = Object.hasOwn(shelf, id) ? shelf[id] : undefined;
  if (entry === undefined) {
    return fail({
      code: 'unknown-name',
      message: `the library has no \`${id}\` among its ${kind}`,
      allowed: `\`data ${kind}\` lists them`,
      ...nearestHint(id, Object.keys(shelf)),
    });
  }
  const rows = Object.entries(entry.values).map(([name, value]): Cell[] => [
    name,
    valueText(value),
    value.basis,
    accessInWords(value.access),
    `${value.source}: ${value.where}`,
    value.note ?? '',
  ]);
  return [
    heading(2, `${entry.label} (${id})`, 'entry'),
    ...(entry.note === undefined ? [] : [{ kind: 'paragraph' as const, text: entry.note }]),
    table(
      'values',
      'Values with their sources',
      [
        { label: 'Name' },
        { label: 'Value' },
        { label: 'Basis' },
        { label: 'How obtained' },
        { label: 'Source' },
        { label: 'Remark' },
      ],
      rows,
    ),
  ];
}

/**
 * The library as a report: an overview of all kinds or of one, or one entry with every value and source.
 * @throws SelvageError `unknown-name` for a kind or id that is not there
 */
export function libraryReport(kind?: string, id?: string): Report {
  const known = libraryKinds.find((one) => one === kind);
  if (kind !== undefined && known === undefined) {
    fail({
      code: 'unknown-name',
      message: `the library has no kind \`${kind}\``,
      allowed: libraryKinds.join(', '),
      ...nearestHint(kind, libraryKinds),
    });
  }
  const kinds = known === undefined ? libraryKinds : [known];
  const entries = kinds.flatMap((one) =>
    Object.entries(library[one] as Record<string, LibraryEntry>).filter(([name]) => id === undefined || name === id),
  );
  const keys = uniqueSources(...entries.map(([, entry]) => entrySources(entry)));
  const body = known !== undefined && id !== undefined ? details(known, id) : kinds.flatMap(overview);
  return {
    title: 'Library of materials and threads',
    units: 'metric',
    blocks: [
      ...body,
      {
        kind: 'caution',
        title: 'Starting points, not design values',
        items: ['Replace every value by your own test or the certificate of the lot before you rely on it.'],
      },
      ...sourcesSection(keys),
    ],
    data: Object.fromEntries(
      kinds.map((one) => [
        one,
        Object.fromEntries(
          Object.entries(library[one] as Record<string, LibraryEntry>).filter(
            ([name]) => id === undefined || name === id,
          ),
        ),
      ]),
    ),
  };
}
