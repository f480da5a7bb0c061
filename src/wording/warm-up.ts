import type { Plan } from "../models/plan/plan.ts";
import { kilograms, massIn, type MassUnit } from "../models/quantity.ts";
import { sayAmount } from "./amount.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayCount, sayList, sayNumber } from "./number.ts";
import { sayPerSide } from "./plates.ts";
import { sayShare } from "./share.ts";
import { sayRowPace } from "./pace.ts";
import { sayCountdown, sayDuration } from "./time.ts";

type WarmUp = NonNullable<Plan["warmUp"]>;
type Step = WarmUp["steps"][number];
type Dropped = WarmUp["dropped"][number];

/** When a step begins: the time of day where the start is known, else minutes before the start. @example sayStepTime({ before: 2400 }) // => "−40" */
export const sayStepTime = (step: Pick<Step, "before" | "clock">): string =>
  step.clock ?? sayCountdown(step.before);

/** One set of the build. Reads `1 × 45 kg: 15 kg a side`, of a second movement `2 × 110 kg deadlift: 45 kg a side`. */
export function sayBuildSet(set: Step["sets"][number], units: MassUnit): string {
  const plates = sayPerSide(set.load);
  return `${sayBuildLoad(set, units)}${plates ? `: ${plates}` : ""}`;
}

/** One set of the build without its plates. Reads `1 × 45 kg`, of a second movement `2 × 110 kg deadlift`. */
export const sayBuildLoad = (set: Step["sets"][number], units: MassUnit): string =>
  `${set.reps}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}${sayLoad(set.load, units)}${set.name === undefined ? "" : ` ${set.name}`}`;

/** The rest after a set of the build. Reads `rest 2:00`. */
export const sayBuildRest = (set: Step["sets"][number]): string => `rest ${sayDuration(set.restAfter)}`;

/** What a step is called; the heavy half of a build goes by the title of the whole. */
export const titleOfStep = ({ title, goesOn }: Pick<Step, "title" | "goesOn">): string =>
  goesOn ? `${title}: the heavy sets` : title;

/** The words of a step, with what is rehearsed at which pace, and the joints a limit is stated for, filled in. */
export const sayStep = ({
  say,
  goesOn,
  efforts = [],
  joints = [],
}: Pick<Step, "say" | "goesOn" | "efforts" | "joints">): string =>
  goesOn
    ? "Go on where you stopped, one set at a time."
    : say.replace("{efforts}", sayList(efforts.map(sayEffort))).replace("{joints}", sayList(joints));

type Effort = NonNullable<Step["efforts"]>[number];

/** One movement of a rehearsal. Reads `8 burpees at 3.3 s a rep`, or `60 m of the run at 4:10 per km`. */
export function sayEffort(effort: Effort): string {
  const { name, plural, unit, amount } = effort;
  const pace = sayRowPace(effort);
  const what =
    unit === "reps"
      ? `${amount} ${amount === 1 ? name : plural}`
      : `${sayAmount({ amount, unit })} of the ${name}`;
  return pace === undefined ? what : `${what} at ${pace}`;
}

type BuildReason = NonNullable<WarmUp["build"]>["why"];

const PLACES: Readonly<Record<"high" | "middle" | "low", string>> = {
  high: "That is high (70 to 80% is usual)",
  middle: "70 to 80% is usual",
  low: "That is low (70 to 80% is usual)",
};

const REASONS: Readonly<Record<BuildReason["reasons"][number], string>> = {
  "strong-in-it": "you are strong in this lift",
  "still-building-it": "you are still building this lift",
  "recovers-fast": "you recover fast",
  "recovers-slowly": "you recover slowly",
  "lift-comes-first": "the lift comes first",
  "after-work": "you lift after minutes of work",
  "best-estimated": "your best is only estimated",
  age: "your age asks for a margin",
};

/** Why a build ends where it does, as a sentence. */
function sayBuildReason({ kind, reasons }: BuildReason): string {
  if (kind === "load") return "Up to the heaviest load of the workout, so that it holds no surprise.";
  if (kind === "under-the-load")
    return "It stops short of the load of the workout, which belongs to the workout.";
  if (kind === "under-the-opener")
    return "It stays under your opener: what that load feels like tells you whether the opener is right.";
  const told = reasons.map((reason) => REASONS[reason]);
  return told.length === 0
    ? `${PLACES[kind]}: nothing asks for more or less.`
    : `${PLACES[kind]}: ${told.join(", and ")}.`;
}

/** How far the build goes and why, and what it adds up to, so that nobody adds more. */
export function sayBuild(build: NonNullable<WarmUp["build"]>, units: MassUnit): string {
  const total = massIn(units, kilograms(build.loadTimesReps)).value;
  // Whoever adds up the sets above must come to the same figure.
  const iron = `${sayNumber(Math.round(total * 2) / 2, 1)}${NO_BREAK_SPACE}${units}`;
  const best = build.guessed
    ? `what your level lifts in the ${build.name}, as a guess`
    : `your best ${build.name}`;
  return `Up to ${sayShare(build.shareOfBest)} of ${best}. ${sayBuildReason(build.why)} ${sayCount(build.reps, "rep", "reps")} and ${iron} in all; add nothing.`;
}

const DROPPED: Readonly<Record<Dropped["why"], string>> = {
  "no-time": "no time for it",
  limit: "left out for your stated limit",
  "no-equipment": "your gym lacks what it needs",
};

/** A block that is left out, and why. */
export const sayDropped = ({ title, why }: Dropped): string => `${title}: ${DROPPED[why]}`;
