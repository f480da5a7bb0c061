import type { Plan } from "../models/plan/plan.ts";

/** One athlete on the coach's board. */
export type BoardRow = {
  readonly plan: Plan;
  /** Link to the brief, with its key. */
  readonly link: string;
  /** What had to be taken from the level, because nothing is known of the athlete. */
  readonly gaps: readonly string[];
};

/** An athlete or a workout of which nothing could be made, and what is left of them from before. */
export type NotMade = {
  readonly name: string;
  readonly file: string;
  /** What is wrong, a sentence each. */
  readonly why: readonly string[];
  readonly kept: readonly { readonly title: string; readonly link: string; readonly made: string }[];
};

export type BoardWorkout = { readonly title: string; readonly rows: readonly BoardRow[] };

const careOf = ({ plan }: BoardRow): readonly string[] =>
  plan.cautions.filter(({ weight }) => weight === "care").map(({ title }) => title);

/** Cautions that every athlete of a workout has; they are said once. */
export function sharedCare(rows: readonly BoardRow[]): readonly string[] {
  const [first, ...others] = rows;
  if (!first || others.length === 0) return [];
  return careOf(first).filter((title) => others.every((row) => careOf(row).includes(title)));
}

/** What a coach should look at before sending a link: what is withheld, not planned, to be careful about. */
export const lookAt = (row: BoardRow, shared: readonly string[]): readonly string[] => [
  ...row.plan.withheld.map(({ title }) => `Withheld: ${title}`),
  ...row.plan.parts.flatMap(({ missing }) => missing.map((why) => `Not planned: ${why}`)),
  ...careOf(row)
    .filter((title) => !shared.includes(title))
    .map((title) => `Caution: ${title}`),
];
