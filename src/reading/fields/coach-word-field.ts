import type * as z from "zod";
import type { CoachWord } from "../../models/coach-word.ts";
import { countField, massField, timeField } from "./quantity-field.ts";
import { warmUpField } from "./bounded-field.ts";
import { textField } from "./text-field.ts";
import { inKilograms } from "../../models/quantity.ts";
import { refuse } from "../yaml/refuse.ts";

/** A mass with bounds in kilograms, whatever unit it is written in. */
const massWithin = (low: number, high: number, what: string) =>
  massField.transform((mass, ctx) =>
    inKilograms(mass) >= low && inKilograms(mass) <= high
      ? mass
      : refuse(ctx, {
          problem: `${what} is ${inKilograms(mass) < low ? `at least ${low} kg` : `at most ${high} kg`}`,
          allowed: `from ${low} to ${high} kg`,
          remedy: "Correct the number.",
        }),
  );

const MOST_LIFTS = 12;
const MOST_LIFTS_FIELD = countField.transform((count, ctx) =>
  count >= 1 && count <= MOST_LIFTS
    ? count
    : refuse(ctx, {
        problem: `a number of attempts is ${count < 1 ? "at least 1" : `at most ${MOST_LIFTS}`}`,
        allowed: `from 1 to ${MOST_LIFTS}`,
        remedy: "Correct the number.",
      }),
);

const LONGEST_REST = 1800;
const REST_FIELD = timeField.transform((time, ctx) =>
  time > 0 && time <= LONGEST_REST
    ? time
    : refuse(ctx, {
        problem: `a rest between two lifts is ${time <= 0 ? "over 0" : "at most 30:00"}`,
        allowed: "from 0:01 to 30:00",
        remedy: "Correct the time.",
      }),
);

/** What a coach may set for an athlete in a workout. */
export const coachWordFields = {
  "open with": massWithin(1, 600, "a load to open with")
    .optional()
    .describe("the load of the first attempt: `80 kg`"),
  "up by": massWithin(0.25, 100, "a step between two lifts")
    .optional()
    .describe("from a made load to the next: `5 kg`; needs `open with`"),
  lifts: MOST_LIFTS_FIELD.optional().describe("how many attempts, at most: `3`"),
  "rest between lifts": REST_FIELD.optional().describe("the shortest rest between two attempts: `1:30`"),
  "warm up": warmUpField.optional().describe("time for warming up: `25 min`"),
  say: textField.optional().describe("a sentence of yours, shown at the top of the brief"),
};

type Written = z.output<z.ZodObject<typeof coachWordFields>>;

/** The word as the computation takes it. */
export const coachWordOf = (written: Written): CoachWord => ({
  ...(written["open with"] === undefined ? {} : { opener: written["open with"] }),
  ...(written["up by"] === undefined ? {} : { jump: written["up by"] }),
  ...(written.lifts === undefined ? {} : { lifts: written.lifts }),
  ...(written["rest between lifts"] === undefined ? {} : { liftRest: written["rest between lifts"] }),
  ...(written["warm up"] === undefined ? {} : { warmUp: written["warm up"] }),
  ...(written.say === undefined ? {} : { say: written.say }),
});
