import type { Workout } from "../../models/workout.ts";
import { atEnd, cursorAt, skipOneOf } from "./cursor.ts";
import { tellText, type Faults } from "./notation-fault.ts";
import { takeSeries } from "./number-series.ts";
import { tokensOf, type TextSource } from "./token.ts";

type Objective = Pick<Workout, "objective" | "objectiveLoad">;

/**
 * Reads what the lifting aims at: `highest lift` (which holds when nothing is written), `best place`, `chance of 100
 * kg`.
 */
export function readObjective(source: TextSource | undefined, faults: Faults): Objective {
  const highest: Objective = { objective: "expected-lift" };
  if (source === undefined) return highest;
  const cursor = cursorAt(tokensOf(source));
  if (skipOneOf(cursor, ["highest lift", "expected lift"]) !== undefined && atEnd(cursor)) return highest;
  if (skipOneOf(cursor, ["best place", "expected place"]) !== undefined && atEnd(cursor))
    return { objective: "expected-place" };
  if (skipOneOf(cursor, ["chance of", "chance of lifting"]) !== undefined) {
    const [only] = takeSeries(cursor, faults)?.entries ?? [];
    if (only?.unit?.kind === "mass" && atEnd(cursor)) {
      return { objective: "chance-of-load", objectiveLoad: { value: only.value, unit: only.unit.unit } };
    }
  }
  tellText(faults, source, {
    problem: "this is nothing the lifting can aim at",
    allowed: "`highest lift`, `best place`, `chance of 100 kg`",
    remedy: "Write one of these, or leave the entry out for the highest lift.",
  });
  return highest;
}
