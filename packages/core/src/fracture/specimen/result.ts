import { type Note, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { SpecimenResult } from '../types.js';
import type { Model } from './model.js';
import { resistanceOf } from './resistance.js';
import { type RunPlan, run } from './run.js';
import { verdictOf } from './verdict.js';

/** What a kind of specimen adds to its model. */
export interface Pulled {
  readonly model: Model;
  readonly plan: RunPlan;
  readonly width: number;
  byLoad(load: number, crackLength: number): number;
  /** Share of a length that the displacement may reach before the specimen is no longer straight enough for linear beams. */
  readonly straight: { readonly most: number; readonly length: string; of(crackLength: number): number };
  readonly notes: readonly Note[];
  readonly sources: readonly string[];
}

/** Pulls a specimen and says what came of it. */
export function pull({ model, plan, width, byLoad, straight, notes, sources }: Pulled): SpecimenResult {
  const whole = run(model, plan);
  const { states, zoneLength, energyError, overlap } = whole;
  const verdict = verdictOf(model, whole, plan);
  const warnings: Note[] = [];
  const bend = Math.max(...states.map(({ displacement, crackLength }) => displacement / straight.of(crackLength)));
  if (bend > straight.most) {
    warnings.push({
      level: 'warning',
      text: `Displacement reaches ${bend.toFixed(2)} of the ${straight.length}; linear beams hold to about ${straight.most} (common practice, no source).`,
    });
  }
  if (overlap > 0.01 * (states.at(-1)?.displacement ?? 0)) {
    const depth = (overlap * 1000).toPrecision(2);
    warnings.push({
      level: 'warning',
      text: `Crack faces would overlap by ${depth} mm at a row; contact between them is left out.`,
    });
  }
  if (energyError > 0.005) {
    const percent = (100 * energyError).toFixed(1);
    warnings.push({ level: 'warning', text: `The energy balance is open by ${percent} %.` });
  }
  return {
    states,
    events: whole.events.map(({ from, ...event }) => ({ ...event, byLoad: byLoad(event.load, from) })),
    resistance: resistanceOf(
      states.map(({ crackLength, load, displacement, work, released = 0 }) => ({
        crackLength,
        byLoad: byLoad(load, crackLength),
        work,
        stored: (load * displacement) / 2,
        released,
      })),
      width,
    ),
    peakForce: Math.max(...states.map(({ load }) => load)),
    ...(Number.isFinite(model.strainLimit) && {
      armShare: Math.max(...states.map(({ armStrain }) => armStrain)) / model.strainLimit,
    }),
    zoneLength,
    verdict,
    energyError,
    notes: uniqueNotes([...notes, ...warnings]),
    sources: uniqueSources(sources),
  };
}
