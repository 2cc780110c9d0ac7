import { sinCosDegrees } from '../numeric/index.js';
import { type Note, type SourceKey, uniqueSources } from '../provenance/index.js';
import { ROW } from './kernel-layout.js';
import { sumStack } from './kernel-sum.js';
import type { Laminate } from './types.js';

type Four = readonly [V1: number, V2: number, V3: number, V4: number];

/** The twelve lamination parameters, each in [-1, 1]: V1..V4 go with cos 2θ, sin 2θ, cos 4θ, sin 4θ. */
export interface LaminationParameters {
  readonly A: Four;
  readonly B: Four;
  readonly D: Four;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Lamination parameters of a stack: its angles' harmonics averaged through the thickness.
 *
 * A: (1/h) Σ t ξ; B: (4/h²) Σ t z ξ; D: (12/h³) Σ (t z² + t³/12) ξ, with ξ = (cos 2θ, sin 2θ, cos 4θ, sin 4θ).
 * With plies of one material, A/h, 4B/h² and 12D/h³ are linear in them; with several a note says that they only describe angles.
 *
 * @source Tsai & Hahn 1980; Tsai & Pagano 1968
 */
export function laminationParameters(laminate: Laminate): LaminationParameters {
  const { plies } = laminate;
  const table = new Float64Array(plies.length * ROW);
  plies.forEach(({ angle }, k) => {
    const { sin: s, cos: c } = sinCosDegrees(2 * angle);
    table.set([c, s, (c - s) * (c + s), 2 * s * c], k * ROW);
  });
  const moments = new Float64Array(3 * ROW);
  const row = Int32Array.from(plies.keys());
  const thickness = Float64Array.from(plies, (ply) => ply.thickness);
  const h = sumStack(table, row, thickness, 0, plies.length, moments, 0);
  const four = (at: number, scale: number): Four => {
    const value = (i: number): number => (moments[at + i] ?? 0) * scale;
    return [value(0), value(1), value(2), value(3)];
  };
  return {
    A: four(0, 1 / h),
    B: four(ROW, 4 / h ** 2),
    D: four(2 * ROW, 12 / h ** 3),
    notes: severalMaterials(laminate) ? [...laminate.notes, note] : laminate.notes,
    sources: uniqueSources(laminate.sources, ['tsai-hahn-1980', 'tsai-pagano-1968']),
  };
}

const note: Note = {
  level: 'warning',
  text: 'The plies are of different materials: the lamination parameters describe their angles only, the stiffness does not follow from them.',
  source: 'tsai-hahn-1980',
};

function severalMaterials({ plies }: Laminate): boolean {
  const [first] = plies;
  return plies.some(
    (ply) => ply.E1 !== first?.E1 || ply.E2 !== first.E2 || ply.G12 !== first.G12 || ply.nu12 !== first.nu12,
  );
}
