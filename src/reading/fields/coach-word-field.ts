import type * as z from "zod";
import type { CoachWord } from "../../models/coach-word.ts";
import { countField, massField, timeField } from "./quantity-field.ts";
import { textField } from "./text-field.ts";

/** What a coach may set for an athlete in a workout. */
export const coachWordFields = {
  "open with": massField.optional().describe("the load of the first attempt: `80 kg`"),
  "up by": massField.optional().describe("from a made load to the next: `5 kg`; needs `open with`"),
  lifts: countField.optional().describe("how many attempts, at most: `3`"),
  "rest between lifts": timeField.optional().describe("the shortest rest between two attempts: `1:30`"),
  "warm up": timeField.optional().describe("time for warming up: `25 min`"),
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
