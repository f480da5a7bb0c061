import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import { LEVELS, type Level, type Sex } from "../../src/models/vocabulary.ts";
import { problemOf } from "../experiments/fields/field-problem.ts";
import { demoData } from "../support/demo-data.ts";
import { soundWorkout } from "../support/workout-notation.ts";

/** What a coach of experience expects of athletes known by level only: m:ss, or reps where a clock ends the work. */
type Expected = Partial<Record<Level, string | number>>;
type Case = {
  readonly name: string;
  readonly kind: string;
  readonly workout: string;
  readonly why: string;
  readonly men: Expected;
  readonly women?: Expected;
};
type Cell = { readonly kind: string; readonly level: Level; readonly told: string; readonly error: number };

const CASES = parse(readFileSync(new URL("trade-times.yaml", import.meta.url), "utf8")) as readonly Case[];

const data = demoData();

/** How much slower (+) or faster (-) than expected the plan is, as a share; infinite where it does not get to the end. */
function errorOf(workout: string, level: Level, sex: Sex, expected: string | number): number {
  const band = data.bands.find(({ profile }) => profile.level === level && profile.sex === sex);
  if (!band) throw new Error(`no strategy page for ${sex} ${level}`);
  const part = pacePart(problemOf(band.profile, soundWorkout(workout), data));
  if (part.kind !== "paced") return Number.POSITIVE_INFINITY;
  const { result, ending } = part.pacing;
  if (typeof expected === "number") return expected / result.target - 1;
  const [minutes = 0, seconds = 0] = expected.split(":").map(Number);
  return ending === "finishes" ? result.target / (60 * minutes + seconds) - 1 : Number.POSITIVE_INFINITY;
}

function cellsOf({ name, kind, workout, men, women = {} }: Case): readonly Cell[] {
  return ([men, women] as const).flatMap((of, i) =>
    LEVELS.flatMap((level): Cell[] => {
      const expected = of[level];
      if (expected === undefined) return [];
      const error = errorOf(workout, level, i === 0 ? "male" : "female", expected);
      const told = `${name}, ${level} ${i === 0 ? "men" : "women"}: ${(100 * error).toFixed(0)} %`;
      return [{ kind, level, told, error }];
    }),
  );
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const cells = CASES.flatMap(cellsOf);
const sizes = cells.map(({ error }) => Math.abs(error));

describe("plans of athletes known by level only against what the trade expects", () => {
  it("are at most 8 % off in the middle", () => {
    expect(cells.length).toBeGreaterThanOrEqual(190);
    expect(median(sizes)).toBeLessThanOrEqual(0.08);
  });

  it("are beyond 20 % in at most one cell of ten", () => {
    const beyond = cells.filter(({ error }) => Math.abs(error) > 0.2).map(({ told }) => told);
    expect(beyond.length, beyond.join("\n")).toBeLessThanOrEqual(cells.length / 10);
  });

  it.each(LEVELS)("are not biased for %s by more than 7 %%", (level) => {
    const own = cells.filter((cell) => cell.level === level).map(({ error }) => error);
    expect(Math.abs(median(own))).toBeLessThanOrEqual(0.07);
  });

  it.each([...new Set(CASES.map(({ kind }) => kind))])("are not biased in %s by more than 15 %%", (kind) => {
    const own = cells.filter((cell) => cell.kind === kind).map(({ error }) => error);
    expect(Math.abs(median(own))).toBeLessThanOrEqual(0.15);
  });
});
