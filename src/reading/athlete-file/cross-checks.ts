import type * as z from "zod";
import type { Limit, LiftResult } from "../../models/athlete.ts";
import { inKilograms, type Kilograms } from "../../models/quantity.ts";
import { sayMass } from "../quantities/mass.ts";
import { mostPerBodyMass } from "../quantities/plausible.ts";
import { sayNumber } from "../quantities/written-number.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { spaced } from "../fields/word-field.ts";
import {
  CONDITION_WORDS,
  JOINT_WORDS,
  plainWords,
  STRESS_WORDS,
  tellsOfHarm,
  wordsIn,
} from "./limit-words.ts";
import { proposeLimit } from "./limit-entries.ts";

/** Asks when a lift and the body mass cannot both be right: one of the two has another unit, or a slip. */
export function checkMassAgainstLifts(
  bodyMass: Kilograms | undefined,
  lifts: readonly LiftResult[],
  nameOf: (movement: string) => string,
  ctx: z.RefinementCtx,
): void {
  if (bodyMass === undefined) return;
  for (const lift of lifts) {
    const name = nameOf(lift.movement);
    const ratio = inKilograms(lift.load) / bodyMass;
    if (lift.added === true || ratio <= mostPerBodyMass(name)) continue;
    tellRefusal(ctx, {
      path: ["body mass"],
      severity: "question",
      problem: `a ${name} of ${sayMass(lift.load)} would be ${sayNumber(Math.round(ratio * 10) / 10)} times the body mass, more than anybody has lifted`,
      remedy: "Look at the units of body mass and lift, and correct the one that is wrong.",
    });
    return;
  }
}

/**
 * Asks when the free note tells of harm or of something not to be done while no limit says what to keep away from. The
 * note is kept and shown as it is; `limits: none` says that nothing limits.
 */
export function checkNoteAgainstLimits(
  note: string | undefined,
  limits: readonly Limit[] | undefined,
  ctx: z.RefinementCtx,
): void {
  if (note === undefined || !tellsOfHarm(plainWords(note))) return;
  const joints = wordsIn(JOINT_WORDS, note);
  const stresses = wordsIn(STRESS_WORDS, note);
  const conditions = wordsIn(CONDITION_WORDS, note);
  if (joints.length + stresses.length + conditions.length === 0) return;
  // Somebody has thought about it: nothing limits, or some limit already speaks of a thing the note names.
  if (limits?.length === 0) return;
  const covered = (limits ?? []).some(
    (limit) =>
      (limit.joint !== undefined && joints.includes(limit.joint)) ||
      (limit.condition !== undefined && conditions.includes(limit.condition)) ||
      limit.avoid.some((stress) => stresses.includes(stress)),
  );
  if (covered) return;
  const named = [...joints, ...stresses, ...conditions].map(spaced).join(", ");
  tellRefusal(ctx, {
    path: ["note"],
    severity: "question",
    problem: `the note speaks of something that may limit training (${named}), but a note changes no plan`,
    allowed: "an entry under `limits` that says what to keep away from, or `limits: none`",
    remedy: `Add \`limits: [${proposeLimit(note, "")}]\`, corrected as needed, or \`limits: none\` if nothing is to be left out.`,
  });
}

/** Refuses a movement that is said to be impossible and done at the same time. */
export function checkCannot(
  cannot: readonly string[],
  done: readonly { readonly movement: string; readonly where: string }[],
  nameOf: (movement: string) => string,
  ctx: z.RefinementCtx,
): void {
  for (const id of new Set(cannot)) {
    const other = done.find(({ movement }) => movement === id);
    if (!other) continue;
    tellRefusal(ctx, {
      path: [other.where],
      found: nameOf(id),
      problem: `the file says that the athlete cannot do this movement, and gives a result of it under \`${other.where}\``,
      remedy: "Take it out of `cannot`, or delete the result.",
    });
  }
}
