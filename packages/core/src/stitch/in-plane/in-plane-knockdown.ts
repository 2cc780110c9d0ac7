import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueSources } from '../../provenance/index.js';
import { inMillimetres, requireNotNegative, requirePositive } from '../check.js';
import { checkInPlaneParameters, type Estimate, estimate, type InPlaneParameters } from './estimate.js';
import { affectedWidth, kinkingFactor, modulusFactor, pocketArea, type WavyPly } from './formulas.js';
import { type PublishedChange, publishedChanges } from './published.js';

/** Stitches seen by fibres loaded along their length. SI units. */
export interface KnockdownInput {
  /** The ply whose fibres are loaded. */
  readonly ply: WavyPly;
  /** Distance between holes across the loaded fibres, m: the row spacing for fibres along the rows, the pitch for fibres across them. */
  readonly spacing: number;
  /** Distance between holes along a row, m. */
  readonly pitch: number;
  /** 1/m^2 */
  readonly penetrationDensity: number;
  /** Diameter of the round bundle of the legs in a hole, m. */
  readonly bundleDiameter: number;
  /** Measured width of hole or resin pocket, m; from the bundle when not given. */
  readonly holeWidth?: number;
  /** Of the needle, m; the width of the hole when not given. */
  readonly needleDiameter?: number;
  readonly parameters?: Partial<InPlaneParameters>;
}

/** What stitches take from a laminate in its plane: factors on the value without stitches. */
export interface InPlaneKnockdown {
  /** Share of the width whose fibres are disturbed. */
  readonly affectedWidth: Estimate;
  /** Angle of the fibres beside a hole, radians. */
  readonly waviness: Estimate;
  readonly modulus: Estimate;
  /** `lower`: the whole section at the strength of the disturbed strips; `upper`: mean over the width. */
  readonly compression: { readonly lower: Estimate; readonly upper: Estimate };
  /** Strength by cut fibres alone; printed losses can be far larger. */
  readonly tension: Estimate;
  /** Bending across a row, fibres running across it: `lower` with the holes as gaps, `upper` by cut fibres alone. */
  readonly perforation: { readonly lower: Estimate; readonly upper: Estimate };
  /** Share of the area that the thread alone takes, and the thread with its resin pockets. */
  readonly displaced: { readonly lower: number; readonly upper: Estimate };
  /**
   * 1/(1 - displaced): the thickness under a soft tool, where the fibres between the holes keep their density and nominal stresses fall by as much;
   * in a closed tool the fibre fraction between the holes.
   */
  readonly crowding: { readonly lower: number; readonly upper: Estimate };
  /** In print. */
  readonly published: readonly PublishedChange[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Share of the area above which crowding is no longer estimated. */
const most = 0.5;

/**
 * The in-plane price of stitching as estimates, not bounds: fibres pushed aside are wavy over part of the width, some are cut, thread and
 * resin take up room. Every range is that of the parameters in reference-data/stitch-priors.json at their worst and best together; no single value
 * in print lies in its range, tension loses far more than cut fibres alone. Not covered: gains, which are printed too; fatigue, wet or hot state, surface loops pressed into the faces, cloth (its own crimp hides part of the waviness).
 * @throws out-of-range any length, density or modulus not above 0; a Poisson ratio below 0; E1/G12 below that of an isotropic sheet; thread over
 * half of the area; a parameter outside its range
 * @source compression: Budiansky 1983 after Argon 1972; modulus from the off-axis compliance; the rest after Mouritz and Cox 2000
 */
export function inPlaneKnockdown(input: KnockdownInput): InPlaneKnockdown {
  check(input);
  const { ply, spacing, pitch, penetrationDensity, bundleDiameter, holeWidth } = input;
  const given = input.parameters ?? {};
  const hole = (p: InPlaneParameters) => holeWidth ?? p.holeOverBundle * bundleDiameter;
  const needle = (p: InPlaneParameters) => input.needleDiameter ?? hole(p);
  const affected = (p: InPlaneParameters) => affectedWidth(hole(p), p.straighteningOverHole * hole(p), spacing);
  const kinking = (p: InPlaneParameters) => kinkingFactor(1 / p.pocketAspect, p.misalignment, p.yieldShearStrain);
  const bundle = (Math.PI * bundleDiameter ** 2) / 4;
  const along = 1 / (penetrationDensity * spacing);
  const displaced = (p: InPlaneParameters) =>
    penetrationDensity * pocketArea(hole(p), p.pocketAspect * hole(p), along, bundle);
  const cut = (p: InPlaneParameters, distance: number) => 1 - p.cutShare * Math.min(1, needle(p) / distance);
  const width = ['holeOverBundle'] as const;
  const strips = [...width, 'straighteningOverHole'] as const;
  const kinks = ['pocketAspect', 'misalignment', 'yieldShearStrain'] as const;
  const pockets = [...width, 'pocketAspect'] as const;
  const share = estimate(affected, strips, given);
  const room = estimate(displaced, pockets, given);
  const thread = threadShare(penetrationDensity * bundle);
  return {
    affectedWidth: share,
    waviness: estimate((p) => 1 / p.pocketAspect, ['pocketAspect'], given),
    modulus: estimate((p) => modulusFactor(ply, affected(p), 1 / p.pocketAspect), [...strips, 'pocketAspect'], given),
    compression: {
      lower: estimate(kinking, kinks, given),
      upper: estimate((p) => 1 - affected(p) * (1 - kinking(p)), [...strips, ...kinks], given),
    },
    tension: estimate((p) => cut(p, spacing), [...width, 'cutShare'], given),
    perforation: {
      lower: estimate((p) => Math.max(0, 1 - hole(p) / pitch), width, given),
      upper: estimate((p) => cut(p, pitch), [...width, 'cutShare'], given),
    },
    displaced: { lower: thread, upper: room },
    crowding: {
      lower: 1 / (1 - thread),
      upper: estimate((p) => 1 / (1 - Math.min(most, displaced(p))), pockets, given),
    },
    published: publishedChanges,
    notes: notesOf(share, room, input),
    sources: uniqueSources(
      ['budiansky-1983', 'argon-1972', 'mouritz-cox-2000', 'common-practice'],
      ['mouritz-leong-herszberg-1997'],
      publishedChanges.map(({ source }) => source),
    ),
  };
}

/** Share of the area that the thread takes. @throws out-of-range half or more */
function threadShare(share: number): number {
  if (share < most) return share;
  return fail({
    code: 'out-of-range',
    message: `thread takes ${Number((share * 100).toPrecision(3))} % of the area, must be below ${most * 100} %`,
    allowed: 'fewer penetrations or a finer thread',
  });
}

function check(input: KnockdownInput): void {
  const { ply, holeWidth, needleDiameter, parameters = {} } = input;
  for (const name of ['spacing', 'pitch', 'bundleDiameter'] as const) requirePositive(name, input[name], inMillimetres);
  requirePositive('penetrationDensity', input.penetrationDensity, (N) => `${N} 1/m^2`);
  if (holeWidth !== undefined) requirePositive('holeWidth', holeWidth, inMillimetres);
  if (needleDiameter !== undefined) requirePositive('needleDiameter', needleDiameter, inMillimetres);
  for (const name of ['E1', 'G12'] as const) requirePositive(name, ply[name], (E) => `${E / 1e9} GPa`);
  requireNotNegative('nu12', ply.nu12);
  if (ply.E1 / ply.G12 < 2 * (1 + ply.nu12)) {
    fail({
      code: 'out-of-range',
      message: `E1/G12 = ${Number((ply.E1 / ply.G12).toPrecision(4))}, below the 2 (1 + nu12) of an isotropic sheet`,
      allowed: 'a ply stiffer along its fibres than an isotropic sheet of the same shear modulus',
    });
  }
  checkInPlaneParameters(parameters);
}

function notesOf(share: Estimate, room: Estimate, { parameters = {}, holeWidth }: KnockdownInput): readonly Note[] {
  const notes: Note[] = [
    {
      level: 'warning',
      text: 'in-plane losses are estimates with the range of their parameters, no bounds: of seven single values in print none lies in its range; studies contradict one another, most changes lie within 20 % either way, the worst read lost 45 % of strength and 36 % of modulus in tension',
      source: 'mouritz-leong-herszberg-1997',
    },
    {
      level: 'warning',
      text: 'tension counts cut fibres alone, and printed losses can be far larger; gains in strength, printed too, are not covered',
    },
  ];
  if (Object.keys(parameters).length === 0) {
    const width = holeWidth === undefined ? 'hole width, ' : '';
    const text = `${width}pocket length, straightening width, cut fibres, waviness before stitching and shear yield taken from the priors of stitching, not measured`;
    notes.push({ level: 'assumption', text, source: 'common-practice' });
  }
  if (share.value >= 1) {
    const text = 'disturbed strips of neighbouring holes meet: the whole width counts as disturbed';
    notes.push({ level: 'warning', text });
  }
  if (room.high >= most) {
    notes.push({
      level: 'warning',
      text: 'thread and pockets would take half of the area or more: outside the range of the estimate',
    });
  }
  return notes;
}
