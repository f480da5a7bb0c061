import { withOverrides } from "../overrides/with-overrides.ts";
import type { Capacity } from "./movement-capacity.ts";
import { pacingConstants, type PacingConstants } from "./constants.ts";

/** The model's numbers as they hold for one athlete: constants with overrides, level and recovery settled. */
export type Rules = PacingConstants & {
  /** Whole reserve, seconds of critical-rate work. */
  readonly reserve: number;
  /** How much dearer work is with an empty reserve. */
  readonly drift: number;
  /** Power by which the sustainable time grows with work done past `durabilityFrom`. */
  readonly durability: number;
  /** Factor on the speed of every refill. */
  readonly recoverySpeed: number;
  /** Factor on transitions. */
  readonly transitionFactor: number;
  /** Seconds between two reps from which on a load is too heavy to be repeated at a pace. */
  readonly tooFarApart: number;
};

/** Settles the constants for an athlete. Level and recovery choose among them. */
export function rulesFor(
  capacity: Pick<Capacity, "level" | "reserve" | "recoverySpeed">,
  overrides: Readonly<Record<string, number>> = {},
): Rules {
  const constants = withOverrides(pacingConstants, overrides);
  const byLevel = {
    new: [constants.driftNew, constants.durabilityNew, constants.transitionNew, constants.tooFarApartNew],
    regular: [
      constants.driftRegular,
      constants.durabilityRegular,
      constants.transitionRegular,
      constants.tooFarApartRegular,
    ],
    competitor: [
      constants.driftCompetitor,
      constants.durabilityCompetitor,
      constants.transitionCompetitor,
      constants.tooFarApartCompetitor,
    ],
    elite: [
      constants.driftElite,
      constants.durabilityElite,
      constants.transitionElite,
      constants.tooFarApartElite,
    ],
  } as const;
  const [drift, durability, transitionFactor, tooFarApart] = byLevel[capacity.level];
  return {
    ...constants,
    reserve: capacity.reserve,
    drift,
    durability,
    recoverySpeed: capacity.recoverySpeed,
    transitionFactor,
    tooFarApart,
  };
}
