const rotated = (x: number, k: number) => (x << k) | (x >>> (32 - k));

/** The state of xoshiro128**: four 32-bit words, not all 0. */
export type RandomState = readonly [number, number, number, number];

/** Gives the words one after the other, and the state in between. */
function wordsFrom(state: RandomState): { readonly next: () => number; readonly state: () => RandomState } {
  let [a, b, c, d] = state;
  return {
    next: () => {
      const word = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
      const t = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= t;
      d = rotated(d, 11);
      return word;
    },
    state: () => [a, b, c, d],
  };
}

/**
 * The generator xoshiro128** of 32-bit words, started from its state: period 2^128 - 1.
 * @param state four 32-bit words, not all 0
 * @returns a function that gives the next word, 0 to 2^32 - 1
 * @source Blackman, D. and Vigna, S., 2021, blackman-vigna-2021
 */
export function xoshiro128(state: RandomState): () => number {
  return wordsFrom(state).next;
}

/** The finishing function of a 32-bit hash: every bit of the result depends on every bit given. */
function finished(bits: number): number {
  let x = bits | 0;
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return x ^ (x >>> 16);
}

/** Four well-mixed words from one seed: successive odd steps through the hash, each moved on by the bits of the seed above the lowest 32. */
function spread(seed: number): RandomState {
  const above = finished(Math.trunc(seed / 2 ** 32));
  const word = (k: number) => finished((seed | 0) + Math.imul(k, 0x9e3779b9) + Math.imul(above, k));
  return [word(1), word(2), word(3), word(4)];
}

/** A generator of numbers spread evenly over 0 to 1, both left out, whose state can be kept and gone on from later. */
export interface RandomGenerator {
  readonly random: () => number;
  readonly state: () => RandomState;
}

/**
 * Numbers spread evenly over 0 to 1, both left out, with the state of the generator: from a state kept they go on with the same bits.
 * @param start a seed, any whole number up to 2^53 - 1, or the state of an earlier generator
 * @source xoshiro128** as above
 */
export function randomGenerator(start: number | RandomState): RandomGenerator {
  const { next, state } = wordsFrom(typeof start === 'number' ? spread(start) : start);
  return { random: () => (next() + 0.5) / 2 ** 32, state };
}

/**
 * Numbers spread evenly over 0 to 1, both left out: the same from the same seed on every machine.
 * @param seed any whole number up to 2^53 - 1
 * @source xoshiro128** as above
 */
export function uniformRandom(seed: number): () => number {
  return randomGenerator(seed).random;
}
