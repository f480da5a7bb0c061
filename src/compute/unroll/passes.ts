import type { BlockStep, Step } from "../../models/workout.ts";

/** The number of passes of a block, and the ladder's number in each; undefined count where they have no end. */
export function passCount({ passes }: BlockStep): number | undefined {
  switch (passes.kind) {
    case "once":
      return 1;
    case "rounds":
      return passes.count;
    case "ladder":
      return passes.amounts.length;
    case "open-ladder":
    case "open-rounds":
      return undefined;
  }
}

/** The ladder's number in a pass counted from 0; undefined where the block is no ladder. */
export function ladderNumber({ passes }: BlockStep, pass: number): number | undefined {
  if (passes.kind === "ladder") return passes.amounts[pass];
  return passes.kind === "open-ladder" ? passes.start + passes.step * pass : undefined;
}

/** Whether a block is passed through more than once. */
export const isRepeated = (block: BlockStep): boolean => {
  const count = passCount(block);
  return count === undefined || count > 1 || block.passes.kind === "ladder";
};

/** Whether some step, at any depth, is passed through more than once. */
export const holdsRepeated = (steps: readonly Step[]): boolean =>
  steps.some((step) => step.kind === "block" && (isRepeated(step) || holdsRepeated(step.steps)));
