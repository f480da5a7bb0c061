import { BENCHES, type Bench } from "./benches.ts";
import type { Data } from "../models/data.ts";
import { quantileSorted } from "../numerics/quantile.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { readChecked } from "./read-checked.ts";
import { columns } from "./text-block.ts";

type Options = CommonOptions & { readonly runs: string };

await run(
  makeCommand("bench", "Measures the computation: milliseconds of CPU, over every athlete and workout.")
    .option("--runs <number>", "measured runs of each", "5")
    .action((options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const data = readChecked(surroundings, (text) => process.stderr.write(`${text}\n`));
      const rows = BENCHES.map((bench) => {
        const times = measure(bench, data, surroundings.date, Number(options.runs)).toSorted((a, b) => a - b);
        return [
          bench.name,
          `${quantileSorted(times, 0.5).toFixed(1)} ms`,
          `${quantileSorted(times, 0.9).toFixed(1)} ms`,
          bench.budget === undefined ? "" : `budget ${bench.budget} ms`,
        ];
      });
      const plans = data.athletes.length * data.workouts.length;
      console.log(`${plans} athletes × workouts, ${options.runs} runs each; CPU, median and nine in ten`);
      console.log(columns(rows, ["left", "right", "right"]).join("\n"));
    }),
);

/** CPU of each run, milliseconds; the first run of each is thrown away, since the compiler works in it. */
function measure(bench: Bench, data: Data, date: string, runs: number): readonly number[] {
  const times: number[] = [];
  for (const workout of data.workouts) {
    for (const athlete of data.athletes) {
      const once = bench.prepare(athlete, workout, data, date);
      if (once === undefined) continue;
      for (let index = -1; index < runs; index++) {
        const before = process.cpuUsage();
        once();
        const { user, system } = process.cpuUsage(before);
        if (index >= 0) times.push((user + system) / 1000);
      }
    }
  }
  return times;
}
