import type { Plan } from "../models/plan/plan.ts";
import { sayCount, sayList } from "./number.ts";
import { sayShare } from "./share.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
export type Difficulty = NonNullable<Pacing["difficulty"]>;

/** A change that would be said as nought per cent is none. */
const isFelt = (share: number): boolean => Math.abs(share) >= 0.005;

/** What was seen of others, counted: `1 early performance and 12 results of others`. */
const saySeen = ({ early, results, scores }: Difficulty): string =>
  sayList([
    ...(early > 0 ? [sayCount(early, "early performance", "early performances")] : []),
    ...(results > 0 ? [sayCount(results, "result of another athlete here", "results of others here")] : []),
    ...(scores > 0 ? [sayCount(scores, "score of a field", "scores of a field")] : []),
  ]);

/** How far what was seen of others moved one athlete's plan; then the movements that stand out. */
export function sayMoved(difficulty: Difficulty): string {
  const { share, moved = share } = difficulty;
  const effect = isFelt(moved)
    ? `this plan is ${sayShare(Math.abs(moved))} ${moved > 0 ? "slower" : "faster"} than your numbers alone say`
    : "this plan is as your own numbers make it";
  return [`From ${saySeen(difficulty)}: ${effect}.`, ...sayMovements(difficulty)].join(" ");
}

/** The movements that take more or less time than such athletes' numbers say; nothing where none stands out. */
export function sayMovements({ movements }: Difficulty): readonly string[] {
  const ones = movements.toSorted((a, b) => Math.abs(b.share) - Math.abs(a.share)).slice(0, 3);
  if (ones.length === 0) return [];
  const said = ones.map(
    ({ name, share }) => `${name} ${sayShare(Math.abs(share))} ${share > 0 ? "longer" : "shorter"}`,
  );
  return [`Beside that, each rep takes: ${said.join(", ")}.`];
}

/** What it means for everybody, on the page of the gym. */
export function sayForEverybody(difficulty: Difficulty): string {
  const { share } = difficulty;
  if (!isFelt(share)) {
    return "For you: it takes as long as an athlete's own numbers say, no more and no less.";
  }
  return `For you: reckon with ${sayShare(Math.abs(share))} ${share > 0 ? "more" : "less"} time than your own numbers say; the times on this page do so already.`;
}
