import type { Plan } from "../models/plan/plan.ts";
import { MINUS, NO_BREAK_SPACE, sayCount, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";

type EarlySplits = NonNullable<NonNullable<Plan["parts"][number]["pacing"]>["earlySplits"]>;

const seconds = (value: number): string => `${sayNumber(value, 1)}${NO_BREAK_SPACE}s`;
const signedShare = (share: number): string => `${share < 0 ? MINUS : "+"}${sayShare(Math.abs(share))}`;

/** How much of what was seen went into the plan. */
export const sayWeight = (early: EarlySplits): string =>
  `Seen so far: ${sayCount(early.performances, "performance", "performances")}; they count for ${sayShare(early.weight)} of the shape of this plan.`;

const NAMES: Readonly<Record<EarlySplits["notIdentifiable"][number], string>> = {
  fixedPerRound: "the fixed cost of a round",
  perRep: "the cost of a rep",
  driftPerRound: "the slowing from round to round",
  finishSurge: "the surge at the end",
};

/** What the splits show, one line each, with its uncertainty; and what they cannot tell. */
export function sayEarlySplits(early: EarlySplits): readonly string[] {
  const { fixedPerRound, perRep, driftPerRound, finishSurge, notIdentifiable } = early;
  return [
    fixedPerRound &&
      `Every round costs ${seconds(fixedPerRound.seconds)} whatever is in it (± ${seconds(fixedPerRound.error)}): transitions count.`,
    perRep && `A rep costs ${seconds(perRep.seconds)} (± ${seconds(perRep.error)}).`,
    driftPerRound &&
      `Each round was ${signedShare(driftPerRound.share)} on the one before (± ${sayShare(driftPerRound.error)}).`,
    finishSurge && `The last round was ${signedShare(finishSurge.share)} (± ${sayShare(finishSurge.error)}).`,
    notIdentifiable.length > 0 &&
      `Too few splits to tell ${notIdentifiable.map((what) => NAMES[what]).join(", ")}.`,
  ].filter((line): line is string => typeof line === "string");
}
