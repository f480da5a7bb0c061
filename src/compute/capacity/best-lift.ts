import type { Grounds } from "../../models/plan/grounds.ts";
import type { Athlete, IsoDate, LiftResult } from "../../models/athlete.ts";
import { isResultOf } from "../../models/loaded-form.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms, type Kilograms, kilograms } from "../../models/quantity.ts";
import type { Confidence } from "../../models/vocabulary.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { AGE_CONSTANTS, type AgeConstants } from "./age-constants.ts";
import { ageEffect } from "./age-effect.ts";
import { ageOnMonday } from "./age-of-result.ts";
import { BEST_LIFT_CONSTANTS } from "./best-lift-constants.ts";
import { type BodyMass, bodyMassOf } from "./body-mass.ts";
import { BODY_MASS_CONSTANTS, type BodyMassConstants } from "./body-mass-constants.ts";
import { bySex } from "./by-sex.ts";
import { hasOverheadCatch } from "./lift-kind.ts";
import { type KnownBy, knownBy } from "./known-by.ts";
import { singleOverLoad } from "./rep-equations.ts";
import { strengthOfDay } from "./strength-of-day.ts";

/** The heaviest single an athlete can be expected to lift today, fresh, with one standard deviation around it. */
export type BestLift = {
  readonly kilograms: Kilograms;
  readonly spread: Kilograms;
  readonly basis: "tested" | "estimated" | "related" | "level";
  /** How much it tells of the strength of a day, where it rests on a result. */
  readonly known?: KnownBy;
  /** Its own error as a share, without how days differ: which of several lifts it follows from most surely. */
  readonly doubt: number;
  /** What it rests on. */
  readonly from: Grounds;
};

type Constants = Readonly<Record<keyof typeof BEST_LIFT_CONSTANTS, number>> &
  BodyMassConstants &
  AgeConstants;
type Movements = ReadonlyMap<string, Movement>;

/**
 * The best lift today of one movement.
 *
 * From the athlete's own results: a single as tested, a rep set by the mean of the published equations inside their
 * bounds, older results discounted and less sure; of several, the one with the highest value less its spread. Without
 * any, from the lift it is most surely related to by a ratio (one or two steps away). Without those, from level,
 * body mass and age. Undefined only where a single best of the movement means nothing.
 *
 * Where the load is worn, as in a weighted pull-up, the body is lifted with it: reps, age and doubt concern body mass and
 * load together, and the best is what of that is load. Results of the movement itself with a load added count too.
 */
export function bestLift(
  athlete: Athlete,
  movement: Movement,
  movements: Movements,
  date: IsoDate,
  overrides?: Readonly<Record<string, number>>,
): BestLift | undefined {
  if (!movement.loading?.lift) return undefined;
  const constants = withOverrides(
    { ...BEST_LIFT_CONSTANTS, ...BODY_MASS_CONSTANTS, ...AGE_CONSTANTS },
    overrides,
  );
  return (
    fromResults(athlete, movement, date, constants) ??
    fromRelated(athlete, movement, movements, date, constants) ??
    fromLevel(athlete, movement, date, constants)
  );
}

function fromResults(
  athlete: Athlete,
  movement: Movement,
  date: IsoDate,
  constants: Constants,
): BestLift | undefined {
  const results = athlete.lifts.filter((result) => isResultOf(result, movement));
  const carried = movement.loading?.held === "worn" ? bodyMassOf(athlete, constants) : undefined;
  const overheadCatch = hasOverheadCatch(movement);
  return surest(
    results.map((result) => {
      const known = knownBy(athlete.level, result, results.length, ageOf(result, date, constants), constants);
      const lifted = (carried?.kilograms ?? 0) + inKilograms(result.load);
      const { spread } = strengthOfDay(lifted, known, overheadCatch, constants);
      const best = fromResult(result, spread, date, constants, carried);
      return best && { ...best, known };
    }),
  );
}

const surest = (candidates: readonly (BestLift | undefined)[]): BestLift | undefined =>
  candidates.reduce<BestLift | undefined>(
    (best, lift) =>
      lift && (!best || lift.kilograms - lift.spread > best.kilograms - best.spread) ? lift : best,
    undefined,
  );

function fromResult(
  result: LiftResult,
  daySpread: number,
  date: IsoDate,
  constants: Constants,
  carried: BodyMass = { kilograms: 0, error: 0 },
): BestLift | undefined {
  const reps = result.reps + result.inReserve;
  const single = singleOverLoad(reps);
  if (!single) return undefined;
  const years = Math.max(0, ageOf(result, date, constants) - constants.freshDays) / 365;
  const discount = 1 - Math.min(constants.mostLoss, constants.lossPerYear * years);
  const factor = single.mean * discount;
  const best = (carried.kilograms + inKilograms(result.load)) * factor;
  const perRep = (singleOverLoad(reps + 1)?.mean ?? single.mean) / single.mean - 1;
  const doubt = Math.hypot(
    constants.driftPerYear * years,
    single.disagreement / single.mean,
    constants.repErrorPerRep * (reps - 1),
    result.inReserve > 0 ? constants.reserveError * perRep : 0,
    result.approximate ? constants.approximateError : 0,
  );
  const error = Math.hypot(daySpread, doubt);
  return {
    kilograms: kilograms(Math.max(0, best - carried.kilograms)),
    doubt,
    spread: kilograms(Math.hypot(best * error, carried.kilograms * carried.error * Math.abs(factor - 1))),
    basis: reps === 1 ? "tested" : "estimated",
    from: { kind: "lift", result: asWritten(result), through: [] },
  };
}

const ageOf = (result: LiftResult, date: IsoDate, constants: Constants): number =>
  result.date === undefined ? constants.undatedDays : ageOnMonday(result.date, date);

type WrittenLift = Extract<Grounds, { kind: "lift" }>["result"];

/** A lift as the athlete's file has it; of which movement, the lift that rests on it says. */
const asWritten = ({ load, added, reps, inReserve, date, approximate, effort }: LiftResult): WrittenLift => ({
  load,
  ...(added && { added }),
  reps,
  inReserve,
  ...(date !== undefined && { date }),
  approximate,
  ...(effort !== undefined && { effort }),
});

type Relation = { readonly of: Movement; readonly ratio: number; readonly confidence: Confidence };

/** Lifts this one is a share of, nearest first, then lifts that are a share of this one. */
function relationsOf(movement: Movement, movements: Movements): readonly Relation[] {
  const relations: Relation[] = [];
  for (const { of, ratio } of movement.loading?.ratios ?? []) {
    const other = movements.get(of);
    if (other) relations.push({ of: other, ratio: ratio.value, confidence: ratio.confidence });
  }
  for (const other of movements.values()) {
    for (const { of, ratio } of other.loading?.ratios ?? []) {
      if (of !== movement.id) continue;
      relations.push({ of: other, ratio: 1 / ratio.value, confidence: ratio.confidence });
    }
  }
  return relations;
}

const STEPS_AWAY = 2;

function fromRelated(
  athlete: Athlete,
  movement: Movement,
  movements: Movements,
  date: IsoDate,
  constants: Constants,
): BestLift | undefined {
  if (athlete.lifts.length === 0) return undefined;
  const errors: Readonly<Record<Confidence, number>> = {
    measured: constants.ratioErrorMeasured,
    published: constants.ratioErrorPublished,
    judgement: constants.ratioErrorJudgement,
  };
  const reach = (at: Movement, steps: number, seen: readonly string[]): readonly BestLift[] =>
    relationsOf(at, movements)
      .filter(({ of }) => !seen.includes(of.id))
      .flatMap(({ of, ratio, confidence }) => {
        const own = fromResults(athlete, of, date, constants);
        const bests = own ? [own] : steps > 1 ? reach(of, steps - 1, [...seen, of.id]) : [];
        const near = constants.ratioErrorOfStyles + constants.ratioErrorGrowth * Math.abs(1 - ratio);
        return bests.map((best) => scaled(best, of, ratio, Math.min(errors[confidence], near)));
      });
  const found = reach(movement, STEPS_AWAY, [movement.id]);
  return found.reduce<BestLift | undefined>(
    (best, lift) => (!best || lift.doubt < best.doubt ? lift : best),
    undefined,
  );
}

function scaled(best: BestLift, of: Movement, ratio: number, ratioError: number): BestLift {
  const value = best.kilograms * ratio;
  return {
    kilograms: kilograms(value),
    spread: kilograms(value * Math.hypot(best.spread / best.kilograms, ratioError)),
    doubt: Math.hypot(best.doubt, ratioError),
    basis: "related",
    from: best.from.kind === "lift" ? { ...best.from, through: [of.name, ...best.from.through] } : best.from,
  };
}

function fromLevel(
  athlete: Athlete,
  movement: Movement,
  date: IsoDate,
  constants: Constants,
): BestLift | undefined {
  const typical = movement.loading?.typical[athlete.level];
  if (typical === undefined) return undefined;
  const { femaleShareOfTypical, femaleShareOfTypicalSnatch, levelError } = constants;
  const isSnatch = movement.kind === "barbell" && hasOverheadCatch(movement);
  const female = isSnatch ? femaleShareOfTypicalSnatch : femaleShareOfTypical;
  const mass = bodyMassOf(athlete, constants);
  const { lift } = ageEffect(athlete, date, constants);
  const value = mass.kilograms * typical * bySex({ female, male: 1 }, athlete.sex) * lift;
  const error = Math.hypot(levelError, mass.error);
  return {
    kilograms: kilograms(value),
    spread: kilograms(value * error),
    doubt: error,
    basis: "level",
    from: {
      kind: "level",
      level: athlete.level,
      bodyMass: athlete.bodyMass === undefined ? "not-stated" : "stated",
    },
  };
}
