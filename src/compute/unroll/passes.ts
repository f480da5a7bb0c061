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

/**
 * Whether a block has rounds: it is passed through more than once, and is no window whose number of rounds shows only
 * on the day.
 */
export const isRepeated = (block: BlockStep): boolean => {
  if (block.window?.kind === "lasts") return false;
  const count = passCount(block);
  return count === undefined || count > 1 || block.passes.kind === "ladder";
};

/**
 * Whether some step, at any depth, has rounds. Rounds without end inside an interval count for none: the interval is
 * the round then.
 */
export function holdsRepeated(steps: readonly Step[], inWindow = false): boolean {
  return steps.some((step) => {
    if (step.kind !== "block" || step.window?.kind === "lasts") return false;
    const isOpen = passCount(step) === undefined;
    return (isRepeated(step) && !(inWindow && isOpen)) || holdsRepeated(step.steps, inWindow);
  });
}

/**
 * Whether some step, at any depth, is a window of the clock: then the windows are the intervals, not the rounds
 * around them.
 */
export const holdsWindow = (steps: readonly Step[]): boolean =>
  steps.some((step) => step.kind === "block" && (step.window !== undefined || holdsWindow(step.steps)));

/** Whether a step is a stretch of its own rather than one line after another: it has rounds, or is a window. */
export function standsAlone(step: Step): boolean {
  if (step.kind !== "block") return false;
  return isRepeated(step) || step.window !== undefined || step.steps.some(standsAlone);
}
