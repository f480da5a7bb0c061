import type { IsoDate } from "../../models/athlete.ts";
import type { Rules } from "../motion/rules.ts";
import type { UsualPlan } from "./sustainable-work.ts";
import type { Lifter } from "./task-factor.ts";

/** What is known of an athlete and the day, for fitting. */
export type Subject = Lifter & {
  readonly date: IsoDate;
  readonly rules: Rules;
  readonly usualPlan: UsualPlan;
};
