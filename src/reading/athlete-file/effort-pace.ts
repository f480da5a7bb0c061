import type { Movement } from "../../models/movement.ts";
import { SECONDS_PER_CALORIE, SECONDS_PER_REP, SPEEDS } from "../quantities/plausible.ts";
import { ask, reject, type NotTaken } from "../quantities/reading.ts";
import { fastestTime } from "../quantities/fastest-times.ts";
import { sayTime } from "../quantities/time.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";

const ALLOWED = "a time in which that amount can be done";
const MINUTE = 60;

/**
 * Asks about, or refuses, an amount that nobody does in such a time: minutes typed as hours, seconds as minutes. Ease is the factor by which
 * a time may lie outside.
 */
export function doubtPace(
  movement: Movement,
  amount: { readonly amount: number; readonly unit: AmountUnit; readonly written: string },
  time: number,
  { say, ease }: { readonly say: (time: string) => string; readonly ease: number },
): NotTaken | undefined {
  const wrong = (seconds: number): "short" | "long" | undefined => wrongPace(movement, amount, seconds, ease);
  const far = wrong(time);
  if (far === undefined) return undefined;
  const problem = `${sayTime(time)} is far too ${far} for ${amount.written} ${movement.name}`;
  const proposals = [time / MINUTE, time * MINUTE].filter((other) => wrong(other) === undefined);
  return proposals.length > 0
    ? ask(
        problem,
        proposals.map((seconds) => say(sayTime(seconds))),
        ALLOWED,
      )
    : reject(problem, ALLOWED, "Look at amount, unit and time, and write what was done.");
}

/** Whether the time is too short or too long for anybody; nothing where it is neither. */
export function wrongPace(
  movement: Movement,
  { amount, unit }: { readonly amount: number; readonly unit: AmountUnit },
  time: number,
  ease = 1,
): "short" | "long" | undefined {
  const [shortest, longest] = limits(movement, amount, unit);
  if (time < shortest / ease) return "short";
  return time > longest * ease ? "long" : undefined;
}

/** The shortest and the longest time anybody takes, seconds. */
function limits(movement: Movement, amount: number, unit: AmountUnit): readonly [number, number] {
  switch (unit) {
    case "metres": {
      const kind = movement.erg ?? (movement.kind === "run" ? "run" : "other");
      const [slow, fast] = SPEEDS[kind];
      return [fastestTime(kind, amount) ?? amount / fast, amount / slow];
    }
    case "calories":
      return [amount * SECONDS_PER_CALORIE[0], amount * SECONDS_PER_CALORIE[1]];
    case "reps":
      return [amount * SECONDS_PER_REP[0], amount * SECONDS_PER_REP[1]];
    case "seconds":
      return [0, Infinity];
  }
}
