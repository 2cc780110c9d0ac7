import { type Distribution, demandDistribution, endsOf, type Lognormal, type Normal } from './distributions.js';
import { normalBelow, normalDensity } from './normal.js';

/** Mean and standard deviation, in the unit of the distribution. */
export interface Moments {
  readonly mean: number;
  readonly standardDeviation: number;
}

/**
 * Mean and standard deviation of a distribution, in closed form.
 *
 * Uniform: (a + b)/2, (b - a)/√12. Triangular: (a + c + b)/3, variance (a² + b² + c² - ab - ac - bc)/18. Normal and lognormal see
 * {@link momentsOfNormal} and {@link momentsOfLognormal}.
 *
 * @throws out-of-range
 * @source Johnson, Kotz & Balakrishnan 1994, johnson-1994
 */
export function momentsOf(distribution: Distribution): Moments {
  demandDistribution(distribution);
  switch (distribution.kind) {
    case 'normal':
      return momentsOfNormal(distribution);
    case 'lognormal':
      return momentsOfLognormal(distribution);
    case 'uniform': {
      const { low, high } = distribution;
      return { mean: low + (high - low) / 2, standardDeviation: (high - low) / Math.sqrt(12) };
    }
    case 'triangular': {
      const { low, likeliest, high } = distribution;
      const [up, down] = [likeliest - low, high - likeliest];
      // (a² + b² + c² - ab - ac - bc)/18 without loss of digits far from 0.
      return {
        mean: low + (2 * up + down) / 3,
        standardDeviation: Math.sqrt((up * up + up * down + down * down) / 18),
      };
    }
  }
}

/**
 * Normal between ends α and β (in standard deviations): with Z = Φ(β) - Φ(α), mean μ + σ (φ(α) - φ(β))/Z and variance
 * σ² [1 + (α φ(α) - β φ(β))/Z - ((φ(α) - φ(β))/Z)²].
 */
function momentsOfNormal(distribution: Normal): Moments {
  const { mean, standardDeviation } = distribution;
  const [a, b] = endsOf(distribution);
  const left = normalBelow(b) - normalBelow(a);
  const shift = (normalDensity(a) - normalDensity(b)) / left;
  const variance = 1 + (weighted(a) - weighted(b)) / left - shift * shift;
  return { mean: mean + standardDeviation * shift, standardDeviation: standardDeviation * Math.sqrt(variance) };
}

/** z φ(z), 0 at the infinite ends. */
const weighted = (z: number): number => (Number.isFinite(z) ? z * normalDensity(z) : 0);

/** Lognormal between ends: E[x^k] = m^k e^(k²σ²/2) [Φ(β - kσ) - Φ(α - kσ)]/[Φ(β) - Φ(α)]. */
function momentsOfLognormal(distribution: Lognormal): Moments {
  const { median, logDeviation: s } = distribution;
  const [a, b] = endsOf(distribution);
  const between = (k: number): number => normalBelow(b - k * s) - normalBelow(a - k * s);
  // Both per power of e^(s²/2): mean/m = e^(s²/2) first, E[x²]/m² = e^(2 s²) second.
  const first = between(1) / between(0);
  const second = between(2) / between(0);
  const variance = Math.expm1(s * s) * second + (second - first * first);
  const mean = median * Math.exp((s * s) / 2);
  return { mean: mean * first, standardDeviation: mean * Math.sqrt(variance) };
}
