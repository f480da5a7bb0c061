/**
 * How true plans are to a field nothing was fitted to. Run by hand over a folder of fields:
 *
 *   node tests/experiments/fields-left-out.ts FOLDER [--list LIST.yaml]
 *
 * Each field in turn is left out. Steady paces of its level and some constants of the model (tests/experiments/fields/before-fitting.yaml)
 * are fitted to the others and to the trade table (tests/cases/trade-times.yaml, but for what fields told it) anew, from what was believed
 * of them before any field was looked at, and the field left out is compared with the plans of that model. Told are the errors with what was believed before, with everything fitted to all fields, and left out. The form
 * of the model (which laws there are) was chosen with all fields known; only its numbers are left out. Stations of races take no part.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { MODEL_TABLES } from "../../src/compute/model-tables.ts";
import type { Data } from "../../src/models/data.ts";
import type { Level } from "../../src/models/vocabulary.ts";
import { demoData } from "../support/demo-data.ts";
import { type TradeTime, tradeTimes } from "../support/trade-times.ts";
import { soundWorkout } from "../support/workout-notation.ts";
import { cellsOf } from "./fields/cells.ts";
import { type FieldCase, readFieldList } from "./fields/field-list.ts";
import { problemOf } from "./fields/field-problem.ts";
import { fittedTo, type Parameter, parametersOf, type Slope, withValues } from "./fields/left-out.ts";
import { groupedBy, lengthOf } from "./fields/summary.ts";
import { percent, tell } from "./fields/tell.ts";
import { timeError } from "./fields/time-error.ts";
import { table } from "./pacing-problems.ts";

const { positionals, values } = parseArgs({ allowPositionals: true, options: { list: { type: "string" } } });
const [folder] = positionals;
if (folder === undefined) throw new Error("Give the folder the fields are in.");

/** Steps by which slopes are taken: of a logarithm of a pace, and of a constant as a share of its doubt. */
const STEP = 0.08;
const STEP_OF_DOUBT = 0.5;
/** How far what a coach expects may be off, as a logarithm: coaches differ by a tenth and more. */
const TRADE_NOISE = 0.15;

const data = demoData();
const constants = Object.fromEntries(
  MODEL_TABLES.flatMap((one) => Object.entries(one.constants).map(([name, { value }]) => [name, value])),
);
const parameters = parametersOf(data, constants);
const fields = readFieldList(values.list ?? new URL("fields.yaml", import.meta.url)).filter(
  ({ file, columns }) => columns === undefined && existsSync(join(folder, file)),
);

/** Whether a number can matter to a comparison: its movement is in the workout, and it is of the level. */
function matters({ name }: Parameter, { workout }: Pick<FieldCase, "workout">, level: Level): boolean {
  const [id, of] = name.split(" ");
  return (
    of === undefined || (of === level && JSON.stringify(soundWorkout(workout).parts).includes(`"${id}"`))
  );
}

const now = parameters.map((one) => one.now);

/** How a comparison goes with each number; `errorWith` is its error with some data. */
function slopeOf(
  of: Pick<FieldCase, "workout">,
  level: Level,
  found: number,
  errorWith: (moved: Data) => number | undefined,
): Slope {
  const error = Math.log(1 + found);
  const by = parameters.map((one, i) => {
    if (!matters(one, of, level)) return 0;
    const step = one.name.includes(" ") ? STEP : STEP_OF_DOUBT * Number([...one.doubts.values()][0]);
    // Towards what was believed before, where the answer is looked for.
    const signed = one.before < one.now ? -step : step;
    const there = errorWith(
      withValues(
        data,
        parameters,
        now.map((value, j) => (i === j ? value + signed : value)),
      ),
    );
    return there === undefined ? 0 : (Math.log(1 + there) - error) / signed;
  });
  return { error, by };
}

/** The error of a plan against a number of the trade table; undefined where the plan does not get there. */
function tradeError({ of, level, sex, result }: TradeTime, moved: Data): number | undefined {
  const band = moved.bands.find(({ profile }) => profile.level === level && profile.sex === sex);
  const error = band && timeError(problemOf(band.profile, soundWorkout(of.workout), moved), result);
  return error !== undefined && Number.isFinite(error) ? error : undefined;
}

const told = tradeTimes().filter(
  ({ of, level }) =>
    of["told-by-fields"] !== true &&
    parameters.some((one) => one.name.includes(" ") && matters(one, of, level)),
);
const trade = told.flatMap((time): readonly Slope[] => {
  const found = tradeError(time, data);
  if (found === undefined) return [];
  const slope = slopeOf(time.of, time.level, found, (moved) => tradeError(time, moved));
  return [{ ...slope, noise: TRADE_NOISE }];
});

const cells = fields.map((field) => cellsOf(field, folder, data));
const slopes = fields.map((field, f) =>
  (cells[f] ?? []).map(({ level, error }) =>
    slopeOf(field, level, error, (moved) => cellsOf(field, folder, moved, [level])[0]?.error),
  ),
);

const modelWith = (numbers: readonly number[]): Data => withValues(data, parameters, numbers);
const before = modelWith(parameters.map((one) => one.before));
const unfitted = fields.flatMap((field) => cellsOf(field, folder, before));
const fitted = modelWith(fittedTo([...slopes.flat(), ...trade], parameters));
const fittedToAll = fields.flatMap((field) => cellsOf(field, folder, fitted));
const leftOut = fields.flatMap((field, f) => {
  const others = modelWith(
    fittedTo([...slopes.filter((_, other) => other !== f).flat(), ...trade], parameters),
  );
  return cellsOf(field, folder, others);
});

const shown = cells.flat();
console.log(
  table([
    ["field", "level", "the field", "before", "fitted", "left out", "place"],
    ...leftOut.map(({ field, level, did, error, inside }, i) => [
      field,
      level,
      did,
      percent(unfitted[i]?.error ?? Number.NaN),
      percent(fittedToAll[i]?.error ?? Number.NaN),
      percent(error),
      inside ? "in range" : "outside",
    ]),
  ]),
);
tell(
  "left out, kind",
  groupedBy(leftOut, ({ kind }) => kind),
);
tell(
  "left out, level",
  groupedBy(leftOut, ({ level }) => level),
);
tell("left out, length", groupedBy(leftOut, lengthOf));
tell(
  "all",
  new Map([
    ["before any field", unfitted],
    ["the model as it stands", shown],
    ["fitted to all", fittedToAll],
    ["left out", leftOut],
  ]),
);
