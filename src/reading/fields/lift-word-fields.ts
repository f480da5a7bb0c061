import { countField, massField, timeField } from "./quantity-field.ts";
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
/** How many attempts, at most. */
export const attemptsField = countField.transform((count, ctx) =>
  count >= 1 && count <= MOST_LIFTS
    ? count
    : refuse(ctx, {
        problem: `a number of attempts is ${count < 1 ? "at least 1" : `at most ${MOST_LIFTS}`}`,
        allowed: `from 1 to ${MOST_LIFTS}`,
        remedy: "Correct the number.",
      }),
);

const LONGEST_REST = 1800;
/** The shortest rest between two attempts. */
export const liftRestField = timeField.transform((time, ctx) =>
  time > 0 && time <= LONGEST_REST
    ? time
    : refuse(ctx, {
        problem: `a rest between two lifts is ${time <= 0 ? "over 0" : "at most 30:00"}`,
        allowed: "from 0:01 to 30:00",
        remedy: "Correct the time.",
      }),
);

/** A load to open with, or none heavier, and the step between two lifts. */
export const openerField = massWithin(1, 600, "a load to open with");
export const heaviestField = massWithin(1, 600, "the heaviest load");
export const stepField = massWithin(0.25, 100, "a step between two lifts");
