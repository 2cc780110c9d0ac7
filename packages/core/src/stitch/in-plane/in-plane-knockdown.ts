import { fail } from '../../problem/index.js';
import { type Note, uniqueSources } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import { inMillimetres, requireNotNegative, requirePositive } from '../check.js';
import {
  checkInPlaneParameters,
  type Estimate,
  estimate,
  type InPlaneParameters,
  singleParameters,
} from './estimate.js';
import { affectedWidth, kinkingFactor, modulusFactor, pocketArea } from './formulas.js';
import { showKnockdown } from './knockdown-steps.js';
import type { InPlaneKnockdown, KnockdownInput } from './knockdown-types.js';
import { publishedChanges } from './published.js';

/** Share of the area above which crowding is no longer estimated. */
const most = 0.5;

/**
 * The in-plane price of stitching as estimates, not bounds: fibres pushed aside are wavy over part of the width, some are cut, thread and
 * resin take up room. Every range is that of the parameters in reference-data/stitch-priors.json at their worst and best together; no single value
 * in print lies in its range, tension loses far more than cut fibres alone. Not covered: gains, which are printed too; fatigue, wet or hot state, surface loops pressed into the faces, cloth (its own crimp hides part of the waviness).
 * @param working takes down the steps, by the single values of the parameters
 * @throws out-of-range any length, density or modulus not above 0; a Poisson ratio below 0; E1/G12 below that of an isotropic sheet; thread over
 * half of the area; a parameter outside its range
 * @source compression: Budiansky 1983 after Argon 1972; modulus from the off-axis compliance; the rest after Mouritz and Cox 2000
 */
export function inPlaneKnockdown(input: KnockdownInput, working?: Working): InPlaneKnockdown {
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
  const found = {
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
  if (working !== undefined) {
    const p = singleParameters(given);
    const sizes = { hole: hole(p), needle: needle(p), bundle, along };
    const area = pocketArea(sizes.hole, p.pocketAspect * sizes.hole, along, bundle);
    showKnockdown(input, p, { ...sizes, pocket: area }, found, working);
    working.notes(found.notes);
  }
  return found;
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
