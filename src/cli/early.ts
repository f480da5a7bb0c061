import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { laidOf } from "../compute/debrief/laid-of.ts";
import { piecesOf } from "../compute/debrief/pieces.ts";
import { makePlan } from "../compute/make-plan.ts";
import type { Athlete, LoggedResult } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import type { Workout } from "../models/workout.ts";
import { clocksLeftOut, earlyLines, type EarlyEntry, withEarlyEntry } from "../site/early-entry.ts";
import { writeSafely } from "../site/write-safely.ts";
import { readWorkout } from "../reading/read-workout.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { oneOf } from "./one-of.ts";
import { readUsable } from "./read-checked.ts";

type Options = CommonOptions & { readonly part?: string; readonly write?: true };

await run(
  makeCommand("early", "Makes an athlete's logged result an early performance of the workout.")
    .argument("<athlete>", "name of the file in athletes/ without its ending")
    .argument("<workout>", "name of the file in content/workouts/ without its ending")
    .option("--part <name>", "the part, where results of several were logged")
    .option("--write", "adds it to the workout's file; left out, it is only printed")
    .action((who: string, what: string, options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { data } = readUsable(surroundings, (text) => process.stderr.write(`${text}\n`));
      const athlete = oneOf("athlete", who, data.athletes);
      const workout = oneOf("workout", what, data.workouts);
      const result = resultOf(athlete, workout, options.part);
      const lines = earlyLines(entryOf(athlete, workout, result, data, surroundings.date));
      const left = clocksLeftOut(result);
      if (left.length > 0) {
        console.error(
          `Left out: ${left.join(", ")}. A clock before ${left.length === 1 ? "it" : "them"} was not read; with it in \`splits:\` of ${athlete.id} ${left.length === 1 ? "it counts" : "they count"}.`,
        );
      }
      if (!options.write) {
        console.log(["early:", ...lines.map((line) => `  ${line}`)].join("\n"));
        return;
      }
      const file = join(surroundings.dataFolder, "content", "workouts", `${workout.id}.mdx`);
      addTo(file, lines, workout, data);
      console.log(
        `${relative(process.cwd(), file)}: one early performance more. Plans of everybody else count on it from the next build on; no page names who it was.`,
      );
    }),
);

/** @throws an Error where there is nothing to take, or more than one and it is not said which. */
function resultOf(athlete: Athlete, workout: Workout, part: string | undefined): LoggedResult {
  const own = athlete.results.filter(
    (one) =>
      one.workout === workout.id &&
      (one.splits.length > 0 || one.time !== undefined || one.reps !== undefined),
  );
  const parts = [...new Set(own.map((one) => one.part))];
  const asked = part ?? (parts.length === 1 ? parts[0] : undefined);
  const result = own.findLast((one) => one.part.toLowerCase() === asked?.toLowerCase());
  if (own.length === 0) {
    throw new Error(
      `${athlete.id} has logged no time, reps or clocks of ${workout.id}. Add them to the athlete's file, under \`results:\`.`,
    );
  }
  if (result === undefined) throw new Error(`Say which part with --part: ${parts.join(" or ")}.`);
  if (result.version === "scaled") {
    throw new Error(
      `${athlete.id} did a scaled version of part ${result.part}: it tells nothing of the workout as written.`,
    );
  }
  if (workout.early.some((one) => one.athlete === athlete.id.toLowerCase() && one.part === result.part)) {
    throw new Error(
      `${workout.id} has an early performance of ${athlete.id} in part ${result.part} already.`,
    );
  }
  return result;
}

/** What the clocks of a log stand for is told by how they fit the plan. */
function entryOf(
  athlete: Athlete,
  workout: Workout,
  result: LoggedResult,
  data: Data,
  date: string,
): EarlyEntry {
  const plan = makePlan({ athlete, workout, data, date }).parts.find(({ name }) => name === result.part);
  const pieces = plan?.pacing ? piecesOf(laidOf(plan, plan.pacing), result.splits) : [];
  return {
    athlete: athlete.id,
    ...(workout.parts.length > 1 && { part: result.part }),
    after: pieces[0]?.kind === "row" ? "line" : "round",
    result,
  };
}

/** @throws an Error where the entry cannot be put in without touching what stands there; the file is then left as it is. */
function addTo(file: string, lines: readonly string[], workout: Workout, data: Data): void {
  const text = withEarlyEntry(readFileSync(file, "utf8"), lines);
  const read = text === undefined ? undefined : readWorkout({ path: file, text }, data.library.movements);
  if (text === undefined || read?.ok !== true || read.value.early.length !== workout.early.length + 1) {
    throw new Error(
      `It cannot be added to ${file} without changing what stands there. Add it by hand:\n\n${lines.join("\n")}`,
    );
  }
  writeSafely(file, text);
}
