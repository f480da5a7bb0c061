import type { Field } from "../../models/field.ts";
import { LEVELS, type Level } from "../../models/vocabulary.ts";
import type { DifficultyConstants } from "../early-splits/difficulty-constants.ts";
import type { SeenPerformance } from "../early-splits/seen-performance.ts";
import { scoreAtPlace } from "../places/score-at-place.ts";
import { type Expected, heldAgainst } from "./held-against.ts";

/**
 * A field of scores of a part held against the plans of levels, each at its place. It is one thing seen, however many scores it has:
 * who is in it is common to all of them. Levels whose place is at the edge of a small field are left out.
 *
 * @param expected the part as planned for somebody of a level
 */
export function seenField(
  part: string,
  field: Field,
  expected: (level: Level) => Expected | undefined,
  sharedDoubt: number,
  constants: DifficultyConstants,
): readonly SeenPerformance[] {
  const scores = [...field.finished, ...field.capped].reduce((sum, { count }) => sum + count, 0);
  if (field.kind === "load" || scores < constants.fieldLeast) return [];
  const places = {
    new: constants.placeOfNew,
    regular: constants.placeOfRegular,
    competitor: constants.placeOfCompetitor,
    elite: constants.placeOfElite,
  };
  const held = LEVELS.flatMap((level) => {
    const place = places[level];
    if (scores * Math.min(place, 1 - place) < constants.fieldBeyond) return [];
    const score = scoreAtPlace(field, place);
    const plan = expected(level);
    if (score === undefined || plan === undefined || !counts(field, plan)) return [];
    return heldAgainst(plan, { clocks: [], ...score }, sharedDoubt, constants) ?? [];
  });
  const [first] = held;
  if (first === undefined) return [];
  const value = held.reduce((sum, { slower }) => sum + slower.value, 0) / held.length;
  const error = Math.hypot(constants.fieldDoubt, constants.fieldDoubtOfOne / Math.sqrt(scores));
  return [{ part, source: "field", slower: { value, error }, movements: [], shares: first.shares, scores }];
}

/** Whether a field counts what the part is scored in. */
function counts({ kind }: Field, { plan }: Expected): boolean {
  if (kind === "reps") return plan.score === "reps" || plan.score === "rounds-and-reps";
  return kind === plan.score;
}
