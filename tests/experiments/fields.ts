/**
 * How true the plans of athletes known by level only are to open fields. Run by hand over a folder of fields:
 *
 *   node tests/experiments/fields.ts FOLDER [--list LIST.yaml] [--set NAME=VALUE]... [--races] [--table]
 *
 * LIST (tests/experiments/fields.yaml by default) tells the fields, who did them and the workout of each; those whose file is not in
 * the folder are left out. A new athlete is meant to lie at the 15th percentile of those who did it as prescribed, a regular one at the
 * 50th, a competitor at the 85th, an elite one at the 99th. Told are the error of the time (+ where the plan is too fast) in the middle
 * of its size and on average, by kind of work, level and length, and how often the place lies between the tenth and ninetieth
 * percentile of the plan. `--set` tries another value of a constant of the model. Stations of races are told apart, and not summed up
 * with the rest unless `--races` says so.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { demoData } from "../support/demo-data.ts";
import { cellsOf } from "./fields/cells.ts";
import { readFieldList } from "./fields/field-list.ts";
import { groupedBy, lengthOf } from "./fields/summary.ts";
import { percent, tell } from "./fields/tell.ts";
import { table } from "./pacing-problems.ts";

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    list: { type: "string" },
    set: { type: "string", multiple: true, default: [] },
    races: { type: "boolean", default: false },
  },
});
const [folder] = positionals;
if (folder === undefined) throw new Error("Give the folder the fields are in.");

const overrides = Object.fromEntries(
  values.set.map((pair) => {
    const [name = "", value] = pair.split("=");
    return [name, Number(value)];
  }),
);
const demo = demoData();
const data = {
  ...demo,
  settings: { ...demo.settings, overrides: { ...demo.settings.overrides, ...overrides } },
};
const fields = readFieldList(values.list ?? new URL("fields.yaml", import.meta.url)).filter(({ file }) =>
  existsSync(join(folder, file)),
);

const all = fields.flatMap((field) => cellsOf(field, folder, data));
const each = all.map(({ field, level, did, error, inside }) => [
  field,
  level,
  did,
  percent(error),
  inside ? "in range" : "outside",
]);
console.log(table([["field", "level", "the field", "error", "place"], ...each]));
const summed = values.races ? all : all.filter(({ kind }) => kind !== "race");
tell(
  "kind",
  groupedBy(all, ({ kind }) => kind),
);
tell(
  "level",
  groupedBy(summed, ({ level }) => level),
);
tell("length", groupedBy(summed, lengthOf));
tell("all", new Map([["all", summed]]));
