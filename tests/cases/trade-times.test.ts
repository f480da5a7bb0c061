import { describe, expect, it } from "vitest";
import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import { LEVELS, type Level } from "../../src/models/vocabulary.ts";
import { problemOf } from "../experiments/fields/field-problem.ts";
import { demoData } from "../support/demo-data.ts";
import { type TradeTime, tradeTimes } from "../support/trade-times.ts";
import { soundWorkout } from "../support/workout-notation.ts";

type Cell = { readonly kind: string; readonly level: Level; readonly told: string; readonly error: number };

const data = demoData();

/** How much slower (+) or faster (-) than expected the plan is, as a share; infinite where it does not get to the end. */
function errorOf({ of, level, sex, result }: TradeTime): number {
  const band = data.bands.find(({ profile }) => profile.level === level && profile.sex === sex);
  if (!band) throw new Error(`no strategy page for ${sex} ${level}`);
  const part = pacePart(problemOf(band.profile, soundWorkout(of.workout), data));
  if (part.kind !== "paced") return Number.POSITIVE_INFINITY;
  const { result: planned, ending } = part.pacing;
  if (result.kind === "reps") return result.value / planned.target - 1;
  return ending === "finishes" ? planned.target / result.value - 1 : Number.POSITIVE_INFINITY;
}

function cellOf(time: TradeTime): Cell {
  const { of, level, sex } = time;
  const error = errorOf(time);
  const told = `${of.name}, ${level} ${sex}: ${(100 * error).toFixed(0)} %`;
  return { kind: of.kind, level, told, error };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const times = tradeTimes();
const cells = times.map(cellOf);

describe("plans of athletes known by level only against what the trade expects", () => {
  it("are at most 8 % off in the middle", () => {
    expect(new Set(times.map(({ of }) => of.name)).size).toBe(40);
    expect(median(cells.map(({ error }) => Math.abs(error)))).toBeLessThanOrEqual(0.08);
  });

  it("are beyond 20 % in at most one cell of ten", () => {
    const beyond = cells.filter(({ error }) => Math.abs(error) > 0.2).map(({ told }) => told);
    expect(beyond.length, beyond.join("\n")).toBeLessThanOrEqual(cells.length / 10);
  });

  it.each(LEVELS)("are not biased for %s by more than 7 %%", (level) => {
    const own = cells.filter((cell) => cell.level === level).map(({ error }) => error);
    expect(Math.abs(median(own))).toBeLessThanOrEqual(0.07);
  });

  it.each([...new Set(cells.map(({ kind }) => kind))])("are not biased in %s by more than 15 %%", (kind) => {
    const own = cells.filter((cell) => cell.kind === kind).map(({ error }) => error);
    expect(Math.abs(median(own))).toBeLessThanOrEqual(0.15);
  });
});
