import type { Working } from '../working/index.js';
import type { PeelCase } from './peel-case.js';
import { followPeel, type PathEvent, type PathLimits, type PeelPath } from './peel-path.js';
import type { PreparedPeel } from './peel-specimen.js';
import type { RowStages } from './row-stages.js';
import type { SpecimenResult, Verdict } from './types.js';

type Loaded = { readonly kind: Verdict; readonly load: number };

/** Load up to which the next thing is looked for, as a multiple of that at the first. */
const farthest = 100;

/**
 * What a peel is limited by: the arm where one breaks, else the row that gives way at the highest load, else the bond.
 *
 * The peel is followed once more with that unbreakable; what gives way then is the next, and its load over the first the margin: below 1
 * where stronger threads would bend the arms more sharply and break them at a lower load. (The bond gives way first in
 * nearly every peel, at its own low load; that would say nothing of the stitching. Where an arm breaks before it does, it is the next.)
 */
export function peelVerdict(
  prepared: PreparedPeel,
  path: PeelPath,
  width: number,
  working?: Working,
): SpecimenResult['verdict'] {
  const { peel, limits } = prepared;
  // A test that ends before anything happens is taken further.
  const whole = path.events.length > 0 ? path : followPeel(peel, { ...limits, displacement: Number.POSITIVE_INFINITY });
  const first = limitedBy(prepared, whole) ?? onset(whole);
  const limit = { first: first.kind, load: first.load * prepared.units.force * width };
  const grown = whole.events.some(({ kind }) => kind === 'bond');
  if (!(first.load > 0) || (!canFail(prepared, first.kind) && grown)) return limit;
  const again = followPeel(without(prepared, first.kind), {
    ...limits,
    ...(first.kind === 'bond' ? { bondHolds: true } : {}),
    displacement: Number.POSITIVE_INFINITY,
    untilRow: { load: farthest * first.load },
  } satisfies PathLimits);
  const next = limitedBy(prepared, again) ?? (grown ? undefined : onset(again));
  if (next === undefined) return limit;
  const margin = next.load / first.load;
  const P_n = next.load * prepared.units.force * width;
  working?.part('limits', first.kind, next.kind).step('nextToGive', { P_f: limit.load, P_n, f_n: margin });
  return { ...limit, next: next.kind, margin };
}

/** Whether there is anything else that could give way. */
function canFail({ peel, rows }: PreparedPeel, besides: Verdict): boolean {
  const arms = peel.limits.some(({ tension, compression }) => Number.isFinite(Math.min(tension, compression)));
  // While the bond holds no row is reached.
  return (arms && besides !== 'arm') || (besides !== 'bond' && rows.some(({ failure }) => failure !== besides));
}

function limitedBy({ rows }: PreparedPeel, { events, points }: PeelPath): Loaded | undefined {
  const loads = events.flatMap((event): Loaded[] => {
    const kind = kindOf(event, (row) => rows[row]?.failure);
    // What had to be borne to get there: the load may have been higher before.
    return kind === undefined
      ? []
      : [{ kind, load: Math.max(...points.slice(0, event.point + 1).map((one) => one.load)) }];
  });
  const arm = loads.find(({ kind }) => kind === 'arm');
  if (arm !== undefined) return arm;
  return loads.reduce<Loaded | undefined>(
    (most, one) => (most === undefined || one.load > most.load ? one : most),
    undefined,
  );
}

function kindOf(event: PathEvent, failureOf: (row: number) => Verdict | undefined): Verdict | undefined {
  if (event.kind === 'arm') return 'arm';
  return event.row === undefined ? undefined : failureOf(event.row);
}

function onset({ events, points }: PeelPath): Loaded {
  const bond = events.find(({ kind }) => kind === 'bond');
  return { kind: 'bond', load: points[bond?.point ?? -1]?.load ?? 0 };
}

function without({ peel, rows }: PreparedPeel, kind: Verdict): PeelCase {
  if (kind === 'bond') return peel;
  if (kind === 'arm') {
    const endless = { tension: Number.POSITIVE_INFINITY, compression: Number.POSITIVE_INFINITY };
    return { ...peel, limits: peel.limits.map((limit) => ({ ...limit, ...endless })) };
  }
  return {
    ...peel,
    rows: peel.rows.map((row, i) => (rows[i]?.failure === kind ? { ...row, law: unbreakable(row.law) } : row)),
  };
}

/** Opening up to which an unbreakable row goes on, as a multiple of that at its greatest force. */
const endless = 1e6;

/** The law up to its greatest force, then on along the line from nothing. */
function unbreakable(law: RowStages): RowStages {
  const { stages, peak } = law;
  const points = stages.flatMap(({ opening, force, area }) =>
    opening.map((w, i) => ({ w, f: force[i] ?? 0, area: area[i] ?? 0 })),
  );
  const top = points.findIndex(({ w, f }) => f >= peak.force && w >= peak.opening * (1 - 1e-12));
  const rise = points.slice(0, top + 1);
  const to = endless * peak.opening;
  const force = endless * peak.force;
  const before = rise.at(-1);
  const area = (before?.area ?? 0) + ((peak.force + force) / 2) * (to - peak.opening);
  return {
    stages: [
      {
        opening: [...rise.map(({ w }) => w), to],
        force: [...rise.map(({ f }) => f), force],
        area: [...rise.map((point) => point.area), area],
        from: 0,
        to,
        drops: false,
        // What is stiffer at the greatest force than before stays so.
        firmer: stages
          .flatMap(({ firmer }) => firmer)
          .filter(({ from }) => from < peak.opening)
          .map((one) => (one.to >= peak.opening * (1 - 1e-12) ? { ...one, to } : one)),
      },
    ],
    firm: law.firm,
    peak: { force, opening: to },
    work: area,
  };
}
