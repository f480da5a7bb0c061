import type { Course, CourseEffort } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import { type Seconds, seconds } from "../../models/quantity.ts";

export type LiftPiece = { readonly movement: Movement; readonly reps: number };

/** One thing lifted for load: a movement for one or more reps, or a complex done without putting the bar down. */
export type LiftLine = {
  readonly pieces: readonly [LiftPiece, ...LiftPiece[]];
  /** Attempts the rules allow at it. */
  readonly attempts?: number;
};

/** The lines of a part that are lifted for load, in order. */
export function liftsOf(course: Course): readonly LiftLine[] {
  return linesOf(
    course.items.filter((item) => item.kind === "effort" && item.lift !== undefined) as CourseEffort[],
  );
}

/** A lift done once in every round, at a load of the athlete's choice, and the clock at which each round begins. */
export type RoundLifts = { readonly line: LiftLine; readonly starts: readonly Seconds[] };

/**
 * A lift at the athlete's choice of load in rounds that begin on the clock. Undefined where there is none, where rounds
 * differ in what is lifted, or where the clock does not say when they begin.
 */
export function roundLiftsOf(course: Course): RoundLifts | undefined {
  const starts: Seconds[] = [];
  const chosen: CourseEffort[][] = [];
  let clock = seconds(0);
  let round: number | undefined;
  for (const item of course.items) {
    if (item.kind === "rest") {
      if (item.rest.kind === "until") clock = item.rest.clock;
      continue;
    }
    if (!item.load?.athletesChoice || item.lift) continue;
    if (item.pass.round !== round) {
      round = item.pass.round;
      starts.push(clock);
      chosen.push([]);
    }
    chosen.at(-1)?.push(item);
  }
  const lines = chosen.map((efforts) => linesOf(efforts.map((effort) => ({ ...effort, line: 1 }))));
  const [first] = lines[0] ?? [];
  const same = lines.every(
    ([line]) => line !== undefined && first !== undefined && sayLine(line) === sayLine(first),
  );
  const onTheClock = starts.every((start, at) => at === 0 || start > (starts[at - 1] ?? start));
  return first && same && onTheClock ? { line: first, starts } : undefined;
}

function linesOf(efforts: readonly CourseEffort[]): readonly LiftLine[] {
  const byLine = new Map<number, CourseEffort[]>();
  for (const effort of efforts) byLine.set(effort.line, [...(byLine.get(effort.line) ?? []), effort]);
  return [...byLine.values()].flatMap((line) => {
    const [first, ...rest] = line.map((effort) => ({
      movement: effort.movement,
      reps: effort.amount.kind === "counted" ? effort.amount.amount : 1,
    }));
    const attempts = line[0]?.lift?.attempts;
    return first ? [{ pieces: [first, ...rest] as const, ...(attempts !== undefined && { attempts }) }] : [];
  });
}

/** The lift as read aloud: `clean and jerk`, or `5 hang cleans + 3 front squats + 1 jerk`. */
export function sayLine({ pieces }: LiftLine): string {
  const [first, ...rest] = pieces;
  if (rest.length === 0) return first.movement.name;
  const single = pieces.every(({ reps }) => reps === 1);
  return pieces
    .map(({ movement, reps }) =>
      single ? movement.name : `${reps} ${reps === 1 ? movement.name : movement.plural}`,
    )
    .join(" + ");
}

/** Reps of one attempt; a complex counts as one. */
export const repsOf = ({ pieces }: LiftLine): number => (pieces.length === 1 ? pieces[0].reps : 1);

/** Reps of one attempt one by one, over all movements of a complex. */
export const allRepsOf = ({ pieces }: LiftLine): number => pieces.reduce((sum, { reps }) => sum + reps, 0);
