import { REST_FOR, type Track } from "../motion/track.ts";
import type { Solved } from "../search/solve-part.ts";

/** Whole score units, safe against the last bit of a sum. */
export const wholeScore = (score: number): number => Math.floor(score + 1e-6);

/** Score of a plan in whole units of what is counted: a rep begun does not count. */
export function finalScore(solved: Pick<Solved, "bench" | "log" | "state">): number {
  const { track } = solved.bench;
  return plannedAmounts(solved).reduce((score, amount, i) => score + amount * (track.score[i] as number), 0);
}

/**
 * Units planned at each stretch, whole ones: a unit begun and not finished is not planned. Where the amounts of several visits add
 * up to a total, what a visit leaves of a unit is done at the next, so that they do add up.
 */
export function plannedAmounts({
  bench: { track },
  log,
  state,
}: Pick<Solved, "bench" | "log" | "state">): readonly number[] {
  const planned: number[] = [];
  const sums = new Map<number, { done: number; planned: number }>();
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const done = log.done[i] as number;
    if ((track.kind[i] as number) >= REST_FOR) planned.push(0);
    else if (track.adds[i] !== 1) planned.push(wholeAmount(track, i, done));
    else {
      const group = track.group[i] as number;
      const sum = sums.get(group) ?? { done: 0, planned: 0 };
      const all = wholeScore(sum.done + done);
      planned.push(all - sum.planned);
      sums.set(group, { done: sum.done + done, planned: all });
    }
  }
  return planned;
}

function wholeAmount(track: Track, i: number, done: number): number {
  const amount = track.amount[i] as number;
  return done >= amount - 1e-6 ? amount : wholeScore(done);
}

/** Whether all the work of a plan is done: every counted amount, and every total that several visits add up to. */
export function isAllDone(solved: Pick<Solved, "bench" | "log" | "state">): boolean {
  const { track } = solved.bench;
  const planned = plannedAmounts(solved);
  const sums = new Map<number, number>();
  for (let i = 0; i < track.length; i += 1) {
    if ((track.kind[i] as number) >= REST_FOR) continue;
    const group = track.group[i] as number;
    const amount = track.amount[i] as number;
    if (track.adds[i] === 1) sums.set(group, (sums.get(group) ?? 0) + (planned[i] ?? 0));
    // Beside what adds up, work is skipped once the total is reached.
    else if (group < 0 && Number.isFinite(amount) && (planned[i] ?? 0) < amount - 1e-6) return false;
  }
  return [...sums].every(([group, sum]) => sum >= totalOf(track, group) - 1e-6);
}

const totalOf = (track: Track, group: number): number =>
  track.groupTotal[track.group.indexOf(group)] as number;
