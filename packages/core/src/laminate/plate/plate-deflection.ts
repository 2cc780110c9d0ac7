import { choice, fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueSources } from '../../provenance/index.js';
import type { Matrix2 } from '../shear/index.js';
import type { Laminate } from '../types.js';
import { shearModeStiffness, thinModeStiffness, waveNumbers } from './mode-stiffness.js';
import { demandLengths, type Plate, plateStiffness } from './plate.js';

/** Pressure on a plate, Pa: the same everywhere, or p sin(π x/a) sin(π y/b). */
export interface PlatePressure {
  readonly pressure: number;
  readonly shape: 'uniform' | 'sine';
  /** Shear stiffness, N/m; that of `transverseShear` when not given. */
  readonly H?: Matrix2;
}

/** Deflection at the centre, m, of a thin plate and with shear. */
export interface PlateDeflection {
  readonly thin: number;
  readonly withShear: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Deflection in thicknesses from which stretching of the middle surface matters (common practice, no source). */
const large = 0.5;

function largeNotes(thicknesses: number): Note[] {
  if (thicknesses <= large) return [];
  return [
    {
      level: 'warning',
      text: `The plate deflects by ${Number(thicknesses.toPrecision(2))} times its thickness. Above ${large} a plate whose edges cannot draw in stretches too and deflects less than computed (common practice, no source).`,
    },
  ];
}

/** Half waves of the series for uniform pressure; its terms fall with the third power at least. */
const halfWaves = 199;

/**
 * Deflection at the centre of a simply supported plate under pressure, by Navier's series.
 *
 * w = Σ q_mn / K_mn sin(mπ/2) sin(nπ/2) with q_mn = 16 p/(π² m n) over odd m, n for uniform pressure. Small deflections, against which
 * the plate does not stretch; clamped edges are not covered.
 *
 * @param plate m
 * @returns m, positive with the pressure
 * @throws out-of-range for sides, pressure or H; not-a-choice for the shape; not-admissible as `stiffness`
 * @source Timoshenko & Woinowsky-Krieger's Navier series as in Jones 1999, ch. 5; Reddy 2004, ch. 6 (with shear)
 */
export function plateDeflection(laminate: Laminate, { a, b }: Plate, load: PlatePressure): PlateDeflection {
  demandLengths({ a, b });
  if (!Number.isFinite(load.pressure)) {
    fail({ code: 'out-of-range', message: `the pressure is ${load.pressure} Pa`, allowed: 'a finite pressure' });
  }
  const shape = choice('shape', load.shape, ['uniform', 'sine']);
  const p = plateStiffness(laminate, load.H);
  const last = shape === 'sine' ? 1 : halfWaves;
  let [thin, withShear] = [0, 0];
  for (let m = last; m >= 1; m -= 2) {
    for (let n = last; n >= 1; n -= 2) {
      const [alpha, beta] = waveNumbers(a, b, m, n);
      const sign = (m + n) % 4 === 2 ? 1 : -1;
      const q = shape === 'sine' ? load.pressure : (sign * 16 * load.pressure) / (Math.PI ** 2 * m * n);
      thin += q / thinModeStiffness(p, alpha, beta);
      withShear += q / shearModeStiffness(p, alpha, beta);
    }
  }
  return {
    thin,
    withShear,
    notes: [...p.notes, ...largeNotes(Math.abs(withShear) / laminate.thickness)],
    sources: uniqueSources(p.sources, ['jones-1999', 'reddy-2004']),
  };
}
