import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { kilograms } from "../../models/quantity.ts";
import { normalQuantile } from "../../numerics/normal.ts";
import { rulesFor } from "../motion/rules.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { AGE_CONSTANTS } from "./age-constants.ts";
import { carriedOver } from "./carried-over.ts";
import { BODY_MASS_CONSTANTS } from "./body-mass-constants.ts";
import { CAPACITY_CONSTANTS } from "./constants.ts";
import { fitMovement } from "./fit-movement.ts";
import type { MovementFit } from "./movement-fit.ts";
import type { Capacity, MovementCapacity, NoCapacity, Task } from "../motion/movement-capacity.ts";
import { musclesAtTask } from "./fit-muscles.ts";
import { repeatSeconds } from "./load-effect.ts";
import { mayLack } from "./may-lack.ts";
import { hasSets, isHeld } from "./reference-pace.ts";
import { sharedReserve } from "./shared-reserve.ts";
import type { Subject } from "./subject.ts";
import { usualPlans } from "./sustainable-work.ts";
import { type LiftOf, type TaskFactor, taskFactor } from "./task-factor.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** What the capacity of an athlete is computed from. */
type CapacityInput = {
  readonly athlete: Athlete;
  readonly movements: ReadonlyMap<string, Movement>;
  readonly date: IsoDate;
  /** The best lift today, as far as one is meaningful; the athlete passed may be a typical one of the same level. */
  readonly liftOf: LiftOf;
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * Everything the pacing needs to know of an athlete: the shared reserve at once, each task when it is first asked for.
 * The answers are remembered with the value, so make it once for an athlete and a day.
 */
export function capacityOf({ athlete, movements, date, liftOf, overrides = {} }: CapacityInput): Capacity {
  const constants = withOverrides(
    { ...CAPACITY_CONSTANTS, ...BODY_MASS_CONSTANTS, ...AGE_CONSTANTS },
    overrides,
  );
  const reserve = sharedReserve(athlete, movements, date, constants);
  const recoverySpeed = {
    slow: constants.recoverySlow,
    usual: constants.recoveryUsual,
    fast: constants.recoveryFast,
  }[athlete.recovery];
  const { level, sex } = athlete;
  const rules = rulesFor({ level, reserve: reserve.seconds, recoverySpeed }, overrides);
  const subject: Subject = {
    athlete,
    sex,
    date,
    rules,
    constants,
    liftOf: remembered(liftOf, athlete),
    usualPlan: usualPlans(rules),
  };
  const fits = new Map<string, MovementFit | undefined>();
  const fitOf = ({ movement, unit }: Task): MovementFit | undefined => {
    const key = `${movement.id}|${unit}`;
    if (!fits.has(key)) {
      const carried = () => carriedOver(subject, movement, movements, reserve.seconds);
      fits.set(key, fitMovement(subject, movement, unit, carried));
    }
    return fits.get(key);
  };
  const at = (factor: number): Capacity => {
    const slowed: Subject =
      factor === 1 ? subject : { ...subject, liftOf: slowedLift(subject.liftOf, athlete, factor) };
    return {
      level,
      ...(sex === undefined ? {} : { sex }),
      recoverySpeed,
      reserve: reserve.seconds,
      reserveError: reserve.error,
      of: (task) => {
        if (task.unit === "seconds") return asHold(task);
        const believed = capacityOfTask(subject, task, fitOf(task));
        return factor === 1 || "missing" in believed
          ? believed
          : slowedTask(believed, capacityOfTask(slowed, task, fitOf(task)), factor, constants.unbrokenLeast);
      },
      slowedBy: at,
    };
  };
  return at(1);
}

/** How far out a doubt of a best lift is carried: one day in ten, as the days of a plan are. */
const TENTH = normalQuantile(0.9);

/**
 * The athlete's best lifts divided by a factor, no further than what is not known of each: a tested best does not sink with the pace of other
 * work. Those typical of the level stay.
 */
const slowedLift =
  (liftOf: LiftOf, athlete: Athlete, factor: number): LiftOf =>
  (of, movement) => {
    const best = liftOf(of, movement);
    if (!best || of !== athlete) return best;
    const most = Math.exp((TENTH * best.spread) / best.kilograms);
    return {
      ...best,
      kilograms: kilograms(best.kilograms / Math.min(most, Math.max(1 / most, factor))),
    };
  };

/**
 * A task of a slowed athlete. What is believed to be possible stays so, as a load does not become a wall by a doubt; what is a wall may
 * be none for a stronger one.
 */
function slowedTask(
  { possible }: MovementCapacity,
  slowed: MovementCapacity | NoCapacity,
  factor: number,
  unbrokenLeast: number,
): MovementCapacity | NoCapacity {
  if ("missing" in slowed) return slowed;
  return {
    ...slowed,
    sustainable: slowed.sustainable * factor,
    fastest: slowed.fastest * Math.sqrt(factor),
    // A single that is possible at all needs no wholly fresh muscles on any day.
    unbroken: Math.max(Math.min(slowed.unbroken, unbrokenLeast), slowed.unbroken / factor),
    possible: possible || (factor < 1 && (slowed.possible || slowed.unsure === true)),
  };
}

/** Asks for each best lift once: of the athlete, and of typical ones by level and sex. */
function remembered(liftOf: LiftOf, athlete: Athlete): LiftOf {
  const own = new Map<string, ReturnType<LiftOf>>();
  const typical = new Map<string, ReturnType<LiftOf>>();
  return (of, movement) => {
    const known = of === athlete ? own : typical;
    const key = `${movement.id}|${of.level}|${of.sex ?? ""}`;
    if (!known.has(key)) known.set(key, liftOf(of, movement));
    return known.get(key);
  };
}

function capacityOfTask(
  subject: Subject,
  task: Task,
  fit: MovementFit | undefined,
): MovementCapacity | NoCapacity {
  const { athlete, constants } = subject;
  const { movement, unit, load } = task;
  if (!fit) {
    return {
      missing: { kind: "no-pace", movement: movement.name, unit, counted: movement.counts[0] ?? "reps" },
    };
  }
  const factor = taskFactor(subject, task, load);
  const { loadShare } = factor;
  const liftable = load === undefined || load <= heaviestOf(factor, subject);
  const unsure = isUnsure(subject, movement, fit);
  const offReference = CAPACITY_FIXED.offReference.value * Math.abs(Math.log(factor.rate));
  return {
    sustainable: fit.sustainable * factor.rate,
    fastest: fit.fastest * factor.cycle,
    kappa: fit.kappa,
    reach: fit.reach,
    ...(hasSets(movement)
      ? musclesAtTask(fit.muscles, factor, constants)
      : { unbroken: Number.POSITIVE_INFINITY, muscleRecovery: fit.muscles.muscleRecovery }),
    // A lift near the best is not repeated at the pace of lighter ones, however strong the lungs; own efforts have it in them.
    apart: fit.isOwn
      ? 0
      : Math.min(subject.rules.singleAgain, repeatSeconds(movement, shareToSpace(factor), constants)),
    held: isHeld(movement),
    possible: liftable && !athlete.cannot.includes(movement.id) && !unsure,
    ...(unsure && { unsure: true as const }),
    ...(loadShare === undefined ? {} : { loadShare }),
    error: Math.hypot(fit.error, offReference),
    basis: fit.basis,
    from: fit.from,
    byDuration: fit.byDuration,
  };
}

/** Whether a skill is needed that many of the athlete's level do not have, and nothing of the athlete's own says that it is there. */
const isUnsure = ({ athlete, sex }: Subject, movement: Movement, { isOwn }: MovementFit): boolean =>
  mayLack(athlete.level, sex, movement) &&
  !isOwn &&
  !athlete.unbroken.some((own) => own.movement === movement.id) &&
  !athlete.efforts.some((own) => own.movement === movement.id);

/**
 * The heaviest load that can be worked with: a tested best; of one that follows from another lift a standard deviation more; of a guess from
 * the level a little less, but never less than the load its reference pace is meant for.
 */
function heaviestOf({ best, usualLoad = 0 }: TaskFactor, { athlete, date, constants }: Subject): number {
  if (best === undefined) return Number.POSITIVE_INFINITY;
  if (best.basis === "tested" || best.basis === "estimated") return best.kilograms;
  // Of a lift followed from another it is only sure beyond what people differ by.
  const young = isYoung(athlete, date);
  const careful = young || athlete.level === "new";
  if (best.basis === "related") return best.kilograms + (careful ? 0 : best.spread);
  return Math.max(constants.loadShareWall * best.kilograms, young ? 0 : usualLoad);
}

/** Whether somebody may be under eighteen, by the year of birth: then nothing is lifted over what is only guessed. */
export const isYoung = ({ birthYear }: Athlete, date: IsoDate): boolean =>
  birthYear !== undefined && Number(date.slice(0, 4)) - birthYear < CAPACITY_FIXED.grownUp.value;

/**
 * The share of the best that says how far apart reps are; where the level alone says what the best is, it may well be more. Who lifts a load
 * again and again at all has a best of at least as much.
 */
const shareToSpace = ({ loadShare = 0, best }: TaskFactor): number =>
  Math.min(1, best?.basis === "level" ? loadShare / (1 + best.spread / best.kilograms / 2) : loadShare);

/** A movement held for a time: the time is given, so nothing about it can be fast or slow. */
const asHold = ({ movement }: Task): MovementCapacity => ({
  sustainable: 1,
  fastest: 1,
  kappa: movement.kappa.value,
  reach: 1,
  unbroken: Number.POSITIVE_INFINITY,
  muscleRecovery: 1,
  apart: 0,
  held: isHeld(movement),
  possible: true,
  error: 0,
  basis: "assumed",
  from: { kind: "given-time" },
  byDuration: { seconds: [], factors: [] },
});
