import type { AttemptConstants } from "./attempt-constants.ts";
import {
  type Candidate,
  candidateLoads,
  joinCandidates,
  nearestTo,
  withoutSmallPlates,
} from "./candidate-loads.ts";
import { chooseLadder, type ChosenLadder, describedLadder } from "./choose-ladder.ts";
import type { LadderProblem, Slot } from "./ladder-problem.ts";
import type { LoadedInput } from "./lifting-input.ts";
import type { LiftingTask } from "./lifting-task.ts";
import { CLOSER, type PlannedLadder, withSteps } from "./plan-ladder.ts";
import { LIFTING_FIXED } from "./fixed-constants.ts";

/** Loads of a build that comes before a ladder: how far below the ladder's first each lies at most, as shares of it. */
const BUILD_STEP = LIFTING_FIXED.buildStepInRounds.value;
const LIGHTEST = LIFTING_FIXED.lightestInRounds.value;

/**
 * Every window has its lift: the ladder stands in the last of them, and where there are more windows than it has loads, an even
 * build towards it in those before. A ladder that has little way to go climbs by smaller steps first.
 *
 * @param slotsAfter all moments, where so many lifts of a build come first
 * @returns the task too, which then knows how the loads of the build stand on the bar
 */
export function ladderInEveryRound(
  input: Pick<LoadedInput, "iron" | "athlete">,
  task: LiftingTask,
  slotsAfter: (build: number) => readonly Slot[],
  constants: AttemptConstants,
): { readonly task: LiftingTask; readonly planned: PlannedLadder } {
  const all = slotsAfter(0).length;
  const wanted = Math.min(all, constants.mostAttempts);
  const chosenIn = ({ problem }: Pick<LiftingTask, "problem">, rows: number): ChosenLadder => {
    const slots = slotsAfter(all - rows).slice(all - rows);
    return chooseLadder({ ...problem, slots, openerChance: constants.openerChance });
  };
  const usual = chosenIn(task, wanted);
  const closer = usual.loads.length < wanted ? chosenIn(withSteps(task, CLOSER), wanted) : usual;
  const rows = Math.max(usual.loads.length, closer.loads.length);
  const again = chosenIn(closer.loads.length > usual.loads.length ? withSteps(task, CLOSER) : task, rows);
  const ladder = again.loads.length === rows ? again : usual;
  const light = all - ladder.loads.length;
  const problem: LadderProblem = {
    ...task.problem,
    slots: slotsAfter(light),
    openerChance: constants.openerChance,
  };
  const build = buildTo(ladder.loads[0], light, input, constants);
  const loads = build.map(({ kilograms }) => kilograms);
  const [first = ladder.loads[0], ...others] = [...loads, ...ladder.loads];
  const lower = light === 0 ? ladder.lower : [first];
  return {
    task: {
      ...task,
      iron: { ...task.iron, candidates: joinCandidates(task.iron.candidates, build) },
    },
    planned: { problem, chosen: describedLadder({ loads: [first, ...others], lower }, ladder.rule, problem) },
  };
}

/** So many loads that lead evenly to an opener, ascending; the same load again where plates allow no step. */
function buildTo(
  opener: number,
  count: number,
  { iron, athlete }: Pick<LoadedInput, "iron" | "athlete">,
  { handyStep }: AttemptConstants,
): readonly Candidate[] {
  if (count === 0) return [];
  const start = opener * Math.max(LIGHTEST, 1 - BUILD_STEP * count);
  const handy = candidateLoads(
    withoutSmallPlates(iron.loads, start, opener, handyStep),
    start,
    opener,
    athlete.units,
  );
  return Array.from({ length: count }, (_, at) => nearestTo(handy, start + ((opener - start) * at) / count));
}
