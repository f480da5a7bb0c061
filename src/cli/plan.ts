import pc from "picocolors";
import { makePlan } from "../compute/make-plan.ts";
import { nearestName } from "../models/nearest.ts";
import { planJsonSchema } from "../models/plan/plan.ts";
import { briefText } from "./brief-text.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { readChecked } from "./read-checked.ts";

type Options = CommonOptions & {
  readonly athlete?: string;
  readonly workout?: string;
  readonly json?: true;
  readonly schema?: true;
};

await run(
  makeCommand("plan", "Prints one athlete's brief of one workout.")
    .option("--athlete <id>", "name of the file in athletes/ without its ending, or the athlete's name")
    .option("--workout <id>", "name of the file in content/workouts/ without its ending, or its title")
    .option("--json", "the whole plan as JSON and nothing else")
    .option("--schema", "the JSON Schema of a plan and nothing else")
    .action((options: Options) => {
      if (options.schema) {
        console.log(JSON.stringify(planJsonSchema(), null, 2));
        return;
      }
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const data = readChecked(surroundings, (text) => process.stderr.write(`${text}\n`));
      const athletes = data.athletes.map((value) => ({ id: value.id, name: value.name, value }));
      const workouts = data.workouts.map((value) => ({ id: value.id, name: value.title, value }));
      const athlete = pick("athlete", options.athlete, athletes);
      const workout = pick("workout", options.workout, workouts);
      const plan = makePlan({ athlete, workout, data, date: surroundings.date });
      console.log(options.json ? JSON.stringify(plan, null, 2) : briefText(plan, pc.bold));
    }),
);

type Named<T> = { readonly id: string; readonly name: string; readonly value: T };

/**
 * The one that is asked for, by id or name.
 *
 * @throws an Error that says which there are and which is nearest.
 */
function pick<T>(what: string, asked: string | undefined, all: readonly Named<T>[]): T {
  const listed = all.map(({ id, name }) => `  ${id}  ${name}`).join("\n");
  const there = all.length === 0 ? `There is no ${what} yet.` : `There are:\n${listed}`;
  if (asked === undefined) throw new Error(`Say which ${what}: --${what} ID. ${there}`);
  const found = all.find(({ id, name }) =>
    [id, name].some((own) => own.toLowerCase() === asked.toLowerCase()),
  );
  if (found) return found.value;
  const nearest = nearestName(
    asked,
    all.flatMap(({ id, name }) => [id, name]),
  );
  const meant = all.find(({ id, name }) => id === nearest || name === nearest);
  throw new Error(`There is no ${what} "${asked}".${meant ? ` The nearest is "${meant.id}".` : ""} ${there}`);
}
