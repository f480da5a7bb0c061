import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { rulesFor } from "../motion/rules.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { carriedOver } from "./carried-over.ts";
import { BODY_MASS_CONSTANTS } from "./body-mass-constants.ts";
import { CAPACITY_CONSTANTS } from "./constants.ts";
import { fitMovement, type MovementFit, type Subject } from "./fit-movement.ts";
import type { Capacity, MovementCapacity, NoCapacity, Task } from "../motion/movement-capacity.ts";
import { repeatSeconds } from "./load-effect.ts";
import { hasSets, isHeld } from "./reference-pace.ts";
import { sharedReserve } from "./shared-reserve.ts";
import { usualPlans } from "./sustainable-work.ts";
import { type LiftOf, taskFactor } from "./task-factor.ts";

/** What the capacity of an athlete is computed from. */
export type CapacityInput = {
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
  const constants = withOverrides({ ...CAPACITY_CONSTANTS, ...BODY_MASS_CONSTANTS }, overrides);
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
      const carried = () =>
        carriedOver(athlete, sex, movement, movements, reserve.seconds, subject.liftOf, date, constants);
      fits.set(key, fitMovement(subject, movement, unit, carried));
    }
    return fits.get(key);
  };
  return {
    level,
    ...(sex === undefined ? {} : { sex }),
    recoverySpeed,
    reserve: reserve.seconds,
    reserveError: reserve.error,
    of: (task) => (task.unit === "seconds" ? asHold(task) : capacityOfTask(subject, task, fitOf(task))),
  };
}

/** Asks for each best lift once: of the athlete, and of the typical one of their level. */
function remembered(liftOf: LiftOf, athlete: Athlete): LiftOf {
  const own = new Map<string, ReturnType<LiftOf>>();
  const typical = new Map<string, ReturnType<LiftOf>>();
  return (of, movement) => {
    const known = of === athlete ? own : typical;
    if (!known.has(movement.id)) known.set(movement.id, liftOf(of, movement));
    return known.get(movement.id);
  };
}

function capacityOfTask(
  subject: Subject,
  task: Task,
  fit: MovementFit | undefined,
): MovementCapacity | NoCapacity {
  const { athlete, sex, liftOf, constants } = subject;
  const { movement, unit, load } = task;
  if (!fit) {
    const usual = movement.counts[0] ?? "reps";
    return {
      missing: `No pace of the movement "${movement.name}" is known in ${unit}: it is counted in ${usual}, and nothing says how ${usual} become ${unit}.`,
    };
  }
  const factor = taskFactor(athlete, sex, task, load, liftOf, constants);
  const { best, loadShare } = factor;
  const tested = best?.basis === "tested" || best?.basis === "estimated";
  const heaviest = best && (tested ? best.kilograms : best.kilograms + constants.liftDoubt * best.spread);
  const liftable = load === undefined || heaviest === undefined || load <= heaviest;
  const offReference = 0.25 * Math.abs(Math.log(factor.rate));
  return {
    // A lift near the best is not repeated at the pace of lighter ones, however strong the lungs.
    sustainable: Math.max(fit.sustainable * factor.rate, repeatSeconds(movement, loadShare)),
    fastest: fit.fastest * factor.cycle,
    kappa: fit.kappa,
    reach: fit.reach,
    unbroken: hasSets(movement)
      ? Math.max(constants.unbrokenLeast, fit.muscles.unbroken * factor.unbroken)
      : Number.POSITIVE_INFINITY,
    muscleRecovery: fit.muscles.muscleRecovery,
    held: isHeld(movement),
    possible: liftable && !athlete.cannot.includes(movement.id),
    ...(loadShare === undefined ? {} : { loadShare }),
    error: Math.hypot(fit.error, offReference),
    basis: fit.basis,
    from: fit.from,
    byDuration: fit.byDuration,
  };
}

/** A movement held for a time: the time is given, so nothing about it can be fast or slow. */
const asHold = ({ movement }: Task): MovementCapacity => ({
  sustainable: 1,
  fastest: 1,
  kappa: movement.kappa.value,
  reach: 1,
  unbroken: Number.POSITIVE_INFINITY,
  muscleRecovery: 1,
  held: isHeld(movement),
  possible: true,
  error: 0,
  basis: "assumed",
  from: "the time is given",
  byDuration: { seconds: [], factors: [] },
});
