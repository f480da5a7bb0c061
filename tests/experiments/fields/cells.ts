import { join } from "node:path";
import { pacePart } from "../../../src/compute/pacing/pace-part.ts";
import type { PartInput } from "../../../src/compute/pacing/paced-part.ts";
import type { Data } from "../../../src/models/data.ts";
import type { Pacing } from "../../../src/models/plan/pacing.ts";
import { LEVELS, type Level } from "../../../src/models/vocabulary.ts";
import { interpolate } from "../../../src/numerics/interpolate.ts";
import { normalBelow, normalQuantile } from "../../../src/numerics/normal.ts";
import { soundWorkout } from "../../support/workout-notation.ts";
import type { FieldCase } from "./field-list.ts";
import { problemOf } from "./field-problem.ts";
import { PLACE, readSample, readStations, type Result, resultAt, worth } from "./sample.ts";
import { timeError } from "./time-error.ts";

/** One comparison: what a field did at the place of a level, and how far the plan of that level is off. */
export type Cell = {
  readonly field: string;
  readonly kind: string;
  readonly level: Level;
  /** What the field did, in words, and the seconds it had or took. */
  readonly did: string;
  readonly seconds: number;
  /** How much faster the plan is, as a share of its time; positive where it is too fast. */
  readonly error: number;
  /** Whether what the field did lies between the tenth and the ninetieth percentile of the plan. */
  readonly inside: boolean;
};

/** All comparisons of a field; of one with scores, those of some levels. */
export function cellsOf(
  field: FieldCase,
  folder: string,
  data: Data,
  levels: readonly Level[] = LEVELS,
): readonly Cell[] {
  const path = join(folder, field.file);
  return field.columns === "stations"
    ? stationCells(field, path, data)
    : sampleCells(field, path, data, levels);
}

function sampleCells(
  { file, kind, sex = "male", workout }: FieldCase,
  path: string,
  data: Data,
  levels: readonly Level[],
): readonly Cell[] {
  const sample = readSample(path);
  const sound = soundWorkout(workout);
  return levels.map((level) => {
    const input = problemOf(bandOf(data, level, sex), sound, data);
    const result = resultAt(sample, PLACE[level]);
    const seconds = result.kind === "finish" ? result.value : lengthOf(input);
    return {
      field: file,
      kind,
      level,
      did: result.kind === "finish" ? `${result.value} s` : `${result.value} reps`,
      seconds,
      error: timeError(input, result),
      inside: isInside(pacingOf(input), result),
    };
  });
}

const lengthOf = ({ course }: PartInput): number =>
  course.ends ??
  Math.max(0, ...course.items.map((item) => (item.kind === "effort" ? (item.deadline?.clock ?? 0) : 0)));

/** Whether a result lies in the range of a plan, reps and finishes in one order. */
function isInside({ result, score, ending }: Pacing, did: Result): boolean {
  const kind = score === "time" && ending !== "stopped-by-cap" ? "finish" : "reps";
  const [low, high] = [worth({ kind, value: result.cautious }), worth({ kind, value: result.hopeful })];
  return worth(did) >= low && worth(did) <= high + 0.999;
}

function stationCells(field: FieldCase, path: string, data: Data): readonly Cell[] {
  const times = readStations(path);
  const sound = soundWorkout(field.workout);
  // The best hundredth lies outside the percentiles told.
  const levels = LEVELS.filter((level) => level !== "elite");
  return (["male", "female"] as const).flatMap((sex) =>
    levels.flatMap((level) => {
      const pacing = pacingOf(problemOf(bandOf(data, level, sex), sound, data));
      return (field.stations ?? []).map(([station, movement, correlation]): Cell => {
        const known = times.get(`${sex === "male" ? "men" : "women"}|${station}`);
        const row = pacing.rows.find((one) => one.movement === movement);
        if (known === undefined || row === undefined) throw new Error(`no station ${station}`);
        // Who is at a place in the whole race is nearer to the middle in any one station.
        const share = 1 - normalBelow(normalQuantile(PLACE[level]) * correlation);
        const seconds = interpolate(
          known.map((one) => one.share),
          known.map((one) => one.seconds),
          share,
        );
        const planned = row.end - row.start - row.transition;
        const { target, cautious, hopeful } = pacing.result;
        const ratio = seconds / planned;
        return {
          field: `${field.file} ${station} ${sex}`,
          kind: field.kind,
          level,
          did: `${Math.round(seconds)} s`,
          seconds,
          error: ratio - 1,
          inside: ratio >= hopeful / target && ratio <= cautious / target,
        };
      });
    }),
  );
}

function pacingOf(input: PartInput): Pacing {
  const part = pacePart(input);
  if (part.kind === "not-paced") throw new Error(JSON.stringify(part.missing));
  return part.pacing;
}

function bandOf({ bands }: Data, level: Level, sex: "male" | "female") {
  const found = bands.find(({ profile }) => profile.level === level && profile.sex === sex);
  if (found === undefined) throw new Error(`no band ${level} ${sex}`);
  return found.profile;
}
