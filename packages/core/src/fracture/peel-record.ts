import { workAlong } from './path-work.js';
import type { NaturalUnits } from './peel-model.js';
import type { PathPoint, PeelPath } from './peel-path.js';
import { type Moment as ResistanceMoment, resistanceOf } from './specimen/resistance.js';
import type { ResistancePoint, SpecimenState } from './types.js';

/** What a machine that moves its grips apart sees of a path. */
export interface PeelRecord {
  readonly states: readonly SpecimenState[];
  readonly resistance: readonly ResistancePoint[];
  /** Displacement of the machine at each point of the path, m. */
  readonly displacement: readonly number[];
  readonly energyError: number;
  /** The record as the resistance sees it, SI, with the states of the path in natural units. */
  readonly moments: readonly PeelMoment[];
}

/** A state of the record with its place on the path. */
export interface PeelMoment extends ResistanceMoment {
  readonly load: number;
  readonly displacement: number;
  readonly point: PathPoint;
}

type Moment = PathPoint & { readonly released: number };

/**
 * The record of a peel pulled by the displacement of its grips.
 *
 * Where the path goes back, the grips stay and the specimen jumps to where the path comes to that displacement again; what the path would have
 * given back to the grips on that way is set free.
 */
export function peelRecord(path: PeelPath, { length, force }: NaturalUnits, width: number): PeelRecord {
  const works = workAlong(path.points);
  const points = path.points.map((point, i) => ({ ...point, work: works[i] ?? point.work }));
  const moments: Moment[] = [];
  const displacement: number[] = [];
  let top = 0;
  let released = 0;
  let before: PathPoint | undefined;
  let outside = false;
  let energyError = 0;
  for (const point of points) {
    if (point.displacement >= top) {
      if (outside && before !== undefined) {
        const landing = between(before, point, top);
        released = (moments.at(-1)?.work ?? 0) - landing.work;
        moments.push({ ...landing, work: landing.work + released, released });
      }
      outside = false;
      top = point.displacement;
      moments.push({ ...point, work: point.work + released, released });
    } else {
      outside = true;
    }
    const given = outside ? (moments.at(-1)?.work ?? 0) : point.work + released;
    const off = point.work - point.elastic - point.bond - point.thread;
    energyError = Math.max(energyError, Math.abs(off) / given);
    displacement.push(top * length);
    before = point;
  }
  const energy = force * length * width;
  const states = moments.map(
    (one): SpecimenState => ({
      displacement: one.displacement * length,
      load: one.load * force * width,
      crackLength: one.length * length,
      work: one.work * energy,
      elastic: one.elastic * energy,
      bond: one.bond * energy,
      thread: one.thread * energy,
      ...(one.released > 0 ? { released: one.released * energy } : {}),
      armStrain: one.strain,
    }),
  );
  // By load: 2 P/b where the arms stand upright at the grips. Arms that bend far unload along their own curve.
  const read = moments.map((point, i): PeelMoment => {
    const { crackLength, load, displacement: moved, work, elastic, released = 0 } = states[i] as SpecimenState;
    return {
      crackLength,
      load,
      displacement: moved,
      byLoad: point.byLoad * force,
      work,
      stored: elastic,
      released,
      point,
    };
  });
  return { states, resistance: resistanceOf(read, width), displacement, energyError, moments: read };
}

/** The point between two at a displacement. */
function between(a: PathPoint, b: PathPoint, displacement: number): PathPoint {
  const t = (displacement - a.displacement) / (b.displacement - a.displacement);
  const mix = (of: (point: PathPoint) => number): number => of(a) + t * (of(b) - of(a));
  return {
    displacement,
    load: mix(({ load }) => load),
    length: mix((point) => point.length),
    byLoad: mix(({ byLoad }) => byLoad),
    work: mix(({ work }) => work),
    elastic: mix(({ elastic }) => elastic),
    bond: mix(({ bond }) => bond),
    thread: mix(({ thread }) => thread),
    strain: mix(({ strain }) => strain),
    strainShare: mix(({ strainShare }) => strainShare),
    zone: mix(({ zone }) => zone),
    turn: mix(({ turn }) => turn),
    landing: { before: a.byLoad, after: b.byLoad, place: t },
  };
}
