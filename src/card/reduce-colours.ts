import { rowBytes } from "./write-png.ts";

/** Shades between paper and each ink, counted from the ink; with the paper itself they make sixteen colours. */
const SHADES = [6, 5, 4] as const;
/** Colours are looked up by the upper five bits of red, green and blue. */
const UPPER = 5;

/** Sixteen colours for what is drawn in up to three inks on one paper, and the nearest of them to any other colour. */
type Palette = { readonly colours: readonly number[]; readonly nearest: Uint8Array };

/**
 * The palette of a paper and its inks: the edges of letters and shapes are mixtures of the two, so these are all the
 * colours a drawing in flat inks can need. The first ink, in which most is drawn, gets most shades.
 *
 * @param paper the colour of the ground, `0xrrggbb`
 * @param inks from the most used to the least
 */
export function paletteOf(paper: number, inks: readonly [number, number, number]): Palette {
  const mixed = inks.flatMap((ink, at) => {
    const shades = SHADES[at] ?? 0;
    return Array.from({ length: shades }, (_, step) => mix(ink, paper, step / shades));
  });
  const colours = [paper, ...mixed];
  const nearest = Uint8Array.from({ length: 1 << (3 * UPPER) }, (_, key) =>
    nearestTo(centreOf(key), colours),
  );
  // Whatever shares its upper bits with a flat colour, the flat colours themselves stay what they are.
  for (const flat of [...inks].reverse().concat(paper)) nearest[keyOf(flat)] = colours.indexOf(flat);
  return { colours, nearest };
}

/**
 * A drawn picture in the colours of a palette, two pixels a byte, as a PNG takes its rows.
 *
 * @param pixels red, green, blue and opacity of each, a byte each; all are opaque
 */
export function reduceColours(
  pixels: Uint8Array,
  { width, height }: { readonly width: number; readonly height: number },
  { nearest }: Palette,
): Uint8Array {
  const bytes = rowBytes(width);
  const rows = new Uint8Array(bytes * height);
  const words = new Uint32Array(pixels.buffer, pixels.byteOffset, width * height);
  let [last, index] = [-1, 0];
  for (let y = 0; y < height; y++) {
    const start = y * bytes + 1;
    for (let x = 0; x < width; x++) {
      const word = words[y * width + x] ?? 0;
      if (word !== last) {
        last = word;
        index = nearest[keyOfWord(word)] ?? 0;
      }
      // Rows begin as paper, which is 0.
      if (index !== 0) {
        const at = start + (x >> 1);
        rows[at] = (rows[at] ?? 0) | (x & 1 ? index : index << 4);
      }
    }
  }
  return rows;
}

const DROPPED = 8 - UPPER;

const keyOf = (colour: number): number =>
  ((colour >> (16 + DROPPED)) << (2 * UPPER)) |
  (((colour >> (8 + DROPPED)) & 31) << UPPER) |
  ((colour & 255) >> DROPPED);

/** The same of four bytes read as one number, of which the lowest is red on every machine Node runs on. */
const keyOfWord = (word: number): number =>
  (((word & 255) >> DROPPED) << (2 * UPPER)) |
  (((word >> (8 + DROPPED)) & 31) << UPPER) |
  ((word >> (16 + DROPPED)) & 31);

type Channels = readonly [number, number, number];

const channelsOf = (colour: number): Channels => [colour >> 16, (colour >> 8) & 255, colour & 255];

function centreOf(key: number): Channels {
  const half = 1 << (DROPPED - 1);
  const widen = (bits: number): number => ((bits & 31) << DROPPED) + half;
  return [widen(key >> (2 * UPPER)), widen(key >> UPPER), widen(key)];
}

function mix(ink: number, paper: number, share: number): number {
  const [to, from] = [channelsOf(paper), channelsOf(ink)];
  return from.reduce(
    (colour, channel, at) => (colour << 8) | Math.round(channel + share * ((to[at] ?? 0) - channel)),
    0,
  );
}

/** The place of the nearest colour by the sum of squares; of equal ones the first. */
function nearestTo(wanted: Channels, colours: readonly number[]): number {
  const distances = colours.map((colour) =>
    channelsOf(colour).reduce((sum, channel, at) => sum + (channel - (wanted[at] ?? 0)) ** 2, 0),
  );
  return distances.indexOf(Math.min(...distances));
}
