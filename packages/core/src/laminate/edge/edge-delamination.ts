import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { entry } from '../matrix3.js';
import { laminate as stack } from '../stack.js';
import { stiffness } from '../stiffness.js';
import type { Laminate } from '../types.js';
import { type EdgePeel, edgePeel } from './edge-peel.js';
import { alikeNeighbours, isMirrored } from './interfaces.js';
import { type EdgeOpening, opening } from './opening.js';
import { type StripState, stripPart } from './strip-part.js';

/** The state in which the edge is judged. */
export interface EdgeOptions {
  /** Axial strain along x, tension positive; 0 when not given. */
  readonly strain?: number;
  /** K from the stress-free state; 0 when not given. */
  readonly temperatureChange?: number;
  /** Energy per area that an interface takes to part, J/m². */
  readonly toughness?: number;
}

/** One interface of the laminate at its free edge. */
export interface EdgeInterface {
  /** Number of plies below it. */
  readonly below: number;
  /** m from the mid-plane. */
  readonly z: number;
  /** Angles of the plies below and above, degrees. */
  readonly angles: readonly [below: number, above: number];
  /** Whether both plies are equally stiff in laminate axes: no interface, and no release counted. */
  readonly alike: boolean;
  /** This interface alone; absent when alike. */
  readonly single?: EdgeOpening;
  /** This one and its mirror image together, for a symmetric laminate; absent when alike, as at its mid-plane always. */
  readonly pair?: EdgeOpening;
  readonly peel: EdgePeel;
}

/** The free edge along x of a laminate. */
export interface EdgeDelamination {
  /** From the tool side on. */
  readonly interfaces: readonly EdgeInterface[];
  /** Where most energy is released per front; absent when no interface parts different plies. */
  readonly critical?: { readonly below: number; readonly opening: 'single' | 'pair' } & EdgeOpening;
  readonly midPlanePeel: EdgePeel;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Delamination from a free edge along x: for each interface the energy that a unit of new surface releases, per front.
 *
 * A long crack from the edge under held strain. All parts are strips that may bend across x: both of a single interface; of an
 * interface with its mirror image in a symmetric laminate the outer two, while the middle one stays flat by symmetry. Then
 * ε² t (E - E*)/2 is shared by two fronts (O'Brien's formula counts one and holds the outer parts flat too: `flatEdgeRelease`). Parts that
 * would bend into each other touch at the edge, without friction. Heat enters through the energy that residual stress keeps in the
 * whole laminate and in its parts.
 * It tells whether a crack of a ply thickness or more grows, not where a sound edge cracks first, and not in which mode.
 *
 * @param options strain; temperature change in K; toughness in J/m², more than 0
 * @returns G in J/m² per front; onset strains where a toughness is given
 * @throws not-computable when heat acts and a ply has no thermal expansion; out-of-range for values that cannot be;
 *   not-admissible as `stiffness`
 * @source O'Brien 1982; Pagano & Pipes 1971 (sign of the peel stress)
 */
export function edgeDelamination(laminate: Laminate, options: EdgeOptions = {}): EdgeDelamination {
  const { strain = 0, temperatureChange = 0, toughness } = options;
  const state: StripState = { strain, temperatureChange };
  demand(state, toughness);
  const count = laminate.plies.length;
  const mirrored = isMirrored(laminate);
  const alike = alikeNeighbours(laminate);
  const unit = { strain: 1, temperatureChange: 0 };
  const whole = { laminate, strip: stripPart(laminate) };
  const Ex = (2 * whole.strip.energy(unit)) / laminate.thickness;
  const loaded = strain !== 0 || temperatureChange !== 0;
  const opened = (cuts: readonly number[]): EdgeOpening =>
    opening(whole, cuts, loaded ? state : undefined, temperatureChange, toughness);
  const peelAt = edgePeel(laminate, Ex, loaded ? state : unit);

  const interfaces: EdgeInterface[] = [];
  let z = -laminate.thickness / 2;
  for (let below = 1; below < count; below++) {
    const [lower, upper] = [laminate.plies[below - 1], laminate.plies[below]];
    if (lower === undefined || upper === undefined) break;
    z += lower.thickness;
    const equal = alike(below - 1);
    const cuts = [Math.min(below, count - below), Math.max(below, count - below)];
    interfaces.push({
      below,
      z,
      angles: [lower.angle, upper.angle],
      alike: equal,
      ...(equal ? {} : { single: opened([below]) }),
      ...(equal || !mirrored ? {} : { pair: opened(cuts) }),
      peel: peelAt(z),
    });
  }
  const critical = worst(interfaces, loaded ? (one) => one.G : (one) => one.perSquare);
  return {
    interfaces,
    ...(critical === undefined ? {} : { critical }),
    midPlanePeel: peelAt(0),
    notes: uniqueNotes([
      ...laminate.notes,
      ...unbalancedNotes(laminate, interfaces),
      ...contactNotes(interfaces),
      ...notesOn(interfaces, critical?.onset?.tension === 0),
    ]),
    sources: uniqueSources(laminate.sources, ['obrien-1982', 'pagano-pipes-1971', 'selvage-2026-derivation']),
  };
}

function demand({ strain, temperatureChange }: StripState, toughness: number | undefined): void {
  if (!(Number.isFinite(strain) && Number.isFinite(temperatureChange))) {
    fail({
      code: 'out-of-range',
      message: `the strain is ${strain} and the temperature change ${temperatureChange} K`,
      allowed: 'finite numbers',
    });
  }
  if (toughness !== undefined && !(toughness > 0 && Number.isFinite(toughness))) {
    fail({ code: 'out-of-range', message: `the toughness is ${toughness} J/m²`, allowed: 'a finite value above 0' });
  }
}

/** A release greater by no more than this share is the same, and the interface nearer to the tool is named: mirror images differ by rounding. */
const same = 1e-9;

function worst(interfaces: readonly EdgeInterface[], by: (one: EdgeOpening) => number): EdgeDelamination['critical'] {
  let found: EdgeDelamination['critical'];
  for (const { below, single, pair } of interfaces) {
    for (const [opening, one] of [['single', single] as const, ['pair', pair] as const]) {
      if (one === undefined || (found !== undefined && by(one) <= by(found) * (1 + same))) continue;
      found = { below, opening, ...one };
    }
  }
  return found;
}

function notesOn(interfaces: readonly EdgeInterface[], heatAlone: boolean): Note[] {
  const notes: Note[] = [
    {
      level: 'assumption',
      text: 'A crack from the edge that is longer than a ply is thick, in a wide laminate strained evenly along its edge. Where a sound edge first cracks, in which mode, and bending loads are not covered.',
      source: 'obrien-1982',
    },
    {
      level: 'assumption',
      text: 'G is per front. A toughness that was reduced from a symmetric specimen with the formula for one surface belongs to twice the G of a pair.',
      source: 'obrien-1982',
    },
  ];
  if (interfaces.some(({ alike }) => alike)) {
    notes.push({
      level: 'assumption',
      text: 'Between plies that are alike in laminate axes no delamination is counted: nothing there makes an edge crack start.',
    });
  }
  if (heatAlone) {
    notes.push({
      level: 'warning',
      text: 'Residual stress from the change of temperature alone releases the given toughness: the edge may part without load.',
    });
  }
  return notes;
}

/** Tells of cracks whose faces touch. */
function contactNotes(interfaces: readonly EdgeInterface[]): Note[] {
  if (!interfaces.some(({ single, pair }) => single?.touches === true || pair?.touches === true)) return [];
  return [
    {
      level: 'assumption',
      text: 'Some parts would bend into each other. Their faces then touch at the edge and stand apart behind it, which keeps three quarters of what bending would release; friction, which would keep more, is not counted.',
      source: 'selvage-2026-derivation',
    },
  ];
}

/** Below this share of A16 in A11 a part counts as balanced. */
const noticeable = 1e-6;

/** Tells that a part which is not balanced is let shear, and how far from balanced it is. */
function unbalancedNotes({ plies }: Laminate, interfaces: readonly EdgeInterface[]): Note[] {
  const parts = interfaces.flatMap(({ below, alike }) =>
    alike ? [] : [plies.slice(0, below), plies.slice(below)].map((part) => stiffness(stack(part)).A),
  );
  const share = Math.max(0, ...parts.map((A) => Math.abs(entry(A, 0, 2) / entry(A, 0, 0))));
  if (share <= noticeable) return [];
  return [
    {
      level: 'assumption',
      text: `Parts that are not balanced shear once they part (A16/A11 up to ${share.toPrecision(2)}), which is counted as release; a wide plate may hinder it, and G is then smaller.`,
    },
  ];
}
