import type { Random } from "../../src/numerics/random.ts";
import type { PacingRow } from "../../src/models/plan/pacing.ts";

/** What goes wrong on a day; everything else is chance. */
export type Mistakes = {
  /** Share by which the beginning is faster than planned, done by `hasty`. */
  readonly haste?: number;
  /** Seconds every break of a set is longer. */
  readonly breaks?: number;
  readonly transitions?: number;
  /** A movement that goes slower by a share. */
  readonly slower?: { readonly movement: string; readonly share: number };
};

/** How much days differ by themselves, standard deviations. */
const FORM = 0.03;
const PIECE = 0.02;
const SECOND = 1;

/**
 * Clock at the end of each row of a plan as an athlete does it on a seeded day, mistakes included: form 3 %, each row 2 %, a second for
 * each way, break and tap.
 */
export function performed(
  rows: readonly PacingRow[],
  hasty: (faster: number, lasting: number) => readonly number[],
  mistakes: Mistakes,
  random: Random,
): readonly number[] {
  const form = Math.exp(random.normal() * FORM);
  const rushed = mistakes.haste === undefined ? undefined : hasty(mistakes.haste, 1 / 3);
  let clock = 0;
  let late = 0;
  const ends = rows.map((row, r) => {
    const breaks = row.sets.filter(({ restAfter }) => restAfter > 0).length;
    const rests = row.sets.reduce((sum, { restAfter }) => sum + restAfter, 0);
    const slow = mistakes.slower?.movement === row.movement ? 1 + (mistakes.slower?.share ?? 0) : 1;
    const work = row.end - row.start - row.transition - rests;
    const grown = rushed === undefined ? 0 : (rushed[r] ?? 0) - row.end - late;
    late += grown;
    const seconds =
      row.kind === "rest"
        ? row.end - row.start
        : work * form * slow * Math.exp(random.normal() * PIECE) +
          rests +
          breaks * ((mistakes.breaks ?? 0) + random.normal() * SECOND) +
          row.transition +
          (row.transition > 1 ? (mistakes.transitions ?? 0) + random.normal() * SECOND : 0) +
          grown;
    clock += Math.max(1, seconds);
    return clock;
  });
  return ends.map((end, r) =>
    Math.max(end + random.normal() * SECOND, (r > 0 ? (ends[r - 1] ?? 0) : 0) + 0.5),
  );
}
