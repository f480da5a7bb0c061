import type {
  Course,
  CourseAmount,
  CourseEffort,
  CourseItem,
  CourseLoad,
  CourseRest,
} from "../../src/models/course.ts";
import type { Movement } from "../../src/models/movement.ts";
import { kilograms, seconds } from "../../src/models/quantity.ts";

/** A line of a test course: a movement with an amount and perhaps a load, or a rest. */
export type Line =
  | {
      readonly move: Movement;
      readonly amount: number | CourseAmount;
      readonly kg?: number;
      readonly unit?: CourseEffort["unit"];
      readonly more?: Partial<CourseEffort>;
    }
  | { readonly rest: CourseRest["rest"]; readonly counted?: boolean };

const loadOf = (kg: number): CourseLoad => ({
  written: { value: kg, unit: "kg" },
  pieces: 1,
  total: kilograms(kg),
  athletesChoice: false,
});

/** Rounds of lines as a course; every round is a pass. `more` sets what concerns the whole course. */
export function makeCourse(rounds: readonly (readonly Line[])[], more: Partial<Course> = {}): Course {
  const items: CourseItem[] = [];
  let line = 0;
  rounds.forEach((lines, round) => {
    const pass = {
      round: round + 1,
      of: rounds.length,
      roundOfSection: round + 1,
      roundsOfSection: rounds.length,
    };
    for (const part of lines) {
      const index = items.length;
      if ("rest" in part) {
        items.push({ kind: "rest", index, rest: part.rest, counted: part.counted ?? true, pass });
        continue;
      }
      line += 1;
      const amount: CourseAmount =
        typeof part.amount === "number" ? { kind: "counted", amount: part.amount } : part.amount;
      const unit = part.unit ?? part.move.counts[0] ?? "reps";
      items.push({
        kind: "effort",
        index,
        movement: part.move,
        alternatives: [],
        amount,
        unit,
        ...(part.kg === undefined ? {} : { load: loadOf(part.kg) }),
        scores: amount.kind === "counted" ? amount.amount : 1,
        unbroken: false,
        tieBreak: false,
        joinedToNext: false,
        pass,
        line,
        ...part.more,
      });
    }
  });
  const total = items.reduce((sum, item) => sum + (item.kind === "effort" ? item.scores : 0), 0);
  return { part: "workout", items, endless: false, totalScore: total, ...more };
}

/** As many rounds as possible in a time: the round repeated further than anyone gets. */
export function makeAmrap(round: readonly Line[], time: number, repeats = 60): Course {
  const { totalScore, ...course } = makeCourse(Array.from({ length: repeats }, () => round));
  const perRound = (totalScore ?? 0) / repeats;
  return { ...course, endless: true, ends: seconds(time), perRound };
}
