import { rangeOf, type ModelConstants, type SettableConstants } from "../models/model-constant.ts";
import { AFTER_CONSTANTS } from "./after/constants.ts";
import { BEST_LIFT_CONSTANTS } from "./capacity/best-lift-constants.ts";
import { BODY_MASS_CONSTANTS } from "./capacity/body-mass-constants.ts";
import { CAPACITY_CONSTANTS } from "./capacity/constants.ts";
import { CHOICE_CONSTANTS } from "./choices/constants.ts";
import { SITUATION_CONSTANTS } from "./conditions/constants.ts";
import { DEBRIEF_CONSTANTS } from "./debrief/constants.ts";
import { EARLY_SPLITS_CONSTANTS } from "./early-splits/constants.ts";
import { ATTEMPT_CONSTANTS } from "./lifting/attempt-constants.ts";
import { DIFFICULTY_CONSTANTS } from "./early-splits/difficulty-constants.ts";
import { LOADING_CONSTANTS } from "./lifting/constants.ts";
import { LADDER_CONSTANTS } from "./lifting/ladder-constants.ts";
import { pacingConstants } from "./motion/constants.ts";
import { PLACES_CONSTANTS } from "./places/constants.ts";
import { SET_UP_CONSTANTS } from "./set-up/constants.ts";
import { unrollConstants } from "./unroll/constants.ts";
import { WARM_UP_CONSTANTS } from "./warm-up/constants.ts";

/** One model: what it is about, and its constants. */
export type ModelTable = { readonly about: string; readonly constants: ModelConstants };

/** Every constant of every model, in the order of the computation. No name stands in two of them. */
export const MODEL_TABLES: readonly ModelTable[] = [
  { about: "unroll", constants: unrollConstants },
  { about: "pacing", constants: pacingConstants },
  { about: "capacity", constants: CAPACITY_CONSTANTS },
  { about: "body-mass", constants: BODY_MASS_CONSTANTS },
  { about: "best-lift", constants: BEST_LIFT_CONSTANTS },
  { about: "early-splits", constants: EARLY_SPLITS_CONSTANTS },
  { about: "difficulty", constants: DIFFICULTY_CONSTANTS },
  { about: "plates", constants: LOADING_CONSTANTS },
  { about: "attempts", constants: ATTEMPT_CONSTANTS },
  { about: "ladder", constants: LADDER_CONSTANTS },
  { about: "conditions", constants: SITUATION_CONSTANTS },
  { about: "choices", constants: CHOICE_CONSTANTS },
  { about: "warm-up", constants: WARM_UP_CONSTANTS },
  { about: "after", constants: AFTER_CONSTANTS },
  { about: "set-up", constants: SET_UP_CONSTANTS },
  { about: "places", constants: PLACES_CONSTANTS },
  { about: "debrief", constants: DEBRIEF_CONSTANTS },
];

/** What `overrides:` may name, and how far each can be set. */
export const SETTABLE: SettableConstants = new Map(
  MODEL_TABLES.flatMap(({ constants }) =>
    Object.entries(constants).map(([name, constant]) => [name, rangeOf(constant)] as const),
  ),
);
