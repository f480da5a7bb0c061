import type { Plan } from "../models/plan/plan.ts";
import { sayGrounds } from "./grounds.ts";
import { sayShare } from "./share.ts";

type Basis = Plan["basis"][number];

const KINDS: Readonly<Record<Exclude<Basis["kind"], "level">, string>> = {
  tested: "tested",
  estimated: "estimated from your results",
  related: "from a related movement",
  assumed: "assumed",
};

/** What a statement rests on and how sure it is. @example sayBasis({ about: "pull-ups", kind: "level", from: { kind: "level", level: "regular" }, error: 0.15 }) // => "Pull-ups: typical for your level (regular), ±15%" */
export function sayBasis({ about, kind, from, error }: Basis): string {
  const parts = [
    ...(kind === "level"
      ? [sayGrounds(from, (level) => `typical for your level (${level})`)]
      : [KINDS[kind], sayGrounds(from)]),
    ...(error === undefined ? [] : [`±${sayShare(error)}`]),
  ];
  return `${capitalised(about)}: ${parts.join(", ")}`;
}

/** A test, to the athlete. @example sayTest({ kind: "best-time", metres: 2000, name: "row" }) // => "Take your best time over 2000 m: row." */
export function sayTest(test: NonNullable<Plan["sharpen"]>["test"]): string {
  switch (test.kind) {
    case "best-time":
      return `Take your best time over ${test.metres} m: ${test.name}.`;
    case "most-calories":
      return `Count the calories you make in ${test.minutes} minutes: ${test.name}.`;
    case "most-reps":
      return `Count the ${test.names} you can do in ${test.minutes} minutes${test.loaded ? ", with the load of the workout" : ""}, breaks included.`;
  }
}

/** The one test that would narrow the range most. */
export const saySharpen = (sharpen: NonNullable<Plan["sharpen"]>): string =>
  `${sayTest(sharpen.test)} It would narrow your range by ${sayShare(sharpen.narrowsBy)}.`;

/** First letter large. @example capitalised("pull-ups") // => "Pull-ups" */
export const capitalised = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
