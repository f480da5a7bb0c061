import type { Plan } from "../models/plan/plan.ts";
import { sayCause, sayLiftCause, sayNothingClear, sayStanding } from "../wording/debrief.ts";
import { sayPart } from "../wording/part-name.ts";
import { saySecondPlan } from "../wording/second-plan.ts";
import { SECOND_TRY_CARE, saySecondTry } from "../wording/second-try.ts";
import { wrap } from "./text-block.ts";

/** Results held against the plan, and whether to do it again. */
export const debriefText = ({ debriefs = [], parts, athlete }: Plan): readonly string[] =>
  debriefs.length === 0
    ? []
    : [
        ...debriefs.flatMap((debrief) => [
          ...(parts.length > 1 ? [`Part ${sayPart(debrief.part)}`] : []),
          sayStanding(debrief, athlete.units),
          ...debrief.causes.map(sayCause),
          ...debrief.lifts.map(sayLiftCause),
          sayNothingClear(debrief) ?? "",
          `Again? ${saySecondTry(debrief, athlete.units)}`,
          ...(debrief.secondPlan
            ? saySecondPlan(debrief.secondPlan, debrief.unit, athlete.units)
                .filter(({ changed }) => changed)
                .map(({ what, before, now }) => `Second try, ${what}: ${now} (was ${before})`)
            : []),
        ]),
        SECOND_TRY_CARE,
      ]
        .filter((line) => line !== "")
        .flatMap((line) => wrap(line, 2, 4));
