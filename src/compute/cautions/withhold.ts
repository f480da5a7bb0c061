import type { Athlete, IsoDate, Limit } from "../../models/athlete.ts";
import type { CautionEntry, Library } from "../../models/library.ts";
import type { Movement } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { activeLimits } from "../conditions/active-limits.ts";
import { allHold } from "../conditions/holds.ts";
import { choicesOfPart } from "../conditions/movements-of.ts";
import { situationOf } from "../conditions/situation-of.ts";
import { resolveDivision } from "../unroll/resolve-division.ts";
import { type Cause, causesOf } from "./causes-of.ts";

export type Withheld = Plan["withheld"][number];

/** What is kept out of a plan, with what stands in for it. */
export type Withholding = {
  readonly withheld: readonly Withheld[];
  /**
   * The movement done in the place of another; undefined when the other stays as it is, or when nothing stands in for
   * it (then `forbids` tells).
   */
  readonly replace: (movement: string) => Movement | undefined;
  readonly forbids: (movement: string) => boolean;
  /** Stresses to keep away from, and why, for everything else a plan offers. */
  readonly stresses: ReadonlyMap<string, Reason>;
  readonly noMaxLift: boolean;
  /** Names of the parts whose lift for load is not planned: a lift or a complex has no stand-in. */
  readonly withoutLift: ReadonlySet<string>;
  readonly noWorkout: boolean;
};

/** Why something is withheld: the stated limit or the caution. */
type Reason = Withheld["reason"];

/** A stress that speaks of how heavy a lift is, not of a movement: it rules out lifting for load and nothing else. */
const MAXIMAL = "maximal-lift";
/** A stress of a way to do a movement: kept out, the movement is done strictly, at the pace and in the sets of that. */
const KIPPING = "kipping";

type Rules = {
  /** Movements that are cleared although a stated limit would keep them out by what they do. */
  readonly cleared: ReadonlySet<string>;
  /** Stresses kept out by a caution, which clearing by the athlete does not lift. */
  readonly byCaution: ReadonlySet<string>;
  readonly workout?: Reason;
  readonly maxLift?: Reason;
  readonly stresses: ReadonlyMap<string, Reason>;
  readonly movements: ReadonlyMap<string, Reason>;
};

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

function rulesFrom(
  limits: readonly Limit[],
  held: readonly { readonly entry: CautionEntry; readonly because: Cause[] }[],
): Rules {
  const stresses = new Map<string, Reason>();
  const movements = new Map<string, Reason>();
  let workout: Reason | undefined;
  let maxLift: Reason | undefined;
  for (const limit of limits) {
    const reason = reasonOf(limit);
    for (const stress of limit.avoid) if (!stresses.has(stress)) stresses.set(stress, reason);
    for (const id of limit.without) if (!movements.has(id)) movements.set(id, reason);
  }
  for (const { entry, because } of held) {
    for (const { what, word, ask } of entry.withholds) {
      const reason = { kind: "caution" as const, title: entry.title, because, ask };
      if (what === "workout") workout ??= reason;
      if (what === "max-lift") maxLift ??= reason;
      if (what === "stress" && word !== undefined && !stresses.has(word)) stresses.set(word, reason);
      if (what === "movement" && word !== undefined && !movements.has(word)) movements.set(word, reason);
    }
  }
  maxLift ??= stresses.get(MAXIMAL);
  return {
    stresses,
    movements,
    cleared: new Set(limits.flatMap((limit) => limit.cleared ?? [])),
    byCaution: new Set(
      held.flatMap(({ entry }) =>
        entry.withholds.flatMap(({ what, word }) => (what === "stress" ? (word ?? []) : [])),
      ),
    ),
    ...(workout !== undefined && { workout }),
    ...(maxLift !== undefined && { maxLift }),
  };
}

/** A stated limit as a reason. The athlete's own words are shown elsewhere and not used here. */
const reasonOf = ({ joint, condition }: Limit): Reason => ({
  kind: "limit",
  ...(joint !== undefined && { joint }),
  ...(condition !== undefined && { condition }),
});

function reasonAgainst(movement: Movement | undefined, id: string, rules: Rules): Reason | undefined {
  const byName = rules.movements.get(id);
  if (byName !== undefined) return byName;
  const stress = movement?.stresses.find(
    (each) =>
      each !== MAXIMAL && rules.stresses.has(each) && (!rules.cleared.has(id) || rules.byCaution.has(each)),
  );
  return stress === undefined ? undefined : rules.stresses.get(stress);
}

/** The strict movement that one becomes where kipping is kept out, unless it is cleared; undefined where it stays as it is. */
function strictForm(
  movement: Movement | undefined,
  { stresses, cleared, byCaution }: Rules,
  movements: ReadonlyMap<string, Movement>,
): Movement | undefined {
  if (movement?.withoutKipping === undefined || !stresses.has(KIPPING)) return undefined;
  const isCleared = cleared.has(movement.id) && !byCaution.has(KIPPING);
  return isCleared ? undefined : movements.get(movement.withoutKipping);
}

/** A cleared movement that does the same work: of the same kind, with the same muscle taxed most. */
function clearedInstead(
  id: string,
  cleared: ReadonlySet<string>,
  movements: ReadonlyMap<string, Movement>,
): Movement | undefined {
  const asked = movements.get(id);
  const found = [...cleared]
    .flatMap((each) => movements.get(each) ?? [])
    .find((each) => each.id !== id && each.kind === asked?.kind && mostTaxed(each) === mostTaxed(asked));
  return found;
}

const mostTaxed = ({ taxes }: Movement): string | undefined =>
  Object.entries(taxes).sort(([, one], [, other]) => other - one)[0]?.[0];

/** The nearest easier movement that is allowed: those listed first are nearer, and what is one step away before two. */
function nearestAllowed(
  id: string,
  movements: ReadonlyMap<string, Movement>,
  allowed: (id: string) => boolean,
): Movement | undefined {
  const seen = new Set([id]);
  let ring = [id];
  while (ring.length > 0) {
    ring = ring
      .flatMap((each) => movements.get(each)?.easier ?? [])
      .filter((each) => !seen.has(each) && seen.add(each));
    const found = ring.find((each) => movements.has(each) && allowed(each));
    if (found !== undefined) return movements.get(found);
  }
  return undefined;
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
