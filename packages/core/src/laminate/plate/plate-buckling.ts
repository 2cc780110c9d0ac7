import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Matrix2 } from '../shear/index.js';
import type { Laminate } from '../types.js';
import { shearModeStiffness, thinModeStiffness, waveNumbers } from './mode-stiffness.js';
import { demandLengths, type Plate, type PlateStiffness, plateStiffness } from './plate.js';

/** Membrane forces before buckling, N/m, tension positive. */
export interface MembraneLoad {
  readonly Nx: number;
  readonly Ny?: number;
  /** Shear stiffness, N/m; that of `transverseShear` when not given. */
  readonly H?: Matrix2;
}

/** The load at which a plate buckles, and the half waves along x and y in which it does. */
export interface BucklingLoad {
  /** What the given forces are multiplied by to buckle the plate. */
  readonly multiplier: number;
  /** N/m, tension positive. */
  readonly Nx: number;
  readonly Ny: number;
  /** Both absent when the plate crimps: waves as short as shear allows. */
  readonly m?: number;
  readonly n?: number;
}

/** Buckling of a thin plate, and with shear through the thickness. */
export interface PlateBuckling {
  readonly thin: BucklingLoad;
  readonly withShear: BucklingLoad;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Buckling of a simply supported specially orthotropic plate under membrane forces along x and y.
 *
 * Multiplier = min over m, n of K_mn / (-Nx α² - Ny β²) with α = mπ/a, β = nπ/b and K_mn that of a thin plate or of first-order
 * theory; with shear no more than the crimping load Hx/(-Nx) or Hy/(-Ny). Clamped edges, shear forces Nxy, D16, D26 and
 * prebuckling bending are not covered: a plate loaded by Nxy may buckle much earlier than its Nx and Ny say.
 *
 * @param plate m
 * @param load N/m; at least one of Nx, Ny negative (compression)
 * @throws out-of-range for sides or H, for forces that are not finite or none of which compresses; not-admissible as `stiffness`
 * @source Jones 1999, ch. 5; Timoshenko & Gere 1961 (isotropic limit); Reddy 2004 (with shear)
 */
export function plateBuckling(laminate: Laminate, plate: Plate, load: MembraneLoad): PlateBuckling {
  demandLengths({ a: plate.a, b: plate.b });
  const { Nx, Ny = 0 } = load;
  if (!(Number.isFinite(Nx) && Number.isFinite(Ny) && Math.min(Nx, Ny) < 0)) {
    fail({
      code: 'out-of-range',
      message: `Nx is ${Nx} N/m and Ny is ${Ny} N/m`,
      allowed: 'finite forces of which one at least is compression, below 0',
    });
  }
  const p = plateStiffness(laminate, load.H);
  const thin = lowest(p, plate, [Nx, Ny], thinModeStiffness);
  const shear = lowest(p, plate, [Nx, Ny], shearModeStiffness);
  const crimping = Math.min(...[Nx < 0 ? p.Hx / -Nx : [], Ny < 0 ? p.Hy / -Ny : []].flat());
  const withShear = crimping < shear.multiplier ? loadAt(crimping, [Nx, Ny]) : shear;
  const share = 1 - withShear.multiplier / thin.multiplier;
  const soft: Note[] =
    share > 0.05
      ? [
          {
            level: 'warning',
            text: `Shear through the thickness lowers the buckling load by ${(100 * share).toFixed(0)} %; the value with shear is the one to use.`,
          },
        ]
      : [];
  return {
    thin,
    withShear,
    notes: uniqueNotes([...p.notes, ...soft]),
    sources: uniqueSources(p.sources, ['jones-1999', 'timoshenko-gere-1961', 'reddy-2004']),
  };
}

type Forces = readonly [Nx: number, Ny: number];

function lowest(
  p: PlateStiffness,
  { a, b }: Plate,
  [Nx, Ny]: Forces,
  stiffnessOf: (p: PlateStiffness, alpha: number, beta: number) => number,
): BucklingLoad {
  const lastM = mostWaves(a / b, p.D11, p, -Nx, Ny);
  const lastN = mostWaves(b / a, p.D22, p, -Ny, Nx);
  let found: BucklingLoad = { multiplier: Number.POSITIVE_INFINITY, Nx, Ny };
  for (let m = 1; m <= lastM; m++) {
    for (let n = 1; n <= lastN; n++) {
      const [alpha, beta] = waveNumbers(a, b, m, n);
      const compression = -Nx * alpha * alpha - Ny * beta * beta;
      const multiplier = stiffnessOf(p, alpha, beta) / compression;
      if (compression > 0 && multiplier < found.multiplier) found = { ...loadAt(multiplier, [Nx, Ny]), m, n };
    }
  }
  return found;
}

/**
 * Half waves along the compressed side beyond which no thin plate buckles: with x = (α/β)² and τ the tension across over the compression,
 * K/(x - τ) is least at x = τ + √(τ² + (2 H τ + D22)/D11). Twice that number is searched, since shear shortens the waves.
 */
function mostWaves(aspect: number, along: number, p: PlateStiffness, compression: number, tension: number): number {
  if (!(compression > 0)) return 4;
  const tau = Math.max(0, tension / compression);
  const across = (p.D11 * p.D22) / along;
  const x = tau + Math.sqrt(tau * tau + (2 * (p.D12 + 2 * p.D66) * tau + across) / along);
  return 3 + Math.ceil(2 * aspect * Math.sqrt(x));
}

const loadAt = (multiplier: number, [Nx, Ny]: Forces): BucklingLoad => ({
  multiplier,
  Nx: multiplier * Nx,
  Ny: multiplier * Ny,
});
