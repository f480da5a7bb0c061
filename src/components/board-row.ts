import { sayMissing } from "../wording/missing.ts";
import { sayCoachWord } from "../wording/coach-word.ts";
import type { PartPlan, Plan } from "../models/plan/plan.ts";
import type { Reviewable } from "../models/plan/review.ts";
import { titleOfLeftOut } from "../wording/left-out.ts";
import type { Goal } from "../wording/goal.ts";

/**
 * What the board reads of a plan, and nothing more: a board holds thousands of rows at once, and a whole plan is forty times
 * as long. What is to be shown besides is named here and taken in `boardPlan`.
 */
export type BoardPlan = Pick<
  Plan,
  | "athlete"
  | "workout"
  | "gym"
  | "start"
  | "headline"
  | "withheld"
  | "cautions"
  | "coachWord"
  | "sharpen"
  | "debriefs"
> & {
  readonly parts: readonly (Pick<PartPlan, "name" | "missing"> & Reviewable["parts"][number])[];
};

/** What the board reads of a plan. */
export function boardPlan(plan: Plan): BoardPlan {
  const { athlete, workout, gym, start, headline, withheld, cautions, coachWord, sharpen, debriefs } = plan;
  return {
    athlete,
    workout,
    gym,
    headline,
    withheld,
    cautions,
    ...(start && { start }),
    ...(coachWord && { coachWord }),
    ...(sharpen && { sharpen }),
    ...(debriefs && { debriefs }),
    // Once there is a result, it is held against its lines.
    parts: plan.parts.map(({ name, missing, pacing }) => ({
      name,
      missing,
      ...(debriefs &&
        pacing && { pacing: { rows: pacing.rows.map(({ index, name: of }) => ({ index, name: of })) } }),
    })),
  };
}

/** One athlete on the coach's board. */
export type BoardRow = {
  readonly plan: BoardPlan;
  /** What the athlete aims at. */
  readonly goal: Goal | undefined;
  /** Link to the brief, with its key. */
  readonly link: string;
  /** Groups the athlete's file names. */
  readonly groups: readonly string[];
  /** What had to be taken from the level, because nothing is known of the athlete. */
  readonly gaps: readonly string[];
  /** Whether the brief is new, changed since it was last sent, or as it was. */
  readonly since: "new" | "changed" | "same";
  /** The message to the athlete, with `{link}` where the link stands. */
  readonly message: string;
  /** What the athlete's passcode is stretched to, in base 64, where one is asked for: with it the board opens the sheets. */
  readonly opens?: string;
};

/** The board of a group, as the board of everybody leads to it. */
export type GroupBoard = { readonly name: string; readonly link: string };

/** A test that would make the plans of some athletes surer. */
export type SharedTest = { readonly test: string; readonly names: readonly string[] };

/** An athlete or a workout of which nothing could be made, and what is left of them from before. */
export type NotMade = {
  readonly name: string;
  readonly file: string;
  /** What is wrong, a sentence each. */
  readonly why: readonly string[];
  readonly kept: readonly { readonly title: string; readonly link: string; readonly made: string }[];
};

const careOf = ({ plan }: BoardRow): readonly string[] =>
  plan.cautions.filter(({ weight }) => weight === "care").map(({ title }) => title);

/** Cautions that every athlete of a workout has; they are said once. */
export function sharedCare(rows: readonly BoardRow[]): readonly string[] {
  const [first, ...others] = rows;
  if (!first || others.length === 0) return [];
  return careOf(first).filter((title) => others.every((row) => careOf(row).includes(title)));
}

/** The name of the sheet on the paper that readers of this unit are likely to have. */
export const likelySheet = (units: Plan["athlete"]["units"]): "sheet-a4" | "sheet-letter" =>
  units === "lb" ? "sheet-letter" : "sheet-a4";

/** Words a row is filtered by: what of it wants to be looked at. */
export const flagsOf = (row: BoardRow): readonly string[] => [
  ...(row.plan.start === undefined ? ["no-start"] : []),
  ...(row.plan.withheld.length > 0 ? ["withheld"] : []),
  ...(row.plan.parts.some(({ missing }) => missing.length > 0) ? ["not-planned"] : []),
  ...(row.gaps.length > 0 ? ["level-alone"] : []),
  ...(row.since === "same" ? [] : ["to-send"]),
  ...(row.plan.debriefs?.length ? ["done"] : ["not-done"]),
  ...(row.plan.debriefs?.some(({ secondTry }) => secondTry.answer !== "leave-it") ? ["again"] : []),
];

/** What a coach should look at before sending a link: what is withheld, not planned, to be careful about. */
export const lookAt = (row: BoardRow, shared: readonly string[]): readonly string[] => [
  ...row.plan.withheld.map((entry) => `Withheld: ${titleOfLeftOut(entry)}`),
  ...(row.plan.coachWord ? sayCoachWord(row.plan.coachWord, row.plan.athlete.units) : []),
  ...row.plan.parts.flatMap(({ missing }) =>
    missing.map((why) => `Not planned: ${sayMissing(why, row.plan.athlete.units)}`),
  ),
  ...careOf(row)
    .filter((title) => !shared.includes(title))
    .map((title) => `Caution: ${title}`),
];
