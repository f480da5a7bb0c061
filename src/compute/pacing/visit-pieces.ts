/** A visit as planned: its amount in sets with a mean rest between them, and its clocks. Seconds. */
type Visit = {
  readonly amount: number;
  readonly sizes: readonly number[];
  readonly rest: number;
  /** Seconds of a unit inside a set. */
  readonly cycle: number;
  /** When the way there begins, when the first unit does, and when the last is done. */
  readonly started: number;
  readonly worksFrom: number;
  readonly ended: number;
};

/** A pause of the clock in which nobody works, or a stretch of work between two of them. */
type VisitPiece =
  | { readonly kind: "pause"; readonly start: number; readonly end: number }
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
 *
 * @param pauses clocks at which everybody stops and goes on again, in pairs
 */
export function visitPieces(visit: Visit, pauses: ArrayLike<number>): readonly VisitPiece[] {
  const { amount, started, ended } = visit;
  const own = pausesIn(visit, pauses);
  const inWork = own.filter(({ from }) => from > visit.worksFrom);
  const working = ended - visit.worksFrom - inWork.reduce((sum, { from, to }) => sum + to - from, 0);
  const pieces: VisitPiece[] = [];
  let start = started;
  let worksFrom = visit.worksFrom;
  let worked = 0;
  let done = 0;
  for (const { from, to } of own) {
    let end = from;
    if (from > visit.worksFrom) {
      worked += from - worksFrom;
      const units = Math.floor((amount * worked) / working + 1e-9) - done;
      if (units > 0) pieces.push(workPiece(visit, done, units, { start, worksFrom, end: from }));
      else end = start;
      done += units;
    } else end = start;
    pieces.push({ kind: "pause", start: end, end: to });
    start = to;
    worksFrom = Math.max(to, worksFrom);
  }
  if (amount - done > 1e-9)
    pieces.push(workPiece(visit, done, amount - done, { start, worksFrom, end: ended }));
  return pieces;
}

function pausesIn(
  { started, ended }: Visit,
  pauses: ArrayLike<number>,
): readonly { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  for (let at = 0; at + 1 < pauses.length; at += 2) {
    const from = pauses[at] as number;
    if (from >= started - 1e-9 && from < ended - 1e-9) found.push({ from, to: pauses[at + 1] as number });
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
