import type { Plan } from "../models/plan/plan.ts";

/** One line of the self-check: what to look at, and the answers from good to bad. */
type CheckLine = {
  readonly question: string;
  readonly good: string;
  readonly middling?: string;
  readonly bad: string;
};

/**
 * The self-check, filled in one to two hours after the work: one answer a line. By how the athlete feels, as no measure was
 * found that tells more on the same day.
 */
export const SELF_CHECK: readonly CheckLine[] = [
  { question: "Sharp or new pain", good: "none", bad: "somewhere" },
  { question: "Soreness", good: "hardly any", middling: "I notice it", bad: "stairs are hard work" },
  { question: "Breath and pulse", good: "calm", middling: "a bit quick", bad: "still racing, or a cough" },
  { question: "Food", good: "eaten, hungry again", middling: "not much yet", bad: "I feel sick" },
  { question: "Wish to move", good: "yes", middling: "neither way", bad: "none" },
];

type DayKind = NonNullable<Plan["after"]>["day"]["kind"];

const WHEN_GOOD: Readonly<Record<DayKind, string>> = {
  session: "all on the left: the session",
  light: "all on the left: as written",
  between: "all on the left: as written",
  rest: "all on the left: rest, with the walk if you like",
};

/** How the answers of the self-check add up, from the good end to the bad. */
export const sayCheckSum = (kind: DayKind): readonly string[] => [
  WHEN_GOOD[kind],
  ...(kind === "session"
    ? ["any in the middle: the shorter versions, and nothing marked “only if your check is good”"]
    : []),
  "any on the right: rest; with sharp or new pain, have it looked at by somebody licensed",
];
