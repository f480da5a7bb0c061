/** A visit as planned: its amount in sets with a mean rest between them, and its clocks. Seconds. */
export type Visit = {
  readonly amount: number;
  readonly sizes: readonly number[];
  readonly rest: number;
  /** Seconds of a unit inside a set. */
  readonly cycle: number;
  /** When the way there begins, when the first unit does, and when the last is done. */
  readonly started: number;
  readonly worksFrom: number;
  readonly ended: number;
  /** A wait shorter than this goes into slower units. */
  readonly shortestWait: number;
};

/** A pause of the clock, and the whole units of the visit that are done when it begins. */
type Pause = { readonly from: number; readonly to: number; readonly done: number };

/**
 * A stretch of work between two pauses, a pause of the clock in which nobody works, what is left before one when no whole unit fits
 * any more, or a wait after one.
 */
type VisitPiece =
  | { readonly kind: "pause" | "begun" | "wait"; readonly start: number; readonly end: number }
  | ({ readonly kind: "work"; readonly start: number; readonly end: number } & WorkOfPiece);

type WorkOfPiece = {
  readonly amount: number;
  readonly sets: { readonly amount: number; readonly restAfter: number }[];
  /** Seconds before the first unit, and of a unit. */
  readonly transition: number;
  readonly secondsPerUnit: number;
};

/**
 * A visit parted where the clock pauses everybody: what is done before a pause, the pause, and what is left after it, in whole
 * units. On the way to the station nothing is done yet, so the pause then swallows the way.
 */
export function visitPieces(visit: Visit, pauses: readonly Pause[]): readonly VisitPiece[] {
  const pieces: VisitPiece[] = [];
  let start = visit.started;
  let done = 0;
  for (const pause of pauses) {
    const units = Math.min(pause.done, visit.amount) - done;
    if (units > 0) {
      const worksFrom = Math.max(start, visit.worksFrom);
      const enough = worksFrom + timeOf(visit, done, units);
      const end = pause.from - enough < visit.shortestWait ? pause.from : enough;
      pieces.push(workPiece(visit, done, units, { start, worksFrom, end }));
      if (end < pause.from) pieces.push({ kind: "begun", start: end, end: pause.from });
      start = pause.from;
      done += units;
    }
    pieces.push({ kind: "pause", start, end: pause.to });
    start = pause.to;
  }
  const left = visit.amount - done;
  if (left <= 1e-9) return pieces;
  // After a pause the sets of a visit begin anew: what its rests leave is waited before the first of them.
  const spare = visit.ended - Math.max(start, visit.worksFrom) - timeOf(visit, done, left);
  const wait = pauses.length > 0 && spare >= visit.shortestWait ? spare : 0;
  if (wait > 0) pieces.push({ kind: "wait", start, end: start + wait });
  start += wait;
  const worksFrom = Math.max(start, visit.worksFrom + wait);
  pieces.push(workPiece(visit, done, left, { start, worksFrom, end: visit.ended }));
  return pieces;
}

/** Seconds of so many units of a visit from one on, in its sets and with its rests. */
const timeOf = (visit: Visit, from: number, amount: number): number =>
  amount * visit.cycle + (sizesBetween(visit.sizes, from, amount).length - 1) * visit.rest;

/**
 * The pauses that fall into a visit.
 *
 * @param pauses clocks at which everybody stops and goes on again, in pairs
 * @param done units of the visit under way that are done when each of them begins
 */
export function pausesIn(
  { started, ended }: Pick<Visit, "started" | "ended">,
  pauses: ArrayLike<number>,
  done: ArrayLike<number>,
): readonly Pause[] {
  const found: Pause[] = [];
  for (let at = 0; at + 1 < pauses.length; at += 2) {
    const from = pauses[at] as number;
    const isInside = from >= started - 1e-9 && from < ended - 1e-9;
    if (isInside) found.push({ from, to: pauses[at + 1] as number, done: done[at / 2] as number });
  }
  return found;
}

function workPiece(
  visit: Visit,
  done: number,
  amount: number,
  { start, worksFrom, end }: { readonly start: number; readonly worksFrom: number; readonly end: number },
): VisitPiece {
  const sizes = sizesBetween(visit.sizes, done, amount);
  // A pause of the clock is rest too, so less than the planned rest may be left between the sets of a piece.
  const left = Math.max(0, end - worksFrom - amount * visit.cycle) / Math.max(1, sizes.length - 1);
  const rests = wholeRests(Math.min(visit.rest, left), sizes.length - 1);
  const resting = rests.reduce((sum, rest) => sum + rest, 0);
  return {
    kind: "work",
    start,
    end,
    amount,
    sets: sizes.map((size, set) => ({ amount: size, restAfter: rests[set] ?? 0 })),
    transition: worksFrom - start,
    secondsPerUnit: Math.max(0, end - worksFrom - resting) / amount,
  };
}

/** The sets that make up so many units from one on; what sets do not reach is added to the last. */
function sizesBetween(sizes: readonly number[], from: number, amount: number): readonly number[] {
  const own: number[] = [];
  let before = 0;
  for (const size of sizes) {
    const taken = Math.min(before + size, from + amount) - Math.max(before, from);
    if (taken > 1e-6) own.push(taken);
    before += size;
  }
  const lacking = amount - own.reduce((sum, size) => sum + size, 0);
  if (lacking > 1e-6) own.push((own.pop() ?? 0) + lacking);
  return own;
}

/** Rests in whole seconds that add up to a mean: the longer ones last. */
function wholeRests(mean: number, breaks: number): readonly number[] {
  const all = Math.round(mean * breaks);
  const short = Math.floor(all / Math.max(1, breaks));
  const longer = all - short * breaks;
  return Array.from({ length: breaks }, (_, i) => short + (i >= breaks - longer ? 1 : 0));
}
