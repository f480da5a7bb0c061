import type { Bar, Gym } from "../../models/gym.ts";
import { inKilograms, type Mass } from "../../models/quantity.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import type { PlannedRow } from "../conditions/situation-of.ts";
import { arrangePlates } from "../lifting/arrange-plates.ts";
import { makableLoads } from "../lifting/makable-loads.ts";
import { changePlates, nearestOf } from "../lifting/plates.ts";
import { easyLoad, withoutSmall } from "./easy-load.ts";
import type { BuildGoal } from "./build-goals.ts";
import { BUILD_LADDERS, type Rung, type WarmUpNumbers } from "./constants.ts";
import { WARM_UP_FIXED } from "./fixed-constants.ts";

type BuildSet = {
  readonly load: BarLoad;
  readonly reps: number;
  readonly restAfter: number;
  readonly movement: string;
  /** What it is called, where it serves another movement than the first. */
  readonly name?: string;
};

/** Where a build is done, and the loads of the workout as they are set out for it. */
type Place = {
  readonly gym: Gym;
  readonly bar: Bar;
  readonly sharing: boolean;
  readonly prescribed?: readonly Pick<Prescribed, "kilograms" | "perSide">[];
};
type Prescribed = NonNullable<PlannedRow["load"]>;

/** Sets done one after the other. `lasts` is lifting and resting, seconds in whole minutes. */
export type BuildHalf = { readonly sets: readonly BuildSet[]; readonly lasts: number };

/** The light half of a build and the heavy one, between which there is room for something else; a short build is one. */
export type BuildPlan = readonly BuildHalf[];

/** A build of fewer sets is not split. */
const FEWEST_TO_SPLIT = WARM_UP_FIXED.fewestToSplit.value;

/** Kilograms by which a load is under another. */
const LEAST_UNDER = WARM_UP_FIXED.leastUnder.value;

/** Kilograms by which the load that stands for a prescribed one may be off: 110 lb for 50 kg. */
const AS_PRESCRIBED = WARM_UP_FIXED.asPrescribed.value;

/** The fewest and most sets a build can have. */
export const FEWEST_SETS = BUILD_LADDERS[0]?.length ?? 0;
const MOST_SETS = BUILD_LADDERS.at(-1)?.length ?? 0;

/** How many sets a build takes with time at hand: enough that no jump is larger than usual. */
export function setsWanted(goal: BuildGoal, bar: Bar, gym: Gym, numbers: WarmUpNumbers): number {
  const empty = nearestOf(makableLoads(gym, bar), 0, "up").kilograms;
  const jumps = Math.ceil((goal.top - empty) / numbers.kilogramsPerStep);
  return Math.min(MOST_SETS, Math.max(FEWEST_SETS + 1, jumps + 2));
}

/**
 * A build of at most so many sets to each goal: loads the gym's plates can make, ascending, no load twice, with the
 * least iron moved between them; reps that fall as the load rises, never more in all than the bound; rests by how
 * heavy the set was, long enough to change the plates. A further goal (a second lift) gets the last two sets of a
 * ladder.
 */
export function planBuild(
  goals: readonly BuildGoal[],
  sets: number,
  place: Place,
  numbers: WarmUpNumbers,
): BuildPlan {
  const loads = makableLoads(place.gym, place.bar);
  const climbed = goals.flatMap((goal, at) =>
    climb(goal, ladderOf(at === 0 ? sets : FEWEST_SETS), place, numbers).map((set) =>
      at === 0 || goal.movement === goals[0]?.movement ? set : { ...set, name: goal.name },
    ),
  );
  // Behind the bar of the workout that is hardest the build goes up to a heavier one and does not begin again below.
  const rising = climbed.filter(
    ({ name, load }, at) =>
      name === undefined ||
      goals[0]?.serves !== "load" ||
      climbed.slice(0, at).every((before) => before.load.kilograms < load.kilograms),
  );
  const bounded = boundReps(rising, numbers.mostReps);
  const arranged = arrangePlates(
    loads,
    bounded.map((set) => set.load),
    [],
    isHandy,
  ).map((load) => asSetOut(load, place.prescribed));
  const resting = bounded.map((set, at): BuildSet => {
    const load = arranged[at] ?? set.load;
    const next = arranged[at + 1];
    const change = next === undefined ? 0 : changePlates(load, next, place.gym).seconds;
    const rest = place.sharing ? numbers.restShared : restAfter(load.shareOfBest ?? 0, numbers);
    return { ...set, load, restAfter: Math.max(rest, change) };
  });
  return halvesOf(resting).map((half) => ({ sets: half, lasts: wholeMinutes(half, numbers) }));
}

/** A load of the workout is loaded in the warm-up as it is in the workout. */
function asSetOut(load: BarLoad, prescribed: Place["prescribed"] = []): BarLoad {
  const same = prescribed.find(
    ({ kilograms, perSide }) => perSide !== undefined && Math.abs(kilograms - load.kilograms) < LEAST_UNDER,
  );
  return same?.perSide === undefined ? load : { ...load, perSide: [...same.perSide] };
}

/** Of the same plate nobody stacks more than two a side to warm up, where a larger one stands there. */
const MOST_OF_A_PLATE = 2;
const isHandy = (plates: readonly Mass[]): boolean =>
  [...Map.groupBy(plates, inKilograms).values()].every((same) => same.length <= MOST_OF_A_PLATE);

/** Seconds of a whole build. */
export const lastsOf = (build: BuildPlan): number => build.reduce((sum, half) => sum + half.lasts, 0);

function halvesOf(sets: readonly BuildSet[]): readonly (readonly BuildSet[])[] {
  if (sets.length === 0) return [];
  if (sets.length < FEWEST_TO_SPLIT) return [sets];
  const half = Math.ceil(sets.length / 2);
  return [sets.slice(0, half), sets.slice(half)];
}

function wholeMinutes(sets: readonly BuildSet[], numbers: WarmUpNumbers): number {
  const seconds = sets.reduce(
    (sum, set) => sum + numbers.secondsPerSet + set.reps * numbers.secondsPerRep + set.restAfter,
    0,
  );
  return Math.ceil(seconds / 60) * 60;
}

const ladderOf = (sets: number): readonly Rung[] =>
  BUILD_LADDERS.find((ladder) => ladder.length >= sets) ?? BUILD_LADDERS.at(-1) ?? [];

type Climbed = Omit<BuildSet, "restAfter">;

function climb(
  goal: BuildGoal,
  ladder: readonly Rung[],
  { gym, bar }: { readonly gym: Gym; readonly bar: Bar },
  numbers: WarmUpNumbers,
): readonly Climbed[] {
  const loads = makableLoads(gym, bar);
  const top = topLoad(goal, { gym, bar }, numbers);
  const climbed: Climbed[] = [];
  if (top === undefined) return climbed;
  for (const [at, { share, reps }] of ladder.entries()) {
    const isTop = at === ladder.length - 1;
    const load = isTop
      ? top
      : share === 0
        ? nearestOf(loads, 0, "up")
        : easyLoad(gym, bar, top.kilograms * share, goal.best);
    const before = climbed.at(-1)?.load.kilograms ?? 0;
    if (load.kilograms <= before || (!isTop && load.kilograms >= top.kilograms)) continue;
    const shareOfBest = load.kilograms / goal.best;
    const planned = isTop ? Math.max(reps, goal.topReps) : reps;
    climbed.push({
      movement: goal.movement,
      load: { ...load, shareOfBest },
      reps: shareOfBest >= HEAVY_FROM ? Math.min(planned, MOST_HEAVY_REPS) : planned,
    });
  }
  return climbed;
}

/**
 * The load nearest the goal that can be made and stays under the ceiling, for a lift not under the band either where one
 * in it can be made; none where even the empty bar is over the ceiling. Small plates are taken only for a lift in whose band no
 * other load lies.
 */
function topLoad(
  goal: BuildGoal,
  { gym, bar }: { readonly gym: Gym; readonly bar: Bar },
  numbers: WarmUpNumbers,
): BarLoad | undefined {
  const loads = makableLoads(gym, bar);
  const opener = goal.opener ?? Infinity;
  // A build to the load of the workout ends with it where the plates make it, and never over it.
  const isLoad = goal.serves === "load" && goal.why.kind === "load";
  const exact = nearestOf(loads, goal.top, "nearest");
  if (isLoad && Math.abs(exact.kilograms - goal.top) < AS_PRESCRIBED) return exact;
  const highest = isLoad ? goal.top + LEAST_UNDER : Math.max(goal.top, numbers.buildHighest * goal.best);
  const ceiling = Math.min(highest, opener - LEAST_UNDER);
  const inBand = goal.serves === "lift" && goal.why.kind !== "under-the-opener";
  const floor = inBand ? numbers.buildLowest * goal.best : 0;
  const large = makableLoads(withoutSmall(gym), bar);
  const easy = [easyLoad(gym, bar, goal.top, goal.best), nearestOf(large, goal.top, "down")].find(
    ({ kilograms }) => kilograms <= ceiling && kilograms >= floor,
  );
  if (easy) return easy;
  const candidates = [
    nearestOf(loads, goal.top, "nearest"),
    nearestOf(loads, Math.max(floor, goal.top), "up"),
    nearestOf(loads, goal.top, "down"),
  ].filter((load) => load.kilograms <= ceiling);
  return candidates.find((load) => load.kilograms >= floor) ?? candidates[0];
}

/** Takes reps off the lightest sets first, down to one each, until the whole build is within the bound. */
function boundReps(sets: readonly Climbed[], most: number): readonly Climbed[] {
  let over = sets.reduce((sum, set) => sum + set.reps, 0) - most;
  return sets.map((set) => {
    const less = Math.max(0, Math.min(over, set.reps - 1));
    over -= less;
    return { ...set, reps: set.reps - less };
  });
}

const MIDDLE_FROM = WARM_UP_FIXED.middleFrom.value;
const HEAVY_FROM = WARM_UP_FIXED.heavyFrom.value;
const MOST_HEAVY_REPS = 2;

const restAfter = (share: number, numbers: WarmUpNumbers): number =>
  share >= HEAVY_FROM ? numbers.restHeavy : share >= MIDDLE_FROM ? numbers.restMiddle : numbers.restLight;
