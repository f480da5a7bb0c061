import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayPerSide } from "./plates.ts";
import { sayShare } from "./share.ts";
import { sayCountdown, sayDuration } from "./time.ts";

type WarmUp = NonNullable<Plan["warmUp"]>;
type Step = WarmUp["steps"][number];
type Dropped = WarmUp["dropped"][number];

/** When a step begins: the time of day where the start is known, else minutes before the start. @example sayStepTime({ before: 2400 }) // => "−40" */
export const sayStepTime = (step: Pick<Step, "before" | "clock">): string =>
  step.clock ?? sayCountdown(step.before);

/** One set of the build. Reads `1 × 45 kg: 15 kg a side`. */
export function sayBuildSet(set: Step["sets"][number], units: MassUnit): string {
  const plates = sayPerSide(set.load);
  return `${set.reps}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}${sayLoad(set.load, units)}${plates ? `: ${plates}` : ""}`;
}

/** The rest after a set of the build. Reads `rest 2:00`. */
export const sayBuildRest = (set: Step["sets"][number]): string => `rest ${sayDuration(set.restAfter)}`;

/** How far the build goes and why, and what it adds up to, so that nobody adds more. */
export function sayBuild(build: NonNullable<WarmUp["build"]>): string {
  const tonnes = `${sayNumber(build.loadTimesReps, 0)}${NO_BREAK_SPACE}kg`;
  return `Up to ${sayShare(build.shareOfBest)} of your best ${build.name}. ${build.why} ${sayNumber(build.reps, 0)} reps and ${tonnes} in all; add nothing.`;
}

const DROPPED: Readonly<Record<Dropped["why"], string>> = {
  "no-time": "no time for it",
  limit: "left out for your stated limit",
  "no-equipment": "your gym lacks what it needs",
};

/** A block that is left out, and why. */
export const sayDropped = ({ title, why }: Dropped): string => `${title}: ${DROPPED[why]}`;
