import type { BarLoad } from "../../../src/models/plan/basics.ts";
import type { Pacing, PacingRow } from "../../../src/models/plan/pacing.ts";

/** One line of a hand-made workout: what a visit holds and how long its pieces take. */
export type SampleLine = {
  readonly movement: string;
  readonly name: string;
  readonly short: string;
  readonly unit: "reps" | "calories" | "metres";
  /** Seconds per unit in the first round; each later round takes `drift` more. */
  readonly perUnit: number;
  /** Amounts of the sets, in order, for one round. */
  readonly sets: (round: number) => readonly number[];
  /** Rest after each set but the last, seconds. */
  readonly rest: number;
  readonly transition: number;
  readonly load?: BarLoad;
};

type Paced = Pick<Pacing, "rows" | "rounds" | "half">;

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
const plain = (number: number): number => Math.round(number * 1e6) / 1e6;

/**
 * Lays hand-made lines end to end so that every clock, share and score of a sample agrees with the pieces it is made
 * of. Work counts as seconds at the pace of round one. `open`: the number of rounds is not fixed, so no row names it.
 */
export function pacedRounds(count: number, drift: number, lines: readonly SampleLine[], open = false): Paced {
  const visits = Array.from({ length: count }, (_, index) => index + 1).flatMap((round) =>
    lines.map((line) => ({ round, line, sets: line.sets(round) })),
  );
  const secondsOf = (visit: (typeof visits)[number]): number =>
    visit.line.transition +
    sum(visit.sets) * visit.line.perUnit * (1 + drift * (visit.round - 1)) +
    visit.line.rest * (visit.sets.length - 1);
  const duration = sum(visits.map(secondsOf));
  const reps = sum(visits.map((visit) => sum(visit.sets)));
  const work = sum(visits.map((visit) => sum(visit.sets) * visit.line.perUnit));
  let clock = 0;
  let done = 0;
  let worked = 0;
  const rows = visits.map((visit, index): PacingRow => {
    const { line, round } = visit;
    const start = clock;
    const amount = sum(visit.sets);
    clock += secondsOf(visit);
    done += amount;
    worked += amount * line.perUnit;
    const share = worked / work;
    return {
      kind: "work",
      index,
      round,
      ...(open ? {} : { rounds: count }),
      movement: line.movement,
      name: line.name,
      short: line.short,
      amount,
      unit: line.unit,
      ...(line.load ? { load: line.load } : {}),
      complexWithNext: false,
      sets: visit.sets.map((set, i) => ({
        amount: set,
        restAfter: i < visit.sets.length - 1 ? line.rest : 0,
      })),
      secondsPerUnit: plain(line.perUnit * (1 + drift * (round - 1))),
      transition: line.transition,
      start: plain(start),
      end: plain(clock),
      scoreDone: done,
      shareOfReps: plain(done / reps),
      shareOfTime: plain(clock / duration),
      shareOfWork: plain(share),
      // Sinks quickly at first, then evenly, and a tenth is held back.
      reserve: plain(0.1 + 0.9 * (1 - share) ** 1.3),
      tieBreak: false,
    };
  });
  const rounds = Array.from({ length: count }, (_, index) => {
    const own = rows.filter((row) => row.round === index + 1);
    const [first, last] = [own[0], own.at(-1)];
    if (!first || !last) throw new Error("a round without rows");
    const seconds = last.end - first.start;
    return {
      round: index + 1,
      label: `${index + 1}`,
      start: first.start,
      end: last.end,
      seconds: plain(seconds),
      days: { hopeful: plain(seconds * 0.94), cautious: plain(seconds * 1.07) },
      lastRow: last.index,
      scoreDone: last.scoreDone,
    };
  });
  const halfRow = rows.find((row) => row.shareOfWork >= 0.5);
  if (!halfRow) throw new Error("no half");
  const half = {
    row: halfRow.index,
    clock: halfRow.end,
    shareOfReps: halfRow.shareOfReps,
    shareOfTime: halfRow.shareOfTime,
  };
  return { rows, rounds, half };
}

/**
 * The rows that fit before the clock stops: whole visits, and of the last one the reps that are done by then.
 * `prescribed` keeps what the visit asks for.
 */
export function stoppedAt(rows: readonly PacingRow[], stop: number): PacingRow[] {
  return rows
    .filter((row) => row.start + row.transition + (row.secondsPerUnit ?? 0) <= stop)
    .map((row) => {
      if (row.end <= stop) return row;
      let clock = row.start + row.transition;
      const sets: PacingRow["sets"] = [];
      for (const set of row.sets) {
        const fits = Math.min(set.amount, Math.floor((stop - clock) / (row.secondsPerUnit ?? 1)));
        if (fits > 0) sets.push({ amount: fits, restAfter: set.restAfter });
        clock += fits * (row.secondsPerUnit ?? 1) + set.restAfter;
      }
      const amount = sum(sets.map((set) => set.amount));
      const scoreDone = row.scoreDone - row.amount + amount;
      return { ...row, sets, amount, prescribed: row.amount, end: stop, scoreDone };
    })
    .map((row, _index, kept) => {
      const last = kept.at(-1);
      return {
        ...row,
        shareOfReps: plain(row.scoreDone / (last?.scoreDone ?? 1)),
        shareOfTime: plain(row.end / stop),
      };
    });
}
