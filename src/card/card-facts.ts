import { sayGym } from "../wording/gym-name.ts";
import type { PartPlan, Plan } from "../models/plan/plan.ts";
import type { SharedFact } from "../models/vocabulary.ts";
import { sayGoal, type Goal } from "../wording/goal.ts";
import { sayLiftFigure, sayLiftLoad } from "../wording/lift-words.ts";
import { clockShift } from "../wording/part-clock.ts";
import { sayClock } from "../wording/time.ts";
import { isUnfinished } from "../wording/unfinished.ts";
import { sayKindInFull } from "../wording/workout-facts.ts";

/** A moment and its clock, as `3` and `4:58`. */
type Split = { readonly label: string; readonly clock: string };

/** Everything a card may show: what is public about the workout, and of the athlete what they agreed to. */
export type CardFacts = {
  readonly title: string;
  readonly competition?: string;
  /** Where it is done, if that was said. */
  readonly gym?: string;
  readonly name?: string;
  readonly division?: string;
  readonly goal?: Goal;
  /** The parts whose tape may be drawn; loads are left out where they are not shared. Empty when no splits are. */
  readonly tape: readonly PartPlan[];
  readonly splits: readonly Split[];
  readonly loads?: string;
  /** The work as written, which is no secret: with the loads of the athlete's division where that is shared, else of all. */
  readonly work: readonly CardWork[];
  /** Whose loads stand between slashes, in order. */
  readonly whose?: string;
};

/** A part of the work: its kind with the clock, and its lines, indented by spaces. */
export type CardWork = { readonly kind: string; readonly lines: readonly string[] };

/** The workout as everybody reads it. */
export type WorkOfAll = {
  readonly divisions: readonly string[];
  readonly parts: readonly { readonly name: string; readonly prescription: readonly string[] }[];
};

/** More splits than this cannot be read on a picture; then only those worth a look are shown. */
const MOST_SPLITS = 24;

/**
 * What of a plan a card may show. A person's full name never appears: their share name does if they share a name. The
 * name of a band of athletes is nobody's and always appears.
 */
export function cardFacts(plan: Plan, ofAll?: WorkOfAll): CardFacts {
  const { athlete, workout, gym } = plan;
  const shares = (fact: SharedFact): boolean => athlete.shares.includes(fact);
  const name = athlete.anonymous ? athlete.name : shares("name") ? athlete.shareName : undefined;
  const goal = shares("target") ? sayGoal(plan) : undefined;
  const loads = shares("loads") ? sayLoads(plan.parts) : undefined;
  // A goal that is a load is a load.
  const withGoal = goal && (shares("loads") || !isLoad(plan)) ? { goal } : {};
  return {
    title: workout.title,
    ...(workout.competition === undefined ? {} : { competition: workout.competition }),
    ...(gym.assumed ? {} : { gym: sayGym(gym) }),
    ...(name === undefined ? {} : { name }),
    ...(shares("division") ? { division: athlete.division } : {}),
    ...withGoal,
    tape: shares("splits") ? plan.parts.map((part) => (shares("loads") ? part : withoutLifts(part))) : [],
    splits: shares("splits") ? splitsOf(plan.parts) : [],
    ...(loads === undefined ? {} : { loads }),
    ...workOf(plan, shares("division") || athlete.anonymous ? undefined : ofAll),
  };
}

/** The division of somebody who does not share it would be told by its loads. */
function workOf({ parts }: Plan, ofAll: WorkOfAll | undefined): Pick<CardFacts, "work" | "whose"> {
  const work = parts.map(({ name, title, prescription }): CardWork => ({
    kind: sayKindInFull(title),
    lines: ofAll?.parts.find((part) => part.name === name)?.prescription ?? prescription,
  }));
  const parted = ofAll && work.some(({ lines }) => lines.some((line) => line.includes("/")));
  return parted ? { work, whose: ofAll.divisions.join(" / ") } : { work };
}

const isLoad = ({ headline }: Plan): boolean =>
  headline.result === undefined || ["load", "sum-of-loads", "load-times-reps"].includes(headline.score);

/** The part as if nothing were lifted in it. */
function withoutLifts(part: PartPlan): PartPlan {
  const kept = { ...part };
  delete kept.lifting;
  return kept;
}

function sayLoads(parts: readonly PartPlan[]): string | undefined {
  const lifts = parts
    .flatMap((part) => part.lifting?.lifts ?? [])
    .map((lift) =>
      lift.attempts
        .map((attempt, index) =>
          index === lift.attempts.length - 1 ? sayLiftLoad(attempt, lift) : sayLiftFigure(attempt, lift),
        )
        .join(" → "),
    )
    .filter((line) => line !== "");
  return lifts.length === 0 ? undefined : lifts.join("  ·  ");
}

function splitsOf(parts: readonly PartPlan[]): readonly Split[] {
  const all = (every: boolean): readonly Split[] => parts.flatMap((part) => splitsOfPart(part, every));
  const each = all(true);
  return each.length <= MOST_SPLITS ? each : all(false).slice(0, MOST_SPLITS);
}

function splitsOfPart(part: PartPlan, every: boolean): readonly Split[] {
  const { pacing } = part;
  if (!pacing) return [];
  const shift = clockShift(part);
  const shown = (row: number): boolean => every || pacing.checkpoints.includes(row);
  if (pacing.rounds.length > 1) {
    return pacing.rounds
      .filter((round) => shown(round.lastRow) && !isUnfinished(pacing, round.round))
      .map(({ label, end }) => ({ label, clock: sayClock(end + shift) }));
  }
  return pacing.rows
    .filter((row) => row.kind === "work" && shown(row.index))
    .map(({ short, end }) => ({ label: short, clock: sayClock(end + shift) }));
}
