import { fileURLToPath } from "node:url";
import { Command } from "commander";
import { makePlan } from "../compute/make-plan.ts";
import { planJsonSchema } from "../models/plan/plan.ts";
import { sayFaults } from "../models/say-fault.ts";
import { loadData } from "../site/load-data.ts";
import { readSurroundings, today } from "../site/surroundings.ts";
import { findNamed } from "./find-named.ts";
import { terminalBrief } from "./terminal/terminal-brief.ts";

type Options = {
  readonly athlete?: string;
  readonly workout?: string;
  readonly date?: string;
  readonly json?: true;
  readonly schema?: true;
};

const options = new Command("plan")
  .description("Prints the brief of one athlete for one workout.")
  .option("--athlete <id>", "the athlete, by the name of the file in athletes/")
  .option("--workout <id>", "the workout, by the name of the file in content/workouts/")
  .option("--date <day>", "the day to plan for, such as 2026-11-25; today if left out")
  .option("--json", "print the whole plan as JSON")
  .option("--schema", "print the JSON Schema of a plan")
  .parse()
  .opts<Options>();

process.exitCode = run(options);

function run({ athlete, workout, date, json, schema }: Options): number {
  if (schema) {
    process.stdout.write(`${JSON.stringify(planJsonSchema(), null, 2)}\n`);
    return 0;
  }
  const root = fileURLToPath(new URL("../..", import.meta.url));
  const surroundings = readSurroundings(
    root,
    { ...process.env, ...(date && { RIGSHEET_DATE: date }) },
    today(),
  );
  const data = loadData(surroundings);
  if (!data.ok) return complain(sayFaults(data.faults));
  const who = findNamed("athlete", athlete ?? "", data.value.athletes);
  const what = findNamed("workout", workout ?? "", data.value.workouts);
  const complaints = [who, what].flatMap((found) => (found.ok ? [] : [found.message]));
  if (!who.ok || !what.ok) return complain(complaints.join("\n"));
  const plan = makePlan({
    athlete: who.value,
    workout: what.value,
    data: data.value,
    date: surroundings.date,
  });
  process.stdout.write(json ? `${JSON.stringify(plan, null, 2)}\n` : terminalBrief(plan));
  return 0;
}

function complain(message: string): number {
  process.stderr.write(`${message}\n`);
  return 1;
}
