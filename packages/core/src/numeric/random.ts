const rotated = (x: number, k: number) => (x << k) | (x >>> (32 - k));

/**
 * The generator xoshiro128** of 32-bit words, started from its state: period 2^128 - 1.
 * @param state four 32-bit words, not all 0
 * @returns a function that gives the next word, 0 to 2^32 - 1
 * @source Blackman, D. and Vigna, S., 2021, blackman-vigna-2021
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const word = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = rotated(d, 11);
    return word;
  };
}

/** Four well-mixed words from one seed: successive odd steps through the finishing function of a 32-bit hash. */
function spread(seed: number): [number, number, number, number] {
  const word = (k: number) => {
    let x = (seed + Math.imul(k, 0x9e3779b9)) | 0;
    x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
    return x ^ (x >>> 16);
  };
  return [word(1), word(2), word(3), word(4)];
}

/**
 * Numbers spread evenly over 0 to 1, both left out: the same from the same seed on every machine.
 * @param seed any whole number; its lowest 32 bits count
 * @source xoshiro128** as above
 */
export function uniformRandom(seed: number): () => number {
  const next = xoshiro128(spread(seed));
  return () => (next() + 0.5) / 2 ** 32;
}
