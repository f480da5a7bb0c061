/** A seeded source of chance. The same seed gives the same draws everywhere. */
export type Random = {
  /** A draw from 0 (included) to 1 (excluded). */
  readonly uniform: () => number;
  /** A draw from the normal distribution of mean 0 and standard deviation 1. */
  readonly normal: () => number;
};

/** Fills the generator's state from one number: Weyl sequence with a 32-bit mixer (splitmix32). */
function spreadSeed(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    return (mixed ^ (mixed >>> 15)) >>> 0;
  };
}

/**
 * Makes a generator of chance from a seed (its low 32 bits).
 *
 * sfc32, "small fast counting" generator with 128 bits of state, by Chris Doty-Humphrey (2010), seeded by splitmix32 and
 * run twelve times before the first draw. Normal draws by the polar method of Marsaglia and Bray (1964).
 *
 * @example createRandom(1).uniform() === createRandom(1).uniform() // => true
 */
export function createRandom(seed: number): Random {
  const next = spreadSeed(seed);
  let a = next() | 0;
  let b = next() | 0;
  let c = next() | 0;
  let counter = 1;
  let spare: number | undefined;

  const bits = (): number => {
    const out = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + out) | 0;
    return out >>> 0;
  };
  for (let i = 0; i < 12; i += 1) bits();

  const uniform = (): number => bits() / 4294967296;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const square = u * u + v * v;
      if (square === 0 || square >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      spare = v * scale;
      return u * scale;
    }
  };
  return { uniform, normal };
}
