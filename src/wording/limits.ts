import type { Plan } from "../models/plan/plan.ts";
import { sayDate } from "./date.ts";
import { sayList } from "./number.ts";

type Limit = NonNullable<Plan["limits"]>[number];

const spaced = (word: string): string => word.replaceAll("-", " ");

/** A limit as the athlete stated it, with their own words and its last day. */
export function sayLimit({ joint, condition, avoid, without, cleared, note, until }: Limit): string {
  const what = joint === undefined ? (condition === undefined ? "Limit" : spaced(condition)) : joint;
  const kept = [...avoid.map(spaced), ...without];
  return [
    `${what.charAt(0).toUpperCase()}${what.slice(1)}${kept.length > 0 ? `: no ${sayList(kept, "and no")}` : ""}${
      until === undefined ? "" : `, until ${sayDate(until)}`
    }.`,
    ...(cleared.length > 0 ? [`Cleared: ${sayList(cleared)}.`] : []),
    ...(note === undefined ? [] : [`“${note}”`]),
  ].join(" ");
}
