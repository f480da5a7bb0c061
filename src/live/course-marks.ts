import type { DayPart } from "./day-plan.ts";

export type DayPacing = NonNullable<DayPart["pacing"]>;
export type DayRow = DayPacing["rows"][number];

/** A place in the work at whose end somebody can tap, and look at the clock. Clock of the part, seconds. */
export type CourseMark = {
  readonly row: number;
  readonly round: number;
  /** What a reader calls it: a round by its label, else the line of work. */
  readonly label: string;
  readonly kind: "round" | "line";
  readonly planned: number;
  readonly scoreDone: number;
};

/**
 * The marks of a paced part in order: the ends of rounds where there is more than one, else the ends of the lines. A round the
 * plan does not get through has none.
 */
export function marksOf({ rows, rounds, ending }: DayPacing): readonly CourseMark[] {
  const work = rows.filter(({ kind }) => kind === "work");
  if (rounds.length < 2) return work.filter(isWhole).map((row) => markOf(row, "line", row.name));
  const whole = work.filter(({ round }) => round === rounds[0]?.round).length;
  return rounds.flatMap(({ round, label }, at) => {
    const own = work.filter((row) => row.round === round);
    const last = own.at(-1);
    const cutShort = at === rounds.length - 1 && ending !== "finishes" && own.length < whole;
    return last === undefined || cutShort || !own.every(isWhole) ? [] : [markOf(last, "round", label)];
  });
}

const isWhole = ({ prescribed }: DayRow): boolean => prescribed === undefined;

const markOf = (
  { index, round, end, scoreDone }: DayRow,
  kind: CourseMark["kind"],
  label: string,
): CourseMark => ({ row: index, round, label, kind, planned: end, scoreDone });
