import { singlesOf } from "../../models/condition.ts";
import type { Athlete } from "../../models/athlete.ts";
import type { Bar, Gym } from "../../models/gym.ts";
import type { Library, WarmUpStage } from "../../models/library.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Withholding } from "../cautions/withholding.ts";
import type { PlannedPart } from "../conditions/situation-of.ts";
import { workRowsOf, yesOrNo } from "../conditions/situation-of.ts";
import { type Situation, withMore } from "../conditions/situation.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { buildGoals, type BuildGoal } from "./build-goals.ts";
import { WARM_UP_CONSTANTS, type WarmUpNumbers } from "./constants.ts";
import { fitTime, type Fitted, type Stretch } from "./fit-time.ts";
import { type DroppedBlock, pickBlocks, type PickedBlock } from "./pick-blocks.ts";
import { layOut, orderSteps, type WarmUpStep } from "./lay-out.ts";
import { gapsBetween, planGaps } from "./plan-gaps.ts";
import { type BuildPlan, FEWEST_SETS, lastsOf, planBuild, setsWanted } from "./plan-build.ts";
import { primerWords, rehearsedEfforts } from "./primer-words.ts";
import { minutesOfDay, wallClock } from "./wall-clock.ts";
import { WARM_UP_FIXED } from "./fixed-constants.ts";

export type WarmUp = NonNullable<Plan["warmUp"]>;

export type WarmUpInput = {
  readonly athlete: Athlete;
  readonly library: Library;
  readonly gym: Gym;
  readonly bar: Bar;
  readonly situation: Situation;
  /** The movements of the workout in order, each with the situation narrowed to it. */
  readonly movements: readonly AtMovement[];
  readonly parts: readonly PlannedPart[];
  readonly withholding: Pick<Withholding, "stresses" | "noMaxLift">;
  readonly best: (
    movement: string,
  ) =>
    | { readonly kilograms: number; readonly basis: "tested" | "estimated" | "related" | "level" | "assumed" }
    | undefined;
  /** Wall time of the start, where known: minutes after midnight, `18:40` or `2026-11-26T18:40`. */
  readonly start?: string | number;
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * Plans a warm-up counted back from the start.
 *
 * Blocks of the library whose conditions hold for this athlete and workout, stage by stage; a build to 70 to 80 % of the
 * best lift (or to the heaviest load of the workout) with plates and rests; primers after the light half of the build;
 * a rehearsal; a last rest inside its bounds. When time is short the least needed goes, the build loses sets from its
 * ladder, and what went is told. All times are whole minutes, so that every step has a wall clock.
 */
export function planWarmUp(input: WarmUpInput): WarmUp {
  const numbers = withOverrides(WARM_UP_CONSTANTS, input.overrides);
  const time = timeAvailable(input, numbers);
  const age = input.situation.numbers.age;
  // What comes long after the first work is built in the gap before it.
  const cooledBefore = gapsBetween(input.parts, numbers).map(({ part }) => part);
  const goals = buildGoals(
    {
      athlete: input.athlete,
      movements: input.library.movements,
      parts: input.parts.filter((part) => !cooledBefore.includes(part)),
      best: input.best,
      noMaxLift: input.withholding.noMaxLift,
      ...(age !== undefined && { age }),
    },
    numbers,
  );
  const { picked: all, dropped } = pick(input, goals, time, numbers);
  const picked = all.filter((each) => each.block.stage !== "ready");
  const efforts = rehearsedEfforts(input.parts, numbers);
  const build = buildInTime(input, goals, picked, time, numbers);
  const fitted = fitTime(stretchesOf(picked, build, numbers), time);
  const kept = picked.filter((each) => fitted.times.has(each.id));
  const joints = input.situation.facts["limit-joint"] ?? [];
  const steps = layOut(orderSteps(kept, fitted.times, build), input.start).map((step) => ({
    ...step,
    ...(step.say.includes("{efforts}") && { efforts: [...efforts] }),
    ...(step.say.includes("{joints}") && { joints: [...joints] }),
  }));
  const moved = {
    buildSets: steps.flatMap((step) => step.sets).length,
    hasRehearsal: kept.some((each) => each.block.stage === "rehearsal"),
    isHot: kept.some((each) => each.block.stage === "rest" && speaksOfHeat(each.block)),
  };
  return {
    lasts: steps[0]?.before ?? 0,
    ...(input.start !== undefined && { start: wallClock(minutesOfDay(input.start)) }),
    steps,
    before: all
      .filter((each) => each.block.stage === "ready")
      .map(({ id, say, block }) => ({ id, title: block.title, say })),
    gaps: planGaps(input, numbers),
    dropped: [...dropped, ...noTime(picked, fitted)],
    ...(moved.buildSets > 0 && { build: summaryOf(steps, goals) }),
    moved,
  };
}

/** Whether a block is there for the heat. */
const speaksOfHeat = ({ when }: PickedBlock["block"]): boolean =>
  when.flatMap(singlesOf).some((single) => single.kind === "number" && single.metric === "wbgt");

/** Seconds there are, in whole minutes: the athlete's own, else the usual, longer for older athletes, shorter when a start was not long ago. */
function timeAvailable({ athlete, situation }: WarmUpInput, numbers: WarmUpNumbers): number {
  const since = situation.numbers["hours-since-start"];
  const isWarm = since !== undefined && since < numbers.stillWarm;
  const isOlder = (situation.numbers.age ?? 0) >= numbers.longerFromAge;
  const usual = numbers.usualLength + (isOlder ? numbers.longerBy : 0);
  const time = athlete.warmUpTime ?? (isWarm ? numbers.lengthAfterAStart : usual);
  return Math.floor(time / 60) * 60;
}

function pick(
  input: WarmUpInput,
  goals: readonly BuildGoal[],
  time: number,
  numbers: WarmUpNumbers,
): ReturnType<typeof pickBlocks> {
  const { stresses } = input.withholding;
  const [goal] = goals;
  const served: Partial<Situation> = {
    numbers: goal === undefined ? {} : { "load-share": goal.share },
    facts: { "has-lift": [yesOrNo(goal?.serves === "lift")] },
  };
  const hasEfforts = rehearsedEfforts(input.parts, numbers).length > 0;
  const built = goals.map((goal) => goal.movement);
  return pickBlocks({
    blocks: input.library.warmUps.filter((block) => block.stage !== "build" || goals.length > 0),
    situation: withMore(input.situation, served),
    movements: input.movements.filter((at) => !built.includes(at.movement.id)),
    avoids: (block) => block.stresses.some((stress) => stresses.has(stress)),
    longestStill: goals.length > 0 ? numbers.longestStillBeforeLift : Infinity,
    forMovement: (say, at) => primerWords(say, at, numbers),
    forWorkout: (say) => hasEfforts || !say.includes("{efforts}"),
    most: mostOf(time >= numbers.roomyFrom),
  });
}

const mostOf = (isRoomy: boolean): Readonly<Record<WarmUpStage, number>> => {
  const { roomy, short } = WARM_UP_FIXED.blocksAtMost.value;
  return isRoomy ? roomy : short;
};

/** Blocks up to this priority are not given up for more sets of a build. */
const NEEDED = 2;

/** The longest build, up to what is wanted, that leaves what is needed its shortest time and a little for the rest. */
function buildInTime(
  input: WarmUpInput,
  goals: readonly BuildGoal[],
  picked: readonly PickedBlock[],
  time: number,
  numbers: WarmUpNumbers,
): BuildPlan {
  const [first] = goals;
  if (first === undefined || !picked.some((each) => each.block.stage === "build")) return [];
  const { gym, bar, situation } = input;
  const place = {
    gym,
    bar,
    sharing: situation.facts.sharing?.includes("yes") === true,
    prescribed: workRowsOf(input.parts).flatMap(({ load }) => load ?? []),
  };
  const needed = picked
    .filter((each) => each.block.stage !== "build" && each.block.priority <= NEEDED)
    .reduce((sum, each) => sum + each.block.time.shortest, 0);
  for (let sets = setsWanted(first, bar, gym, numbers); sets > FEWEST_SETS; sets--) {
    const build = planBuild(goals, sets, place, numbers);
    if (lastsOf(build) + needed + numbers.roomBesideBuild <= time) return build;
  }
  return planBuild(goals.slice(0, 1), FEWEST_SETS, place, numbers);
}

/** What wants time. The rest always stays; a build that found sets takes exactly its time. */
function stretchesOf(
  picked: readonly PickedBlock[],
  build: BuildPlan,
  numbers: WarmUpNumbers,
): readonly Stretch[] {
  return picked.flatMap(({ id, block }): readonly Stretch[] => {
    const { shortest, usual } = block.time;
    if (block.stage === "build") {
      const lasts = lastsOf(build);
      return lasts === 0 ? [] : [{ id, shortest: lasts, usual: lasts, priority: 1 }];
    }
    if (block.stage === "rest") {
      const bound = (seconds: number): number =>
        Math.min(numbers.lastRestLongest, Math.max(numbers.lastRestShortest, seconds));
      return [{ id, shortest: bound(shortest), usual: bound(usual), priority: 0 }];
    }
    return [{ id, shortest, usual, priority: block.priority }];
  });
}

/** What found no room, each title once. */
function noTime(picked: readonly PickedBlock[], { dropped }: Fitted): readonly DroppedBlock[] {
  const titles = picked.filter((each) => dropped.includes(each.id)).map((each) => each.block.title);
  return [...new Set(titles)].map((title) => ({ title, why: "no-time" }));
}

function summaryOf(steps: readonly WarmUpStep[], goals: readonly BuildGoal[]): NonNullable<WarmUp["build"]> {
  const sets = steps.flatMap((step) => step.sets);
  const [goal] = goals;
  if (goal === undefined) throw new RangeError("a build has something it builds to");
  const tops = sets.filter((set) => set.movement === goal.movement).map((set) => set.load.shareOfBest ?? 0);
  return {
    movement: goal.movement,
    name: goal.name,
    shareOfBest: Math.max(...tops),
    ...(goal.isGuess && { guessed: true as const }),
    why: { ...goal.why, reasons: [...goal.why.reasons] },
    reps: sets.reduce((sum, set) => sum + set.reps, 0),
    loadTimesReps: sets.reduce((sum, set) => sum + set.load.kilograms * set.reps, 0),
  };
}
