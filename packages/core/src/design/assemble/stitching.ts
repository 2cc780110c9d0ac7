import { entryValues, type LibraryEntry, library } from '../../material/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import {
  type EdgeRow,
  offsetRowLength,
  type Pattern,
  type StitchPlan,
  stitchSummary,
  type Thread,
} from '../../stitch/index.js';
import type { LaminateModel, StitchingModel } from '../model.js';
import type { StitchingEntry } from '../schema/design.js';
import { bridgingOf } from './bridging.js';
import { defined, useLibrary, useOwn } from './constituents.js';
import { attempt, type Context, own, unknownName } from './context.js';

/** The thread of that name, from the file (completed from the library) or from the library. */
function findThread(context: Context, name: string, path: Path): Thread | undefined {
  const entry = own(context.design.threads, name);
  if (entry === undefined) {
    if (!Object.hasOwn(library.threads, name)) {
      const known = [...Object.keys(context.design.threads ?? {}), ...Object.keys(library.threads)];
      context.problems.push(unknownName('thread', name, known, path));
      return undefined;
    }
    useLibrary(context, 'thread', name, library.threads[name] as LibraryEntry);
    return threadOf(name, entryValues(library.threads[name] as LibraryEntry), path);
  }
  const from = entry.from === undefined ? undefined : own(library.threads, entry.from);
  if (entry.from !== undefined && from === undefined) {
    context.problems.push(unknownName('thread', entry.from, Object.keys(library.threads), ['threads', name, 'from']));
    return undefined;
  }
  useOwn(context, 'thread', name, entry, from);
  const { linearDensity, density, tenacity, modulus, packing } = entry;
  const given = defined({ linearDensity, density, tenacity, modulus, packing });
  return threadOf(name, { ...(from === undefined ? {} : entryValues(from)), ...given }, ['threads', name]);
}

function threadOf(name: string, values: Readonly<Record<string, number | undefined>>, path: Path): Thread {
  const { linearDensity, density, tenacity, modulus, packing } = values;
  for (const [key, value] of Object.entries({ linearDensity, density })) {
    if (value === undefined) {
      fail({
        code: 'missing-key',
        message: `missing \`${key}\` of thread \`${name}\``,
        allowed: `\`${key}\`, here or by \`from\``,
        path,
        atKey: true,
      });
    }
  }
  return defined({ name, linearDensity, density, tenacity, modulus, packing }) as Thread;
}

const needed = <Value>(value: Value | undefined, key: string, what: string, path: Path): Value =>
  value ??
  fail({
    code: 'missing-key',
    message: `missing \`${key}\` in \`${path.join('.')}\``,
    allowed: what,
    path,
    atKey: true,
  });

/** Keys that belong to one pattern only. */
const owners: readonly (readonly [key: keyof StitchingEntry, pattern: StitchingEntry['pattern']])[] = [
  ['stagger', 'staggered'],
  ['bight', 'zigzag'],
  ['crossing', 'crossing'],
  ['rows', 'edgeRows'],
  ['edge', 'edgeRows'],
];

function patternOf(entry: StitchingEntry, path: Path): Pattern {
  const { pattern, pitch } = entry;
  for (const [key, owner] of owners) {
    if (entry[key] !== undefined && pattern !== owner) {
      fail({
        code: 'contradiction',
        message: `\`${key}\` is for the pattern \`${owner}\`, this one is \`${pattern}\``,
        allowed: `\`${key}\` only with \`pattern: ${owner}\``,
        path: [...path, key],
        atKey: true,
      });
    }
  }
  if (pattern === 'edgeRows') return { kind: 'rows', rows: edgeRows(entry, path) };
  const rowSpacing = needed(entry.rowSpacing, 'rowSpacing', 'the distance between rows', path);
  if (pattern === 'zigzag')
    return { kind: pattern, pitch, rowSpacing, swing: needed(entry.bight, 'bight', 'the width of the zigzag', path) };
  if (pattern === 'staggered') return defined({ kind: pattern, pitch, rowSpacing, shift: entry.stagger }) as Pattern;
  if (pattern === 'crossing') {
    const { angle, ...second } = needed(entry.crossing, 'crossing', 'the second set of rows', path);
    return { kind: pattern, pitch, rowSpacing, second, angle };
  }
  return { kind: pattern, pitch, rowSpacing };
}

function edgeRows(entry: StitchingEntry, path: Path): EdgeRow[] {
  for (const key of ['rowSpacing', 'field'] as const) {
    if (entry[key] === undefined) continue;

    fail({
      code: 'contradiction',
      message: `\`${key}\` is given beside the offsets and lengths of the rows`,
      allowed: 'the rows alone',
      path: [...path, key],
      atKey: true,
    });
  }
  return needed(entry.rows, 'rows', 'a list of rows, each with its offset from the edge', path).map((row, i) => {
    const length = row.length ?? edgeRowLength(entry, row.offset, [...path, 'rows', i]);
    return defined({ offset: row.offset, length, pitch: row.pitch ?? entry.pitch, stagger: row.stagger }) as EdgeRow;
  });
}

function edgeRowLength(entry: StitchingEntry, offset: number, path: Path): number {
  const edge = needed(
    entry.edge,
    'length',
    'the length of the row, or `edge` of the plan with its length and turning angle',
    path,
  );
  return offsetRowLength(edge.length, offset, edge.turn ?? 0);
}

/** A core is as thick dry as it is cured. */
export const coreThickness = ({ laminate }: LaminateModel): number =>
  laminate.plies.reduce((sum, ply) => sum + (ply.core === true ? ply.thickness : 0), 0);

/** Thickness of the dry stack: measured, or from the fibres at the dry fibre fraction and the cores, or as cured. */
function dryThickness(
  entry: StitchingEntry,
  laminate: LaminateModel | undefined,
  path: Path,
): { thickness: number; fibreFraction?: number; notes: Note[] } {
  if (entry.dryThickness !== undefined) return { thickness: entry.dryThickness, notes: [] };
  const stack = needed(laminate, 'laminate', 'the laminate that is stitched, or `dryThickness`', path);
  const solid = stack.solidFibreThickness;
  const { dryFibreVolumeFraction: fibreFraction } = entry;
  if (fibreFraction !== undefined && solid !== undefined)
    return { thickness: solid / fibreFraction + coreThickness(stack), fibreFraction, notes: [] };
  const why = solid === undefined ? 'a ply without fibre volume fraction is in it' : 'no dry fibre fraction given';
  const text = `thread lengths are for the cured thickness of laminate ${stack.name} (${why}); the dry stack is thicker and takes more thread`;
  return { thickness: stack.laminate.thickness, notes: [{ level: 'assumption', text }] };
}

/** The stitched rectangle; centre lines of a zigzag lie half a spacing inside it, so that no row hangs half over its border. */
function fieldOf({ field, pattern, rowSpacing = 0 }: StitchingEntry): StitchPlan['field'] {
  return field === undefined || pattern !== 'zigzag' ? field : { ...field, y: -rowSpacing / 2 };
}

/** One stitch plan of the design, or undefined when its problems were noted. */
export function assembleStitching(
  context: Context,
  laminates: ReadonlyMap<string, LaminateModel | undefined>,
  name: string,
  entry: StitchingEntry,
): StitchingModel | undefined {
  const path = ['stitching', name];
  if (entry.laminate !== undefined && !laminates.has(entry.laminate)) {
    context.problems.push(unknownName('laminate', entry.laminate, [...laminates.keys()], [...path, 'laminate']));
    return undefined;
  }
  const laminate = entry.laminate === undefined ? undefined : laminates.get(entry.laminate);
  return attempt(
    context,
    path,
    () => {
      const needleThread = findThread(context, entry.thread, [...path, 'thread']);
      const underThread =
        entry.underThread === undefined ? undefined : findThread(context, entry.underThread, [...path, 'underThread']);
      const pattern = patternOf(entry, path);
      // A laminate with problems of its own has noted them already.
      if (needleThread === undefined || (entry.underThread !== undefined && underThread === undefined))
        return undefined;
      if (entry.laminate !== undefined && laminate === undefined) return undefined;
      const bridging = bridgingOf(entry, { needle: needleThread, under: underThread }, path);
      const dry = dryThickness(entry, laminate, path);
      const plan: StitchPlan = defined({
        type: entry.stitchType,
        pattern,
        needleThread,
        underThread,
        dryThickness: dry.thickness,
        waste: entry.waste,
        tails: entry.tails,
        field: fieldOf(entry),
        strands: entry.strandsInNeedle,
        needleNumber: entry.needle,
        holeWidth: entry.hole,
        sewing:
          entry.sewing === undefined
            ? undefined
            : defined({ rate: entry.sewing.rate, setup: entry.sewing.rowSetUp, handling: entry.sewing.handling }),
      }) as StitchPlan;
      const summary = stitchSummary(plan);
      return {
        ...defined({ name, title: entry.title, note: entry.note, laminate: entry.laminate }),
        ...defined({ dryFibreVolumeFraction: dry.fibreFraction }),
        plan,
        bridging,
        summary: { ...summary, notes: [...dry.notes, ...summary.notes] },
      } as StitchingModel;
    },
    entry,
  );
}
