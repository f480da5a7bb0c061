import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import type { Level } from "../../../src/models/vocabulary.ts";

/** One result of a field: all the work in so many seconds, or so much of it when the clock stopped it. */
export type Result = { readonly kind: "finish" | "reps"; readonly value: number };

/** Results of a field as prescribed, from the worst to the best, with how many had each. */
export type Sample = readonly { readonly result: Result; readonly count: number }[];

/** Where a level is meant to lie among those who did a workout as prescribed, from 0 (worst) to 1. */
export const PLACE: Readonly<Record<Level, number>> = {
  new: 0.15,
  regular: 0.5,
  competitor: 0.85,
  elite: 0.99,
};

type Row = Readonly<Record<string, string>>;

const rowsOf = (path: string): readonly Row[] =>
  parse(readFileSync(path, "utf8"), { columns: true, skip_empty_lines: true });

/** Reads a table of scores with their counts; scaled ones are left out, seconds of finishers stand apart from reps. */
export function readSample(path: string): Sample {
  return rowsOf(path)
    .filter(({ division }) => division === undefined || division === "rx")
    .map((row) => ({
      result: {
        kind: row["result"] === "finish" ? ("finish" as const) : ("reps" as const),
        value: Number(row["value"] ?? row["reps"]),
      },
      count: Number(row["count"]),
    }))
    .sort((a, b) => worth(a.result) - worth(b.result));
}

/** Orders results: more reps are better, any finish beats all reps, a sooner one a later one. */
export const worth = ({ kind, value }: Result): number => (kind === "finish" ? 1e6 - value : value);

/** The result at a place. */
export function resultAt(sample: Sample, place: number): Result {
  const all = sample.reduce((sum, { count }) => sum + count, 0);
  let below = 0;
  for (const { result, count } of sample) {
    below += count;
    if (below >= place * all) return result;
  }
  throw new Error("a field without results");
}

/** Seconds of one station of a race by the share of people who took less, ascending. */
export type StationTimes = readonly { readonly share: number; readonly seconds: number }[];

/** Reads the station times of a race: a line a station and sex, a column a percentile. */
export function readStations(path: string): ReadonlyMap<string, StationTimes> {
  return new Map(
    rowsOf(path).map(({ sex = "", station = "", ...shares }) => [
      `${sex}|${station}`,
      Object.entries(shares).map(([name, value]) => ({
        share: Number(name.slice(1)) / 100,
        seconds: Number(value),
      })),
    ]),
  );
}
