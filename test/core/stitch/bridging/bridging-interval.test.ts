import { describe, expect, it } from 'vitest';
import { uniformRandom } from '../../../../packages/core/src/numeric/index.js';
import {
  bridgingInterval,
  bridgingLaw,
  bridgingPriors,
  type Interval,
  inPlanePriors,
  type Prior,
  rodPriors,
  stitchType,
  zonePriors,
} from '../../../../packages/core/src/stitch/index.js';
import { samplePrior } from '../../../../packages/core/src/stitch/sample-prior.js';
import { codesOf, expectNear, mm } from '../support.js';
import { aramid, penetration, plain } from './support.js';

const bare = { type: stitchType('301-modified'), needleThread: aramid, underThread: aramid, thickness: 3 * mm };
const ordered = ({ low, median, high }: Interval) => low <= median && median <= high;

describe('the range of a bridging law', () => {
  it('is the same from the same seed, bit by bit, and another from another', () => {
    const run = (seed: number) => bridgingInterval(bare, { samples: 200, seed });
    expect(run(3)).toEqual(run(3));
    expect(run(3).work).not.toEqual(run(4).work);
  });

  it('holds low, median and high in order, and shares of failure that add up to 1', () => {
    for (const path of [undefined, { angle: 90 }]) {
      const range = bridgingInterval({ ...bare, ...(path && { path }) }, { samples: 100 });
      expect([range.peak, range.opening, range.work].every(ordered)).toBe(true);
      const { threadAtAnchor, threadAtCrack, threadPullOut } = range.failures;
      expectNear(threadAtAnchor + threadAtCrack + threadPullOut, 1);
      expect(threadPullOut).toBe(0);
      expect(range.work.low).toBeGreaterThan(0);
    }
  });

  it('shrinks to the law itself when every parameter is given', () => {
    const range = bridgingInterval(penetration(), { samples: 10 });
    const law = bridgingLaw(penetration());
    for (const end of ['low', 'median', 'high'] as const) {
      expectNear(range.peak[end], law.peak.force);
      expectNear(range.opening[end], law.peak.opening);
      expectNear(range.work[end], law.work, 1e-4);
    }
  });

  it('narrows when a parameter becomes known', () => {
    const width = ({ low, high }: Interval) => high / low;
    const known = { ...bare, parameters: { frictionStress: 7e6, beddingIn: 0.1 } };
    expect(width(bridgingInterval(known).work)).toBeLessThan(width(bridgingInterval(bare).work));
  });

  it('is steady in its numbers: two seeds of 4000 samples agree within 5 %', () => {
    const [a, b] = [1, 2].map((seed) => bridgingInterval(bare, { samples: 4000, seed }).work);
    for (const end of ['low', 'median', 'high'] as const) expectNear(a![end], b![end], 0.05);
  });

  it('refuses samples and seeds that are none', () => {
    for (const samples of [0, 9, 10.5, 1e6, Number.NaN]) {
      expect(codesOf(() => bridgingInterval(bare, { samples }))).toEqual(['out-of-range']);
    }
    expect(codesOf(() => bridgingInterval(bare, { seed: 0.5 }))).toEqual(['out-of-range']);
    expect(codesOf(() => bridgingInterval({ ...bare, parameters: { ...plain, packing: 2 } }))).toEqual([
      'out-of-range',
    ]);
  });
});

const shelves: readonly (readonly [string, Prior])[] = [bridgingPriors, rodPriors, zonePriors, inPlanePriors].flatMap(
  (shelf) => Object.entries(shelf),
);

describe('the priors of stitching', () => {
  it('say unit, source, reason and range, in base units of SI', () => {
    expect(shelves.length).toBeGreaterThan(15);
    for (const [name, prior] of shelves) {
      expect(['Pa', ''], name).toContain(prior.unit);
      expect(prior.low, name).toBeLessThan(prior.high);
      expect(prior.value, name).toBeGreaterThanOrEqual(prior.low);
      expect(prior.value, name).toBeLessThanOrEqual(prior.high);
      expect(prior.note.length, name).toBeGreaterThan(20);
      expect(prior.where, name).not.toBe('');
      expect(['published', 'measured', 'derived', 'assumed'], name).toContain(prior.basis);
      expect(['read', 'quoted', 'recalled', 'computed', 'invented'], name).toContain(prior.access);
    }
  });

  it('know the confinement of a face by its slip lines: a wedge of half angle a bears 1 + a times its plane strength', () => {
    const { value, low, high } = bridgingPriors.faceConfinement;
    expect([value, low, high]).toEqual([Math.PI / 4, 0, Math.PI / 2].map((a) => Math.round(10 * (1 + a)) / 10));
    expect(bridgingPriors.bendRadius.low).toBe(0.5);
  });

  it('have the median of a lognormal in the geometric middle of its range, within 5 %', () => {
    for (const [name, { distribution, value, low, high }] of shelves) {
      expect(['lognormal', 'triangular'], name).toContain(distribution);
      if (distribution === 'lognormal') expectNear(value, Math.sqrt(low * high), 0.05);
    }
  });

  it('are sampled as they say: nine in ten of a lognormal in its range, a triangle with its mean and ends', () => {
    for (const [name, prior] of shelves) {
      const random = uniformRandom(5);
      const drawn = Array.from({ length: 4000 }, () => samplePrior(prior, random));
      const { value, low, high } = prior;
      if (prior.distribution === 'lognormal') {
        const inside = drawn.filter((x) => x >= low && x <= high).length / drawn.length;
        expect(Math.abs(inside - 0.9), name).toBeLessThan(0.025);
        expectNear(drawn.filter((x) => x < value).length / drawn.length, 0.5, 0.05);
      } else {
        expect(Math.min(...drawn), name).toBeGreaterThanOrEqual(low);
        expect(Math.max(...drawn), name).toBeLessThanOrEqual(high);
        const mean = drawn.reduce((sum, x) => sum + x, 0) / drawn.length;
        expect(Math.abs(mean - (low + value + high) / 3) / (high - low), name).toBeLessThan(0.015);
      }
    }
  });
});
