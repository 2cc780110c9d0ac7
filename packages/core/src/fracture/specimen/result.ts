import { type Note, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import type { SpecimenResult } from '../types.js';
import type { Model, State } from './model.js';
import { type RowsOfLoad, showGreatest, showPulled } from './pulled-steps.js';
import { piecesOf, resistanceOf } from './resistance.js';
import { type RunPlan, run } from './run.js';
import { verdictOf } from './verdict.js';

/** Of all specimens that jump. */
export const jumping: Note = {
  level: 'assumption',
  text: 'Between two states that the grips can hold the specimen jumps; what that sets free breaks nothing more.',
};

/** What a kind of specimen adds to its model. */
export interface Pulled {
  readonly model: Model;
  readonly plan: RunPlan;
  readonly width: number;
  byLoad(load: number, crackLength: number): number;
  /** The formula of `byLoad` in the working, and its inputs. */
  readonly rows: RowsOfLoad;
  /** Takes down how near an arm comes to breaking, in the state in which it is nearest. */
  showBend(state: State, working: Working): void;
  /** Whether the closed form holds at a crack length; where not, the resistance has no points. */
  readonly readable?: (crackLength: number) => boolean;
  /** Length to which a displacement counts as large, m, and what to say of the largest share of it, over all and at an onset. */
  readonly straight: {
    of(crackLength: number): number;
    note(largest: number, atOnset: number | undefined): readonly Note[];
  };
  readonly notes: readonly Note[];
  /** What there is to say of the crack length at the end. */
  readonly ending?: (crackLength: number) => readonly Note[];
  readonly sources: readonly string[];
}

/** Pulls a specimen and says what came of it. */
export function pull(pulled: Pulled, working?: Working): SpecimenResult {
  const { model, plan, width, byLoad, readable = () => true, straight, notes, ending, sources } = pulled;
  const whole = run(model, plan);
  const { states, zoneLength, energyError, overlap } = whole;
  const warnings: Note[] = [];
  const largest = (list: readonly { displacement: number; crackLength: number }[]): number =>
    Math.max(...list.map(({ displacement, crackLength }) => displacement / straight.of(crackLength)));
  const onsets = whole.events.map(({ displacement, from }) => ({ displacement, crackLength: from }));
  warnings.push(...straight.note(largest(states), onsets.length > 0 ? largest(onsets) : undefined));
  const start = states[0]?.crackLength ?? 0;
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
  const moments = states.map(({ crackLength, load, displacement, work, released = 0 }) => ({
    crackLength,
    load,
    displacement,
    byLoad: byLoad(load, crackLength),
    work,
    stored: (load * displacement) / 2,
    released,
  }));
  const settled = (states.at(-1)?.crackLength ?? 0) < model.longest;
  const armStrain = Math.max(...states.map((state) => state.armStrain));
  const armShare = Number.isFinite(model.strainLimit) ? armStrain / model.strainLimit : undefined;
  const events = whole.events.map(({ from, ...event }) => ({ ...event, byLoad: byLoad(event.load, from), from }));
  if (working !== undefined) {
    const pieces = piecesOf(moments, settled).filter(({ from }) => readable(from.crackLength));
    showPulled({ rows: pulled.rows, events, pieces, width }, working);
    showGreatest(states, working.part('peak'));
    if (armShare !== undefined) pulled.showBend(whole.sharpest, working.part('sharpestBend'));
  }
  const verdict = verdictOf(model, whole, plan, working);
  const found = uniqueNotes([...notes, ...(ending?.(states.at(-1)?.crackLength ?? 0) ?? []), ...warnings]);
  working?.notes(found);
  return {
    states,
    events: events.map(({ from: _, ...event }) => event),
    resistance: resistanceOf(moments, width, settled).filter(({ growth }) => readable(start + growth)),
    peakForce: Math.max(...states.map(({ load }) => load)),
    ...(armShare !== undefined && { armShare }),
    zoneLength,
    verdict,
    energyError,
    notes: found,
    sources: uniqueSources(sources),
  };
}
