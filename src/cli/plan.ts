import pc from "picocolors";
import { makePlan, planAsIs } from "../compute/make-plan.ts";
import { seenOnce } from "../compute/seen-once.ts";
import { heldBack, type Unmade } from "../models/data.ts";
import { nearestName } from "../models/nearest.ts";
import { planJsonSchema } from "../models/plan/plan.ts";
import { comparePlans } from "./compare-plans.ts";
import { briefText } from "./brief-text.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { readUsable } from "./read-checked.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions & {
  readonly athlete?: string;
  readonly workout?: string;
  readonly all?: true;
  readonly compare?: true;
  readonly json?: true;
  readonly schema?: true;
};

/** All faults were told when the files were read. */
const ABOVE = "what is wrong stands above.";

await run(
  makeCommand("plan", "Prints one athlete's brief of one workout.")
    .option("--athlete <id>", "name of the file in athletes/ without its ending, or the athlete's name")
    .option("--workout <id>", "name of the file in content/workouts/ without its ending, or its title")
    .option("--all", "every athlete; with --json one plan a line")
    .option("--compare", "the plan with what you set and without it, side by side")
    .option("--json", "the whole plan as JSON and nothing else")
    .option("--schema", "the JSON Schema of a plan and nothing else")
    .action((options: Options) => {
      if (options.schema) {
        console.log(JSON.stringify(planJsonSchema(), null, 2));
        return;
      }
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const only = options.all ? undefined : options.athlete;
      const { data, faults } = readUsable(surroundings, (text) => process.stderr.write(`${text}\n`), only);
      if (faults.length > 0) process.exitCode = 1;
      const athletes = data.athletes.map((value) => ({ id: value.id, name: value.name, value }));
      const workouts = data.workouts.map((value) => ({ id: value.id, name: value.title, value }));
      const { date } = surroundings;
      const chosen = athletesAsked(options, athletes, data.unmade);
      const workout = pick("workout", options.workout, workouts, data.unmade);
      const seen = seenOnce(data, date)(workout);
      for (const athlete of chosen) {
        const waits = heldBack(data, { athlete: athlete.id, workout: workout.id });
        if (waits) {
          process.stderr.write(visibleText(`No plan for ${waits.name}: ${ABOVE}\n`));
          process.exitCode = 1;
          continue;
        }
        try {
          const plan = makePlan({ athlete, workout, data, date, seen });
          const indent = options.all ? undefined : 2;
          if (options.compare) {
            console.log(comparePlans(plan, planAsIs({ athlete, workout, data, date, seen })));
            continue;
          }
          console.log(options.json ? JSON.stringify(plan, null, indent) : briefText(plan, pc.bold));
        } catch (error) {
          if (!options.all) throw error;
          const problem = error instanceof Error ? error.message : String(error);
          process.stderr.write(visibleText(`No plan for ${athlete.name}: ${problem}\n`));
          process.exitCode = 1;
        }
      }
    }),
);

type Named<T> = { readonly id: string; readonly name: string; readonly value: T };

/**
 * Everybody, or the one athlete that is asked for.
 *
 * @throws an Error where both are asked for, or nobody is there.
 */
function athletesAsked<T>(
  { all, athlete }: Options,
  athletes: readonly Named<T>[],
  unmade: readonly Unmade[],
): readonly T[] {
  if (!all) return [pick("athlete", athlete, athletes, unmade)];
  if (athlete !== undefined) throw new Error("Say --all for everybody or --athlete ID for one, not both.");
  if (athletes.length === 0) throw new Error("There is no athlete yet. Add a file to athletes/.");
  return athletes.map(({ value }) => value);
}

/**
 * The one that is asked for, by id or name.
 *
 * @throws an Error that says which there are and which is nearest.
 */
function pick<T>(
  what: Unmade["kind"],
  asked: string | undefined,
  all: readonly Named<T>[],
  unmade: readonly Unmade[],
): T {
  const listed = all.map(({ id, name }) => `  ${id}  ${name}`).join("\n");
  const there = all.length === 0 ? `There is no ${what} yet.` : `There are:\n${listed}`;
  if (asked === undefined) throw new Error(`Say which ${what}: --${what} ID. ${there}`);
  const found = all.find(({ id, name }) =>
    [id, name].some((own) => own.toLowerCase() === asked.toLowerCase()),
  );
  if (found) return found.value;
  const broken = unmade.find(
    ({ kind, id, name }) =>
      kind === what && [id, name].some((own) => own.toLowerCase() === asked.toLowerCase()),
  );
  if (broken) throw new Error(`Nothing can be planned for ${broken.name}: ${ABOVE}`);
  const nearest = nearestName(
    asked,
    all.flatMap(({ id, name }) => [id, name]),
  );
  const meant = all.find(({ id, name }) => id === nearest || name === nearest);
  throw new Error(`There is no ${what} "${asked}".${meant ? ` The nearest is "${meant.id}".` : ""} ${there}`);
}
