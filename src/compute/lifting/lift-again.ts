import type { LiftAgain, WrittenLiftAgain } from "../../models/plan/lift-again.ts";
import { seconds } from "../../models/quantity.ts";
import { type AttemptConstants, attemptConstants } from "./attempt-constants.ts";
import type { AttemptWindow } from "./attempt-times.ts";
import { changeTimes } from "./change-times.ts";
import type { LiftIron } from "./lift-iron.ts";
import { strengthBy } from "./lift-today.ts";
import type { LadderTask, LiftingTask } from "./lifting-task.ts";
import { makableLoads } from "./makable-loads.ts";
import { lossBy, NO_LOSS } from "./work-loss.ts";

/** A lift as it can be planned again: the task of the build, made anew of its numbers. */
export type TaskAgain = {
  readonly task: LadderTask;
  readonly window: AttemptWindow;
  readonly constants: AttemptConstants;
};

/** How hard the work before a lift was, against what was planned. */
type WorkFelt = "easier" | "as-planned" | "harder";

/** A lift in the numbers from which it can be planned again. */
export function againOf(
  { problem, standard, iron, today }: LiftingTask,
  window: AttemptWindow,
  untilClock: boolean,
  overrides: Readonly<Record<string, number>> = {},
): WrittenLiftAgain {
  const { gym, loads } = iron;
  const { mass, countsAs } = loads.bar;
  return {
    best: today.best.kilograms,
    belief: { ...problem.belief },
    standard: { ...standard },
    loads: iron.candidates.map(({ kilograms, side }) => ({
      kilograms,
      side: { ...side },
      worth: problem.worth(kilograms),
      opens: problem.openers.includes(kilograms),
      usual: problem.loads.includes(kilograms),
    })),
    cuts: problem.cuts.map((cut) => ({ ...cut })),
    worthOfNone: problem.worth(undefined),
    limits: { ...problem.limits },
    steps: [...problem.steps],
    ...(problem.opener !== undefined && { opener: problem.opener }),
    ...(problem.jump !== undefined && { jump: problem.jump }),
    rising: problem.rising,
    ...(today.loss.law && { loss: { ...today.loss.law } }),
    pace: today.pace,
    window: { ...window },
    untilClock,
    byFeel: today.byFeel,
    bar: { mass, ...(countsAs !== undefined && { countsAs }) },
    ...(gym.collarsCount && gym.collar && { collar: gym.collar }),
    plates: gym.plates
      .filter(({ pairs }) => pairs >= 1)
      .map(({ plate, pairs }) => ({ plate, pairs: Math.floor(pairs) })),
    ...(gym.plateChange !== undefined && { plateChange: gym.plateChange }),
    loading: iron.loading,
    overrides: { ...overrides },
  };
}

/**
 * The task made anew of its numbers, so that planning it again is the same computation with the same result. What was felt of the
 * work before makes the loss it left greater or smaller.
 */
export function taskAgain(again: LiftAgain, felt: WorkFelt = "as-planned"): TaskAgain {
  const constants = attemptConstants(again.overrides);
  const iron = ironOf(again);
  const times = { easier: constants.lossWhenEasier, "as-planned": 1, harder: constants.lossWhenHarder }[felt];
  const loss = again.loss ? { ...again.loss, start: times * again.loss.start } : undefined;
  const law = { at: loss ? lossBy(loss) : NO_LOSS.at, overlap: 0 };
  const worths = new Map(again.loads.map(({ kilograms, worth }) => [kilograms, worth]));
  const { opener, jump } = again;
  return {
    window: again.window,
    constants,
    task: {
      iron,
      standard: again.standard,
      today: { loss: law, strength: strengthBy(law, again.pace, constants), best: { kilograms: again.best } },
      problem: {
        loads: again.loads.filter(({ usual }) => usual).map(({ kilograms }) => kilograms),
        cuts: again.cuts,
        cutLoss: constants.cutLoss,
        openers: again.loads.filter(({ opens }) => opens).map(({ kilograms }) => kilograms),
        belief: again.belief,
        limits: again.limits,
        steps: again.steps,
        ...(opener !== undefined && { opener }),
        ...(jump !== undefined && { jump }),
        change: changeTimes(iron, again.overrides),
        worth: (best) => (best === undefined ? again.worthOfNone : (worths.get(best) ?? again.worthOfNone)),
        rising: again.rising,
        lastTry: constants.lastTry,
        lowestAfterMiss: constants.lowestAfterMiss,
        triesForFirst: constants.triesForFirst,
        gainWorthIt: constants.gainWorthIt,
        gainOfGrowingJumps: constants.gainOfGrowingJumps,
      },
    },
  };
}

function ironOf({ bar, collar, plates, plateChange, loads, loading }: LiftAgain): LiftIron {
  const gym = {
    plates,
    collarsCount: collar !== undefined,
    ...(collar !== undefined && { collar }),
    ...(plateChange !== undefined && { plateChange: seconds(plateChange) }),
  };
  const { countsAs, mass } = bar;
  const own = { id: "bar", for: "everyone", mass, ...(countsAs !== undefined && { countsAs }) } as const;
  return {
    gym,
    loads: makableLoads(gym, own),
    candidates: loads.map(({ kilograms, side }) => ({ kilograms, side })),
    loading,
  };
}
