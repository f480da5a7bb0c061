import type { Athlete } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import type { PlannedPart, PlannedRow } from "../conditions/situation-of.ts";
import { workRowsOf } from "../conditions/situation-of.ts";
import { type BuildReason, buildShare } from "./build-share.ts";
import type { WarmUpNumbers } from "./constants.ts";

/** What a build climbs to. Masses in kilograms. */
export type BuildGoal = {
  readonly movement: string;
  readonly name: string;
  readonly best: number;
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
 * the band: the workout is the place for more. Nothing where no bar is lifted, or only an empty one.
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
  const loaded = workRowsOf(parts).flatMap((row) => {
    const movement = row.movement === undefined ? undefined : movements.get(row.movement);
    const known = movement && best(movement.id);
    if (movement?.loading?.held !== "bar" || known === undefined || row.load === undefined) return [];
    return [{ movement, known, load: row.load }];
  });
  const [heaviest] = [...loaded].sort(
    (one, other) => other.load.kilograms / other.known.kilograms - one.load.kilograms / one.known.kilograms,
  );
  if (heaviest === undefined || isEmptyBar(heaviest.load)) return [];
  const { movement, known, load } = heaviest;
  const band = numbers.buildHighest * known.kilograms;
  const isAbove = load.kilograms > band;
  // A best that is only assumed bounds the build by its band; under a tested one a single comes near the load.
  const near = Math.min(numbers.buildUnderLoad * load.kilograms, numbers.buildNearLoad * known.kilograms);
  const single = known.basis === "tested" && !noMaxLift ? Math.max(band, near) : band;
  return [
    {
      movement: movement.id,
      name: movement.name,
      best: known.kilograms,
      top: isAbove ? single : load.kilograms,
      share: load.kilograms / known.kilograms,
      topReps: isAbove ? 1 : MOST_TOP_REPS,
      why: { kind: isAbove ? "under-the-load" : "load", reasons: [] },
      serves: "load",
    },
  ];
}

const isEmptyBar = (load: NonNullable<PlannedRow["load"]>): boolean => load.perSide?.length === 0;
