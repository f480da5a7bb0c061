import { readClock } from "../quantities/time.ts";

/** Splits of a cell: the running clock, or the time of each round that could be meant instead. */
type SplitsReading =
  | { readonly kind: "clocks"; readonly splits: readonly string[] }
  /** Both readings as they would be written, the likelier first. */
  | { readonly kind: "either"; readonly proposals: readonly string[] }
  | { readonly kind: "none" };

/** The last of so many clocks of even rounds is that many times the first; the last of as many times is about the first. */
const LIKE_CLOCKS = 0.6;
/** The word that says that clocks are meant. */
const SAID = /^clocks?\s+/i;
/** Seconds by which a total that is written beside may be off. */
const NEAR = 2;

/**
 * Reads `1:32, 3:01, 4:12`, also with slashes, hyphens or spaces between. Clocks that run on are taken; times of single rounds are
 * not guessed but asked about, with the clocks they add up to, unless the result beside them settles it.
 *
 * @param total the time of the whole, seconds, where it is known
 */
export function readSplits(text: string, total: number | undefined): SplitsReading {
  const isSaid = SAID.test(text);
  const pieces = text
    .replace(SAID, "")
    .split(/\s*[,;/|]\s*|\s+[-–]\s+|\s+/)
    .filter((piece) => piece !== "");
  const read = pieces.map((piece) => readClock(piece));
  const seconds = read.flatMap((one) => (one.ok ? [one.value] : []));
  if (seconds.length === 0 || seconds.length < pieces.length) return { kind: "none" };
  const [first = 0] = seconds;
  const last = seconds.at(-1) ?? 0;
  const added = seconds.map((_, at) => seconds.slice(0, at + 1).reduce((sum, one) => sum + one, 0));
  const runsOn = seconds.every((one, at) => at === 0 || one > (seconds[at - 1] ?? 0));
  const isTotal = (one: number): boolean => total !== undefined && Math.abs(one - total) <= NEAR;
  if (runsOn && (isSaid || isTotal(last) || seconds.length === 1)) return { kind: "clocks", splits: pieces };
  if (isTotal(added.at(-1) ?? 0)) return { kind: "clocks", splits: added.map(clock) };
  if (runsOn && last >= LIKE_CLOCKS * seconds.length * first) return { kind: "clocks", splits: pieces };
  const sums = added.map(clock).join(", ");
  return { kind: "either", proposals: runsOn ? [sums, `clocks ${pieces.join(", ")}`] : [sums] };
}

const clock = (time: number): string => {
  const whole = Math.floor(time / 60);
  const rest = Math.round((time % 60) * 10) / 10;
  return `${whole}:${rest < 10 ? "0" : ""}${rest}`;
};
