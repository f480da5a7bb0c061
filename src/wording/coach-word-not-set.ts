import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayKilograms } from "./mass.ts";
import { sayNumber } from "./number.ts";
import { sayPace } from "./pace.ts";
import { sayWholeScore } from "./score.ts";
import { sayDuration } from "./time.ts";

type NotSet = NonNullable<Plan["coachWord"]>["notSet"][number];

const saySizes = (sizes: readonly number[]): string =>
  sizes.length === 1 ? `sets of ${sizes[0] ?? ""}` : sizes.join("-");

/** What a coach set and what cannot be, with the question that settles it. */
export function sayNotSet(not: NotSet, units: MassUnit): string {
  switch (not.kind) {
    case "opener-over-best":
      return `Not set: opening with ${sayKilograms(not.opener, units)} is more than the best known, ${sayKilograms(not.best, units)}. Is the best out of date, or the load wrong?`;
    case "sets-over-best":
      return `Not set: ${not.name} in ${saySizes(not.sizes)}; the largest set of these numbers is ${not.best}. Is there a better one?`;
    case "sets-do-not-add-up":
      return `Not set: ${not.name} in ${saySizes(not.sizes)} is ${sayNumber(sum(not.sizes), 0)}, the work asks for ${sayNumber(not.amount, 0)}. Which sets are meant?`;
    case "sets-too-much": {
      const rest = not.rest === undefined ? "" : ` with ${sayDuration(not.rest)} between`;
      const what =
        not.sizes === undefined ? `${not.name}${rest}` : `${not.name} in ${saySizes(not.sizes)}${rest}`;
      return `Not set: ${what} is more than these muscles have left in round ${not.round}. Smaller sets, or longer rests?`;
    }
    case "no-sets":
      return `Not set: ${not.name} is not broken into sets by these numbers. Is a rest meant, or another movement?`;
    case "pace-over-fastest":
      return not.asked && not.fastest
        ? `Not set: ${sayPace(not.asked)} on ${not.name} is faster than the fastest of these numbers, ${sayPace(not.fastest)}. Is there a better test?`
        : `Not set: the pace on ${not.name} is faster than the fastest of these numbers. Is there a better test?`;
    case "pace-not-held":
      return `Not set: ${not.asked ? sayPace(not.asked) : "the pace"} on ${not.name} cannot be held from round ${not.round} on by these numbers. Is there a better test?`;
    case "pace-in-another-unit":
      return `Not set: the work counts ${not.name} in ${not.unit}, and nothing says how the pace set goes with that. Which pace in ${not.unit}?`;
    case "clock-ends-the-round":
      return "Not set: the clock ends the first round here, however fast it is done. Are reps meant?";
    case "one-round":
      return "Not set: there is one round only. Is a pace meant?";
    case "target-out-of-reach":
      return `Not set: ${sayWholeScore(not.score, not.asked, { units })} is out of reach of these numbers, whose fastest comes to ${sayWholeScore(not.score, not.nearest, { units })}. Is a test out of date?`;
    case "target-of-another-kind":
      return `Not set: by these numbers the part comes to a result of another kind (${not.score.replaceAll("-", " ")}) than the target. Which is meant?`;
  }
}

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);
