/**
 * Whether an athlete's own efforts come back, and what is planned for one that is left out. Run by hand:
 *
 *   node tests/experiments/own-efforts.ts
 *
 * Every effort of the demonstration's athletes and of the pinned situations' is planned as a workout of its own: once with all efforts
 * known, once with that one left out, and where nothing else is known of the athlete, from level and body alone. Told are the error of the
 * time (+ where the plan is too fast) and whether the effort lies between the tenth and ninetieth percentile of the plan.
 */
import { fileURLToPath } from "node:url";
import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import type { Athlete, MaxEffort } from "../../src/models/athlete.ts";
import type { Data } from "../../src/models/data.ts";
import { quantileSorted } from "../../src/numerics/quantile.ts";
import { loadData } from "../../src/site/load-data.ts";
import { soundWorkout } from "../support/workout-notation.ts";
import { problemOf } from "./fields/field-problem.ts";
import { percent } from "./fields/tell.ts";
import { table } from "./pacing-problems.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

function read(folder: string): Data {
  const data = loadData({ root, dataFolder: folder, audience: "everyone" });
  if (!data.ok) throw new Error(`${folder} cannot be read`);
  return data.value;
}

const UNITS: Partial<Readonly<Record<MaxEffort["unit"], string>>> = {
  metres: "m ",
  calories: "cal ",
  reps: "",
};

/** The plan of an effort as a workout of its own. */
function planOf(athlete: Athlete, { movement, amount, unit, load }: MaxEffort, data: Data) {
  const { loading } = data.library.movements.get(movement) ?? {};
  const at = load
    ? ` at ${load.value} ${load.unit}`
    : loading
      ? ` at ${loading.reference.male.value}/${loading.reference.female.value} ${loading.reference.male.unit}`
      : "";
  const workout = soundWorkout(
    `for time:\nwork:\n  - ${Number(amount.toFixed(1))} ${UNITS[unit] ?? ""}${movement}${at}\n`,
  );
  const part = pacePart(problemOf(athlete, workout, data));
  return part.kind === "not-paced" ? undefined : part.pacing.result;
}

const rows: string[][] = [];
const kept: number[] = [];
const left: { readonly error: number; readonly inside: boolean }[] = [];
for (const data of [read(root), read(`${root}tests/pinned/situations`)]) {
  for (const athlete of data.athletes) {
    for (const effort of athlete.efforts) {
      const without = { ...athlete, efforts: athlete.efforts.filter((one) => one !== effort) };
      const all = planOf(athlete, effort, data);
      const out = planOf(without, effort, data);
      if (!all || !out) continue;
      const error = effort.time / out.target - 1;
      const inside = effort.time <= out.cautious && effort.time >= out.hopeful;
      kept.push(Math.abs(effort.time / all.target - 1));
      left.push({ error, inside });
      const more = without.efforts.filter((one) => one.movement === effort.movement).length;
      rows.push([
        athlete.id,
        `${effort.amount} ${effort.unit} ${effort.movement} in ${effort.time} s`,
        `${more} of ${without.efforts.length}`,
        percent(effort.time / all.target - 1),
        percent(error),
        inside ? "in range" : "outside",
      ]);
    }
  }
}
console.log(
  table([["athlete", "effort", "others (same movement of all)", "kept", "left out", "place"], ...rows]),
);
const sizes = left.map(({ error }) => Math.abs(error)).sort((a, b) => a - b);
const bias = Math.exp(left.reduce((sum, { error }) => sum + Math.log(1 + error), 0) / left.length) - 1;
console.log(
  `\n${left.length} efforts. All known: at most ${percent(Math.max(...kept))}. Left out: ${percent(quantileSorted(sizes, 0.5))} in the middle of the size, ${percent(bias)} on average, in range ${left.filter(({ inside }) => inside).length} of ${left.length}.`,
);
