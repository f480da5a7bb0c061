import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Library } from "../../models/library.ts";
import type { Movement } from "../../models/movement.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { activeLimits } from "../conditions/active-limits.ts";
import { allHold } from "../conditions/holds.ts";
import { choicesOfPart } from "../conditions/movements-of.ts";
import { situationOf } from "../conditions/situation-of.ts";
import { resolveDivision } from "../unroll/resolve-division.ts";
import { causesOf } from "./causes-of.ts";
import { KIPPING, reasonAgainst, rulesFrom, strictForm } from "./withholding-rules.ts";
import { clearedInstead, nearestAllowed } from "./stand-in.ts";
import type { Reason, Withheld, Withholding } from "./withholding.ts";

/**
 * What a workout withholds from an athlete: by the limits they state, and by the cautions that hold for them, as far
 * as is known before anything is planned. A movement that is kept away from is replaced by the nearest easier one that
 * is not and that the athlete can do (breadth first through `easier`); where a line leaves another movement to choose,
 * nothing is withheld. What is withheld comes out in the order of the workout, each with its reason and whom to ask.
 */
export function withhold(
  athlete: Athlete,
  workout: Workout,
  library: Library,
  date: IsoDate,
  overrides?: Readonly<Record<string, number>>,
): Withholding {
  const { movements } = library;
  const situation = situationOf({
    athlete,
    workout,
    movements,
    date,
    ...(overrides !== undefined && { overrides }),
  });
  const held = library.cautions.flatMap((entry) => {
    const { holds, verdicts } = allHold(entry.when, situation);
    return holds ? [{ entry, because: causesOf(verdicts) }] : [];
  });
  const rules = rulesFrom(activeLimits(athlete, date), held);
  const against = (id: string): Reason | undefined => reasonAgainst(movements.get(id), id, rules);
  const isFree = (id: string): boolean => against(id) === undefined && !athlete.cannot.includes(id);
  const strictOf = (id: string): Movement | undefined => strictForm(movements.get(id), rules, movements);
  const reasonFor = (id: string): Reason | undefined =>
    against(id) ?? (strictOf(id) && rules.stresses.get(KIPPING));
  const isDone = (id: string): boolean => isFree(id) && isFree(strictOf(id)?.id ?? id);
  const replace = (id: string): Movement | undefined => {
    if (reasonFor(id) === undefined) return undefined;
    const strict = strictOf(id);
    if (strict !== undefined && against(id) === undefined && isFree(strict.id)) return strict;
    const instead = clearedInstead(id, rules.cleared, movements) ?? nearestAllowed(id, movements, isDone);
    return instead && (strictOf(instead.id) ?? instead);
  };
  const { division } = resolveDivision(athlete, workout);
  const againstLift = (part: Part): Reason | undefined =>
    part.clock.kind === "max-load"
      ? (rules.maxLift ?? forbiddenIn(part, division, against)[0]?.reason)
      : undefined;
  return {
    withheld: [
      ...(rules.workout === undefined ? [] : [withheldWorkout(workout, rules.workout)]),
      ...workout.parts.flatMap((part) => {
        const reason = againstLift(part);
        return reason === undefined
          ? withheldMovements(part, division, movements, reasonFor, replace)
          : [withheldLift(part, reason)];
      }),
    ].filter(isFirstOfItsKind),
    replace,
    forbids: (id) => reasonFor(id) !== undefined,
    stresses: rules.stresses,
    noMaxLift: rules.maxLift !== undefined,
    withoutLift: new Set(
      workout.parts.flatMap((part) => (againstLift(part) === undefined ? [] : [part.name])),
    ),
    noWorkout: rules.workout !== undefined,
  };
}

const withheldWorkout = (workout: Workout, reason: Reason): Withheld => ({
  what: "workout",
  of: workout.title,
  reason,
});

const withheldLift = (part: Part, reason: Reason): Withheld => ({
  what: "part",
  part: part.name,
  reason,
});

/** The lines of a part that leave only movements kept away from, by the first of each, with the reason. */
const forbiddenIn = (
  part: Part,
  division: string,
  reasonFor: (id: string) => Reason | undefined,
): readonly { readonly id: string; readonly reason: Reason }[] =>
  choicesOfPart(part, division).flatMap((choices) => {
    const [first] = choices;
    const reason = first === undefined ? undefined : reasonFor(first);
    if (first === undefined || reason === undefined) return [];
    return choices.some((each) => reasonFor(each) === undefined) ? [] : [{ id: first, reason }];
  });

/** Whether only the way of doing it is left out. */
const isWay = (movement: Movement | undefined, instead: Movement | undefined): boolean =>
  instead !== undefined && movement?.withoutKipping === instead.id;

const withheldMovements = (
  part: Part,
  division: string,
  movements: ReadonlyMap<string, Movement>,
  reasonFor: (id: string) => Reason | undefined,
  replace: (id: string) => Movement | undefined,
): readonly Withheld[] =>
  forbiddenIn(part, division, reasonFor).map(({ id, reason }) => {
    const instead = replace(id);
    const movement = movements.get(id);
    const onlyWay = isWay(movement, instead);
    return {
      what: onlyWay ? "option" : "movement",
      part: part.name,
      movement: id,
      of: movement?.plural ?? id,
      ...(onlyWay && { way: KIPPING }),
      reason,
      ...(instead !== undefined && { instead: instead.plural }),
    };
  });

/** A movement met in several parts is told once. */
const isFirstOfItsKind = (each: Withheld, at: number, all: readonly Withheld[]): boolean =>
  each.movement === undefined || all.findIndex((other) => other.movement === each.movement) === at;
