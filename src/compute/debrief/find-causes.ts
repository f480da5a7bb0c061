import { type Evidence, gaussianEvidence } from "../../numerics/gaussian-evidence.ts";
import type { Piece } from "../../models/plan/debrief.ts";
import type { DebriefConstants } from "./constants.ts";
import type { Suspect } from "./suspects.ts";

/** A suspect that explains the clocks clearly better than the day alone. Seconds over all pieces. */
export type Culprit = {
  readonly suspect: Suspect;
  /** Size in the suspect's unit. */
  readonly size: number;
  readonly seconds: number;
  readonly error: number;
  /** Seconds ahead of the plan it brought at first, for haste; 0 for everything else. */
  readonly won: number;
  /** Whether breaks of this movement would explain it as well as its reps. */
  readonly orBreaks: boolean;
};

/**
 * Finds what a result differs from its plan by, one cause after the other, each only if it stands clear.
 *
 * Every suspect is given a size by Bayesian regression over the pieces: small on a usual day, large where it is the fault. A suspect
 * is named where taking it for the fault foresees the clocks better than a usual day by odds of e^`clearOdds`, and better than
 * any other suspect by e^`clearLead` (ties of a movement and its own breaks are told as one). Then the next is looked for beside it.
 */
export function findCauses(
  pieces: readonly Piece[],
  suspects: readonly Suspect[],
  constants: DebriefConstants,
): readonly Culprit[] {
  const found: { readonly at: number; readonly orBreaks: boolean }[] = [];
  for (;;) {
    const named = found.map(({ at }) => at);
    const next = clearest(pieces, suspects, named, constants);
    if (next === undefined) break;
    found.push(next);
  }
  if (found.length === 0) return [];
  const evidence = weigh(
    pieces,
    suspects,
    found.map(({ at }) => at),
    constants,
  );
  return found
    .flatMap(({ at, orBreaks }) => culprit(suspects, at, orBreaks, evidence))
    .toSorted((a, b) => b.seconds - a.seconds);
}

function clearest(
  pieces: readonly Piece[],
  suspects: readonly Suspect[],
  named: readonly number[],
  constants: DebriefConstants,
): { readonly at: number; readonly orBreaks: boolean } | undefined {
  const without = weigh(pieces, suspects, named, constants).logEvidence;
  const total = pieces.reduce((sum, { planned }) => sum + planned, 0);
  const least = Math.max(constants.leastSeconds, constants.leastShare * total);
  const tried = suspects
    .map((suspect, at) => ({ suspect, at }))
    .filter(({ suspect, at }) => suspect.kind !== "form" && !named.some((one) => isSame(one, at, suspects)))
    .map(({ suspect, at }) => {
      const evidence = weigh(pieces, suspects, [...named, at], constants);
      const [one] = culprit(suspects, at, false, evidence);
      // What was won early and lost again is worth a sentence, though little is left of it at the end.
      return {
        at,
        suspect,
        odds: evidence.logEvidence - without,
        lost: (one?.seconds ?? 0) + (one?.won ?? 0),
      };
    })
    .filter(({ lost }) => lost >= least)
    .toSorted((a, b) => b.odds - a.odds);
  const [best, ...others] = tried;
  if (!best) return undefined;
  const wanted = best.suspect.kind === "haste" ? constants.clearOddsOfHaste : constants.clearOdds;
  if (best.odds < wanted) return undefined;
  const rivals = others.filter(
    ({ odds, suspect }) =>
      odds > best.odds - constants.clearLead && (suspect.kind !== "haste" || best.suspect.kind !== "haste"),
  );
  if (rivals.length === 0) return { at: best.at, orBreaks: false };
  // One movement and the breaks in it look alike where only it is broken: that much is clear.
  const pair = [best, ...rivals];
  const movement = pair.find(({ suspect }) => suspect.kind === "movement");
  const breaks = pair.find(({ suspect }) => suspect.kind === "breaks");
  return pair.length === 2 && movement && breaks ? { at: movement.at, orBreaks: true } : undefined;
}

/** The same suspect, or haste of another size. */
const isSame = (a: number, b: number, suspects: readonly Suspect[]): boolean =>
  a === b || (suspects[a]?.kind === "haste" && suspects[b]?.kind === "haste");

function weigh(
  pieces: readonly Piece[],
  suspects: readonly Suspect[],
  faults: readonly number[],
  constants: DebriefConstants,
): Evidence {
  return gaussianEvidence({
    rows: pieces.map((_, p) => suspects.map(({ column }) => column[p] ?? 0)),
    values: pieces.map(({ planned, done }) => done - planned),
    noise: pieces.map(({ planned }) => Math.hypot(constants.pieceNoise * planned, constants.clockNoise)),
    prior: suspects.map(({ usual, fault }, at) => (faults.includes(at) ? fault : usual)),
  });
}

function culprit(
  suspects: readonly Suspect[],
  at: number,
  orBreaks: boolean,
  { mean, covariance }: Evidence,
): readonly Culprit[] {
  const suspect = suspects[at];
  if (!suspect) return [];
  const size = mean[at] ?? 0;
  const all = suspect.column.reduce((sum, seconds) => sum + seconds, 0);
  const error = Math.sqrt(covariance[at]?.[at] ?? 0) * Math.abs(all);
  // A cause is something that went the wrong way: slower, longer, too fast.
  if (!(size > 0 && all >= 0)) return [];
  const won = suspect.kind === "haste" ? size * mostAhead(suspect.column) : 0;
  return [{ suspect, size, seconds: size * all, error, won, orBreaks }];
}

/** Furthest ahead of the plan at the end of any piece, seconds by one unit. */
function mostAhead(column: readonly number[]): number {
  let late = 0;
  let ahead = 0;
  for (const grown of column) {
    late += grown;
    ahead = Math.max(ahead, -late);
  }
  return ahead;
}
