import type { EffortTrouble } from "../models/effort-trouble.ts";
import type { Fault } from "../models/fault.ts";
import { sayMaxEffort } from "./grounds.ts";

type Words = Omit<Fault, "place" | "found">;

/** What is wrong with a max effort, as a fault at its line of the athlete's file. */
export const effortFault = (trouble: EffortTrouble): Fault => ({
  place: trouble.effort.place,
  found: sayMaxEffort(trouble.effort),
  ...wordsOf(trouble),
});

function wordsOf(trouble: EffortTrouble): Words {
  const { movement, effort } = trouble;
  const unit = movement.counts[0] ?? "reps";
  switch (trouble.kind) {
    case "nothing-done":
      return {
        problem: `a max effort of ${movement.name} needs an amount and a time of more than nothing`,
        allowed: "an amount done and the time it took, such as `98 burpee in 7:00`",
        remedy: `Write what was done and how long it took, or delete the line. If ${movement.plural} are not possible yet, list the movement under \`cannot\`.`,
        severity: "fault",
      };
    case "no-conversion":
      return {
        problem: `nothing says how ${effort.unit} of ${movement.name} become ${unit}`,
        allowed: `an effort of ${movement.name} in ${movement.counts.filter((other) => other !== "seconds").join(" or ")}`,
        remedy: `Write the effort in ${unit}.`,
        severity: "fault",
      };
    case "too-fast":
      return {
        problem: `one ${ONE[unit]} of ${movement.name} every ${plain(trouble.pace)} s is faster than anybody's quickest cycle, about ${plain(trouble.quickest)} s`,
        allowed: `at most about ${Math.floor(trouble.most)} ${unit} in that time`,
        remedy:
          "Check the amount and the time; minutes typed as hours or a digit too many are the usual causes.",
        severity: "fault",
      };
    case "too-slow":
      return {
        problem: `one ${ONE[unit]} of ${movement.name} every ${plain(trouble.pace)} s is slower than a beginner's long work, even at ${plain(trouble.beginner)} s`,
        allowed: "as much as could be done in the time, or an amount done as fast as it could be",
        remedy:
          "Check the amount and the time. If the load was near the best lift, give it as a lift instead.",
        severity: "question",
      };
    case "slower-than-longer":
      return sayContradiction(trouble, ONE[unit]);
  }
}

const sayContradiction = (
  { movement, pace, longer, longerPace }: Extract<EffortTrouble, { kind: "slower-than-longer" }>,
  unit: string,
): Words => ({
  problem: `this shorter effort at ${movement.name} is slower (${plain(pace)} s a ${unit}) than the longer one on line ${longer.place.line}, ${sayMaxEffort(longer)} (${plain(longerPace)} s a ${unit})`,
  allowed: "a shorter effort at least as fast as any longer one",
  remedy: "Correct one of the two, or delete the one that was not a max effort.",
  severity: "fault",
});

const ONE = { reps: "rep", calories: "calorie", metres: "metre", seconds: "second" } as const;

/** A time in seconds with as many decimals as matter. */
const plain = (seconds: number): string => seconds.toFixed(seconds < 1 ? 2 : 1);
