import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Bench } from "../search/attempt.ts";
import type { Solved } from "../search/solve-part.ts";
import type { RoundName } from "./round-names.ts";
import type { RunLog } from "../motion/run.ts";
import { REST_FOR, UNTIL, WINDOW } from "../motion/track.ts";

/** The rounds of a plan from its rows, as a reader calls them; `days` adds each round's seconds on a good and a bad day. */
export function roundsOf(
  rows: readonly PacingRow[],
  names: ReadonlyMap<number, RoundName>,
  days?: { readonly hopeful: ReadonlyMap<number, number>; readonly cautious: ReadonlyMap<number, number> },
): Pacing["rounds"] {
  const rounds: Pacing["rounds"] = [];
  for (const row of rows) {
    const last = rounds.at(-1);
    const isWork = row.kind === "work" || ["stand", "plates", "skipped"].includes(row.why ?? "");
    if (last?.round === row.round) {
      if (!isWork) continue;
      last.end = row.end;
      last.seconds = row.end - last.start;
      last.lastRow = row.index;
      last.scoreDone = row.scoreDone;
      continue;
    }
    if (!isWork) continue;
    const { label, number } = names.get(row.round) ?? { label: `${row.round}` };
    rounds.push({
      round: row.round,
      label: row.ladder === undefined ? label : `${row.ladder}s`,
      ...(number === undefined ? {} : { number }),
      start: row.start,
      end: row.end,
      seconds: row.end - row.start,
      lastRow: row.index,
      scoreDone: row.scoreDone,
    });
  }
  if (!days) return rounds;
  return rounds.map((round) => {
    const hopeful = days.hopeful.get(round.round);
    const cautious = days.cautious.get(round.round);
    return hopeful === undefined || cautious === undefined
      ? round
      : {
          ...round,
          days: { hopeful: Math.min(hopeful, cautious), cautious: Math.max(hopeful, cautious) },
        };
  });
}

/** Seconds of each round that a run got all the way through. */
export function roundSeconds({ track }: Bench, log: RunLog, last: number): ReadonlyMap<number, number> {
  const starts = new Map<number, number>();
  const ends = new Map<number, number>();
  for (let i = 0; i < track.length; i += 1) {
    if ((track.task[i] as number) < 0) continue;
    const round = track.round[i] as number;
    const amount = track.amount[i] as number;
    if (i > last || (Number.isFinite(amount) && (log.done[i] as number) < amount - 1e-6)) {
      ends.delete(round);
      break;
    }
    if (!starts.has(round)) starts.set(round, log.started[i] as number);
    ends.set(round, log.ended[i] as number);
  }
  return new Map([...ends].map(([round, end]) => [round, end - (starts.get(round) ?? end)]));
}

/** The last stretch of work of a round; -1 where there is none. */
function lastWorkOf({ track }: Bench, round: number): number {
  for (let i = track.length - 1; i >= 0; i -= 1) {
    if (track.round[i] === round && (track.kind[i] as number) < REST_FOR) return i;
  }
  return -1;
}

/**
 * Whether the clock ends a round of a plan, whatever is done in it: its last work goes on until a clock, or is cut off by the
 * end of its window.
 */
export function endsByClock({ bench, log }: Pick<Solved, "bench" | "log">, round: number): boolean {
  const { track } = bench;
  const last = lastWorkOf(bench, round);
  const kind = track.kind[last];
  if (kind === WINDOW || kind === UNTIL) return true;
  const asked = track.amount[last] as number;
  const closes = track.deadline[last] as number;
  return Number.isFinite(closes) && track.ends[last] === 0 && (log.done[last] as number) < asked - 1e-6;
}

/** Score units done at the end of the work of a round in a run. */
export const scoreAfterRound = (bench: Bench, log: RunLog, round: number): number =>
  log.scored[lastWorkOf(bench, round)] ?? 0;
