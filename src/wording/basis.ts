import type { Plan } from "../models/plan/plan.ts";
import { sayShare } from "./share.ts";

type Basis = Plan["basis"][number];

const KINDS: Readonly<Record<Basis["kind"], string>> = {
  tested: "tested",
  estimated: "estimated from your results",
  related: "from a related movement",
  level: "typical for your level",
  assumed: "assumed",
};

/** What a statement rests on and how sure it is. @example sayBasis({ about: "pull-ups", kind: "level", detail: "", error: 0.15 }) // => "Pull-ups: typical for your level, ±15%" */
export function sayBasis({ about, kind, detail: written, assumed, error }: Basis): string {
  const detail = assumed ? sayAssumed(assumed) : written;
  const of = kind === "level" ? /^level (\S+)$/.exec(detail)?.[1] : undefined;
  const parts = [
    ...(of ? [`${KINDS[kind]} (${of})`] : [KINDS[kind], ...(detail ? [detail] : [])]),
    ...(error === undefined ? [] : [`±${sayShare(error)}`]),
  ];
  return `${capitalised(about)}: ${parts.join(", ")}`;
}

type Assumed = NonNullable<Basis["assumed"]>;

/** What is assumed, and why. @example sayAssumed({ kind: "gym", gym: "a usual gym" }) // => "no gym is given, so the plates are those of a usual gym" */
function sayAssumed(assumed: Assumed): string {
  if (assumed.kind === "gym") return `no gym is given, so the plates are those of ${assumed.gym}`;
  const why = {
    "not-listed": `this workout does not list ${assumed.stated ?? "the division"}; ask the organiser which one is yours`,
    sex: "no division is given in the profile",
    "last-listed": "neither division nor sex is given in the profile, so the last one listed is taken",
  }[assumed.by];
  return `planned as ${assumed.division}: ${why}`;
}

/** A test, to the athlete. @example sayTest({ kind: "best-time", metres: 2000, name: "row" }) // => "Take your best time over 2000 m: row." */
export function sayTest(test: NonNullable<Plan["sharpen"]>["test"]): string {
  switch (test.kind) {
    case "best-time":
      return `Take your best time over ${test.metres} m: ${test.name}.`;
    case "most-calories":
      return `Count the calories you make in ${test.minutes} minutes: ${test.name}.`;
    case "most-reps":
      return `Count the ${test.names} you can do in ${test.minutes} minutes, breaks included.`;
  }
}

/** The one test that would narrow the range most. */
export const saySharpen = (sharpen: NonNullable<Plan["sharpen"]>): string =>
  `${sayTest(sharpen.test)} It would narrow your range by ${sayShare(sharpen.narrowsBy)}.`;

/** First letter large. @example capitalised("pull-ups") // => "Pull-ups" */
export const capitalised = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
