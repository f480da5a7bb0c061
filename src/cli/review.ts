import { reviewPlans } from "../compute/debrief/review-plans.ts";
import { makePlan } from "../compute/make-plan.ts";
import { seenOnce } from "../compute/seen-once.ts";
import { visibleText } from "../models/visible-text.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { oneOf } from "./one-of.ts";
import { readUsable } from "./read-checked.ts";
import { reviewText } from "./review-text.ts";

await run(
  makeCommand("review", "Says how good the plans of a workout were: planned against done for all athletes.")
    .argument("<workout>", "name of the file in content/workouts/ without its ending")
    .action((id: string, options: CommonOptions) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { data, faults } = readUsable(surroundings, (text) => process.stderr.write(`${text}\n`));
      if (faults.length > 0) process.exitCode = 1;
      const { date } = surroundings;
      const workout = oneOf("workout", id, data.workouts);
      const seen = seenOnce(data, date)(workout);
      const done = data.athletes.filter(({ results }) => results.some((one) => one.workout === workout.id));
      const reviews = reviewPlans(done.map((athlete) => makePlan({ athlete, workout, data, date, seen })));
      console.log(
        reviews.length === 0
          ? `Nobody has logged a result of ${workout.title} yet. Results stand in the athletes' files, as \`results:\`.`
          : visibleText(reviewText(reviews)),
      );
    }),
);
