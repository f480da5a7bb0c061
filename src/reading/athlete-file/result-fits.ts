import type { Mass, Seconds } from "../../models/quantity.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import { sayTime } from "../quantities/time.ts";
import type { KnownScore } from "./context.ts";

/** What of a logged result is held against how its part is scored. */
type Logged = {
  readonly time?: Seconds | undefined;
  readonly reps?: number | undefined;
  readonly load?: Mass | undefined;
  readonly rounds?: unknown;
};
/** Where a result does not fit its part: which entry, why, and what would. */
type Misfit = {
  readonly entry: keyof Logged;
  readonly problem: string;
  readonly allowed: string;
  readonly remedy: string;
};

/** Entries of a result that can be the score of a part, by how it is scored. Who is stopped by a cap has reps, or rounds. */
const FITTING: Readonly<Record<ScoreKind, readonly (keyof Logged)[]>> = {
  time: ["time", "reps", "rounds"],
  reps: ["reps", "rounds"],
  "rounds-and-reps": ["reps", "rounds"],
  load: ["load"],
  "sum-of-loads": ["load"],
  "load-times-reps": ["load", "reps"],
  calories: ["reps"],
  metres: ["reps"],
  "lowest-interval": ["reps", "time"],
  "highest-interval": ["reps", "time"],
  "sum-of-lowest": ["reps", "time"],
  "slowest-interval": ["time", "reps"],
  "intervals-completed": ["reps", "rounds"],
};

/** The first entry of a result that cannot be a score of this part: reps of a lift for load, a time beyond the cap. */
export function misfitOf(logged: Logged, score: KnownScore | undefined): Misfit | undefined {
  if (score === undefined) return undefined;
  const fitting = FITTING[score.kind];
  const entry = (["time", "reps", "load", "rounds"] as const).find(
    (each) => logged[each] !== undefined && !fitting.includes(each),
  );
  const isTimed = fitting.includes("time");
  // A finish in less than the time of an amrap is the time of its first round at best, and reps beside a time are how far it went.
  if (entry !== undefined && !fitting.some((each) => logged[each] !== undefined)) {
    const allowed = fitting.map((each) => `\`${each}\``).join(", ");
    return {
      entry,
      problem: `this part is scored by ${score.kind.replaceAll("-", " ")}, and this is ${SAID[entry]}`,
      allowed,
      remedy: `Write what was done as ${fitting.map((each) => `\`${each}: ...\``).join(" or ")}.`,
    };
  }
  const { cap } = score;
  if (!isTimed || cap === undefined || logged.time === undefined || logged.time <= cap) return undefined;
  return {
    entry: "time",
    problem: `the cap is ${sayTime(cap)}, and nobody finishes after it`,
    allowed: "a time up to the cap, or the `reps` done by then",
    remedy: "Write the reps done by the cap as `reps: ...`, or correct the time.",
  };
}

const SAID: Readonly<Record<keyof Logged, string>> = {
  time: "a time",
  reps: "a number",
  load: "a load",
  rounds: "a number of rounds",
};
