import { isCloth, isIsotropic, type Laminate } from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';
import { fibreAngle } from '../../numeric/index.js';
import { SelvageError } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { countedWidth, type InPlaneKnockdown, inPlaneKnockdown, type WavyPly } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import { defined } from '../assemble/constituents.js';
import type { LaminateModel, StitchingModel } from '../model.js';

/** Fibres that bear the load in a direction, and what stitches do to them. SI units. */
export interface LoadedFibres {
  /** Counted from the tool side, from 1. */
  readonly layer: number;
  readonly material: string;
  /** Of these fibres from x, degrees. */
  readonly angle: number;
  readonly cloth: boolean;
  /** Between holes across these fibres, m. */
  readonly spacing: number;
  readonly found: InPlaneKnockdown;
}

/** What the stitches of a plan cost its laminate in the plane. */
export interface StitchPrice {
  /** Why parts are absent, in words. */
  readonly missing: readonly string[];
  /** Loaded along x, which is along the rows, and along y. */
  readonly along?: LoadedFibres;
  readonly across?: LoadedFibres;
  /** What does not depend on the direction of a load: perforation, room, what is in print. */
  readonly common?: Pick<InPlaneKnockdown, 'perforation' | 'crowding' | 'published'>;
  /** Of the laminate without stitches, cores left out; absent when a ply does not know its own. */
  readonly fibreVolumeFraction?: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** How far fibres may run from the direction of a load that they are said to bear, degrees. */
const within = 15;

/** Fibres of one direction of a layer. */
interface Fibres extends WavyPly {
  readonly layer: number;
  readonly material: string;
  readonly angle: number;
  readonly cloth: boolean;
}

/** The directions of fibres of a layer with the constants along them; none of a core, a mat or what shears too stiffly to have fibres along it. */
function fibresOf(ply: Ply, i: number): Fibres[] {
  if (ply.core === true || isIsotropic(ply)) return [];
  const cloth = isCloth(ply);
  const of = (turn: number, E1: number, nu12: number): Fibres => ({
    layer: i + 1,
    material: ply.name,
    angle: fibreAngle(ply.angle + turn),
    cloth,
    E1,
    G12: ply.G12,
    nu12,
  });
  const all = [of(0, ply.E1, ply.nu12), ...(cloth ? [of(90, ply.E2, (ply.nu12 * ply.E2) / ply.E1)] : [])];
  return all.filter(({ E1, G12, nu12 }) => E1 / G12 >= 2 * (1 + nu12));
}

const stiffest = (fibres: readonly Fibres[]): Fibres | undefined =>
  fibres.reduce<Fibres | undefined>((best, one) => (best === undefined || one.E1 > best.E1 ? one : best), undefined);

/** What stitches cost in the plane, as far as the plan names its laminate. */
export function stitchPrice(
  model: StitchingModel,
  laminate: LaminateModel | undefined,
  working?: Working,
): StitchPrice {
  if (laminate === undefined) return nothing('the laminate that is stitched (laminate)');
  const fibres = laminate.laminate.plies.flatMap(fibresOf);
  const most = stiffest(fibres);
  if (most === undefined) return nothing('a layer whose fibres run in one or two directions');
  const pitch = pitchOf(model);
  const lines = holeDistances(model);
  const near = (direction: 0 | 90): Fibres | undefined =>
    stiffest(fibres.filter(({ angle }) => Math.abs(fibreAngle(angle - direction)) <= within));
  const loaded = (name: 'along' | 'across', chosen: Fibres | undefined): LoadedFibres | undefined => {
    if (chosen === undefined) return undefined;
    const { layer, material, angle, cloth } = chosen;
    const spacing = lines[name];
    const found = knockdown(model, chosen, spacing, pitch, working?.part(name));
    return { layer, material, angle, cloth, spacing, found };
  };
  try {
    const [along, across] = [loaded('along', near(0)), loaded('across', near(90))];
    const parts = [along, across].filter((one) => one !== undefined);
    const founds =
      parts.length > 0 ? parts.map(({ found }) => found) : [knockdown(model, most, lines.along, pitch, working)];
    return defined({
      missing: [
        ...(along === undefined ? [`fibres within ${within} degrees of x, along the rows`] : []),
        ...(across === undefined ? [`fibres within ${within} degrees of y, across the rows`] : []),
      ],
      along,
      across,
      common: commonOf(founds),
      fibreVolumeFraction: fibreContentOf(laminate),
      notes: uniqueNotes([...founds.flatMap(({ notes }) => notes), ...furtherNotes(model, parts)]),
      sources: uniqueSources(...founds.map(({ sources }) => sources)),
    });
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return nothing(...error.problems.map(({ message, allowed }) => `${message}; would do: ${allowed ?? 'less'}`));
  }
}

const nothing = (...missing: string[]): StitchPrice => ({ missing, notes: [], sources: [] });

function knockdown(
  model: StitchingModel,
  ply: WavyPly,
  spacing: number,
  pitch: number,
  working?: Working,
): InPlaneKnockdown {
  const { penetrationDensity, bundleDiameter, needleDiameter } = model.summary;
  const { E1, G12, nu12 } = ply;
  const { holeWidth } = model.plan;
  return inPlaneKnockdown(
    defined({ ply: { E1, G12, nu12 }, spacing, pitch, penetrationDensity, bundleDiameter, holeWidth, needleDiameter }),
    working,
  );
}

/** Between the holes of one straight row, m: of a zigzag whose sides lie a hole apart, those of one side. */
function pitchOf({ plan: { pattern }, summary }: StitchingModel): number {
  if (pattern.kind === 'rows') return Math.min(...pattern.rows.map((row) => row.pitch));
  if (pattern.kind === 'crossing') return Math.min(pattern.pitch, pattern.second.pitch);
  return pattern.kind === 'zigzag' && pattern.swing >= summary.holeWidth ? 2 * pattern.pitch : pattern.pitch;
}

/** Between holes across fibres that run along the rows, and across the rows, m; the sides of a zigzag are two lines of holes. */
function holeDistances({ plan: { pattern }, summary }: StitchingModel): { along: number; across: number } {
  switch (pattern.kind) {
    case 'rows': {
      // A single row near an edge stands for the strip over which it is counted.
      const distance = summary.rowsMetAcross?.spacing ?? countedWidth(pattern);
      return { along: distance, across: Math.min(...pattern.rows.map((row) => row.pitch)) };
    }
    case 'crossing': {
      const { pitch, rowSpacing, second } = pattern;
      return { along: Math.min(rowSpacing, second.pitch), across: Math.min(pitch, second.rowSpacing) };
    }
    case 'zigzag': {
      const lines = pattern.swing >= summary.holeWidth ? 2 : 1;
      return { along: pattern.rowSpacing / lines, across: pattern.pitch };
    }
    default:
      return { along: pattern.rowSpacing, across: pattern.pitch };
  }
}

/** Pockets lie along the fibres of every layer: of two directions the mean, with the range of both. */
function commonOf(founds: readonly InPlaneKnockdown[]): StitchPrice['common'] {
  const [first] = founds;
  if (first === undefined) return undefined;
  const { perforation, crowding, published } = first;
  const all = founds.map((one) => one.crowding.upper);
  const upper = {
    value: all.reduce((sum, { value }) => sum + value, 0) / all.length,
    low: Math.min(...all.map(({ low }) => low)),
    high: Math.max(...all.map(({ high }) => high)),
  };
  return { perforation, published, crowding: { lower: crowding.lower, upper } };
}

function fibreContentOf({ laminate, solidFibreThickness }: LaminateModel): number | undefined {
  const solid = solidOf(laminate);
  return solidFibreThickness === undefined || solid === 0 ? undefined : solidFibreThickness / solid;
}

const solidOf = ({ plies }: Laminate): number =>
  plies.reduce((sum, ply) => (ply.core === true ? sum : sum + ply.thickness), 0);

function furtherNotes({ plan, summary }: StitchingModel, parts: readonly LoadedFibres[]): Note[] {
  const cloths = [...new Set(parts.filter(({ cloth }) => cloth).map(({ material }) => material))];
  const { pattern } = plan;
  const oblique = pattern.kind === 'crossing' && (pattern.angle ?? 90) !== 90;
  return [
    { level: 'assumption', text: 'the rows run along x of the laminate' },
    ...(plan.holeWidth === undefined && summary.needleDiameter !== undefined
      ? [
          {
            level: 'assumption' as const,
            text: 'the hole of the needle is taken to close around the thread before the cure, to a pocket 1 to 1.5 times as wide as the thread in it; where it stays open, the width left along a row is the worst case',
          },
        ]
      : []),
    ...(cloths.length === 0
      ? []
      : [
          {
            level: 'assumption' as const,
            text: `cloth (${cloths.join(', ')}) is wavy already, so that the same hole adds less than is reckoned here for straight fibres`,
          },
        ]),
    ...(oblique
      ? [
          {
            level: 'assumption' as const,
            text: 'the second set of rows, which crosses at a slant, is counted as if it crossed at right angles',
          },
        ]
      : []),
  ];
}
