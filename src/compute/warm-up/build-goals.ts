import type { Athlete } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import type { PlannedPart, PlannedRow } from "../conditions/situation-of.ts";
import { workRowsOf } from "../conditions/situation-of.ts";
import { type BuildReason, buildShare } from "./build-share.ts";
import type { WarmUpNumbers } from "./constants.ts";
import { WARM_UP_FIXED } from "./fixed-constants.ts";

/** What a build climbs to. Masses in kilograms. */
export type BuildGoal = {
  readonly movement: string;
  readonly name: string;
  readonly best: number;
  /** Whether that best is only a guess, which nobody gave. */
  readonly isGuess: boolean;
  readonly top: number;
  /** What it serves, as a share of the best: where the build ends for a lift, the load itself for a load. */
  readonly share: number;
  readonly topReps: number;
  /** The opener of the lift, which no set of the build reaches. */
  readonly opener?: number;
  readonly why: BuildReason;
  /** Whether it serves a lift for load, or the heaviest load of the workout. */
  readonly serves: "lift" | "load";
};

type Best = { readonly kilograms: number; readonly basis: string };

export type BuildGoalsInput = {
  readonly athlete: Athlete;
  readonly movements: ReadonlyMap<string, Movement>;
  readonly parts: readonly PlannedPart[];
  readonly best: (movement: string) => Best | undefined;
  readonly noMaxLift: boolean;
  readonly age?: number;
};

/** A top set is never more than this many reps, whatever an attempt holds. */
const MOST_TOP_REPS = 2;
const MOST_LIFTS = 2;

/**
 * What the build of a warm-up serves. Where something is lifted for load on a bar: those lifts (two at the most), each
 * to its place in the band, or under its opener where that lies lower. Otherwise the bar load of the workout that is heaviest for this athlete, but not far above
 * the band: the workout is the place for more; and behind it the heaviest bar of all where that is another movement's. Nothing where no bar is lifted, or only an empty one.
 */
export function buildGoals(input: BuildGoalsInput, numbers: WarmUpNumbers): readonly BuildGoal[] {
  const lifts = input.noMaxLift ? [] : liftGoals(input, numbers);
  if (lifts.length > 0) return lifts;
  return loadGoals(input, numbers);
}

function liftGoals(input: BuildGoalsInput, numbers: WarmUpNumbers): readonly BuildGoal[] {
  const { athlete, movements, parts, age } = input;
  const lifts = parts.flatMap((part) =>
    (part.lifting?.lifts ?? []).map((lift) => ({
      lift,
      workBefore: part.start.clock,
    })),
  );
  const goals = lifts.flatMap(({ lift, workBefore }) => {
    const movement = movements.get(lift.movement);
    const known = lift.best;
    if (movement?.loading?.held !== "bar") return [];
    const { share, why } = buildShare(
      { athlete, movement, best: known, workBefore, ...(age !== undefined && { age }) },
      numbers,
    );
    const opener = lift.attempts[0]?.load.kilograms;
    const highest = opener === undefined ? Infinity : numbers.buildUnderOpener * opener;
    const isUnder = share * known.kilograms > highest;
    return [
      {
        movement: movement.id,
        name: lift.name,
        best: known.kilograms,
        isGuess: isGuess(known.basis),
        top: Math.min(share * known.kilograms, highest),
        share: isUnder ? highest / known.kilograms : share,
        topReps: Math.min(MOST_TOP_REPS, lift.reps),
        ...(opener !== undefined && { opener }),
        why: isUnder ? { kind: "under-the-opener" as const, reasons: [] } : why,
        serves: "lift" as const,
      },
    ];
  });
  return goals
    .filter((goal, at) => goals.findIndex((other) => other.movement === goal.movement) === at)
    .slice(0, MOST_LIFTS);
}

function loadGoals(
  { movements, parts, best, noMaxLift }: BuildGoalsInput,
  numbers: WarmUpNumbers,
): readonly BuildGoal[] {
  const rows = workRowsOf(parts).map(({ movement, load }) => ({ movement, load }));
  const loaded = [...rows, ...doubted(parts, movements)].flatMap((each): readonly Loaded[] => {
    const movement = each.movement === undefined ? undefined : movements.get(each.movement);
    const known = movement && best(movement.id);
    if (movement?.loading?.held !== "bar" || known === undefined || each.load === undefined) return [];
    return [{ movement, known, load: each.load }];
  });
  const [hardest] = loaded.toSorted((one, other) => shareOf(other) - shareOf(one));
  if (hardest === undefined || isEmptyBar(hardest.load)) return [];
  const [heaviest] = loaded.toSorted((one, other) => other.load.kilograms - one.load.kilograms);
  const first = goalFor(hardest, noMaxLift, numbers);
  const isAnother =
    heaviest !== undefined &&
    heaviest.movement !== hardest.movement &&
    heaviest.load.kilograms > hardest.load.kilograms &&
    shareOf(heaviest) >= numbers.secondBarFrom;
  return isAnother ? [first, goalFor(heaviest, noMaxLift, numbers)] : [first];
}

/** A bar of the workout with its load. */
type Loaded = {
  readonly movement: Movement;
  readonly known: Best;
  readonly load: NonNullable<PlannedRow["load"]>;
};

const isGuess = (basis: string): boolean => basis === "level" || basis === "assumed";

const shareOf = ({ load, known }: Loaded): number => load.kilograms / known.kilograms;

/** Up to this share of a guess a load may go after all. */
const MAY_GO = WARM_UP_FIXED.mayGo.value;

/** Loads behind the end of a plan that the athlete is told to try before the start, since only a guess speaks against them. */
function doubted(
  parts: readonly PlannedPart[],
  movements: ReadonlyMap<string, Movement>,
): readonly Pick<PlannedRow, "movement" | "load">[] {
  const all = [...movements.values()];
  return parts.flatMap(({ pacing }) =>
    (pacing?.outOfReach ?? []).slice(0, 1).flatMap(({ plural, load, share, skill, untried }) => {
      if (load === undefined || load.shareOfBest !== undefined || skill !== undefined || untried) return [];
      if (!(share !== undefined && share > 0 && share <= MAY_GO)) return [];
      const movement = all.find((each) => each.plural === plural)?.id;
      return movement === undefined ? [] : [{ movement, load }];
    }),
  );
}

function goalFor({ movement, known, load }: Loaded, noMaxLift: boolean, numbers: WarmUpNumbers): BuildGoal {
  const band = numbers.buildHighest * known.kilograms;
  const isAbove = load.kilograms > band;
  // A best that is only assumed bounds the build by its band; under a tested one a single comes near the load.
  const near = Math.min(numbers.buildUnderLoad * load.kilograms, numbers.buildNearLoad * known.kilograms);
  const single = known.basis === "tested" && !noMaxLift ? Math.max(band, near) : band;
  return {
    movement: movement.id,
    name: movement.name,
    best: known.kilograms,
    isGuess: isGuess(known.basis),
    top: isAbove ? single : load.kilograms,
    share: load.kilograms / known.kilograms,
    topReps: isAbove ? 1 : MOST_TOP_REPS,
    why: { kind: isAbove ? "under-the-load" : "load", reasons: [] },
    serves: "load",
  };
}

const isEmptyBar = (load: NonNullable<PlannedRow["load"]>): boolean => load.perSide?.length === 0;
