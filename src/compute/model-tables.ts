import {
  rangeOf,
  type FixedConstants,
  type ModelConstants,
  type SettableConstants,
} from "../models/model-constant.ts";
import { AFTER_CONSTANTS } from "./after/constants.ts";
import { AGE_CONSTANTS } from "./capacity/age-constants.ts";
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
import { AFTER_FIXED } from "./after/fixed-constants.ts";
import { CAPACITY_FIXED } from "./capacity/fixed-constants.ts";
import { EARLY_SPLITS_FIXED } from "./early-splits/fixed-constants.ts";
import { DEBRIEF_FIXED } from "./debrief/fixed-constants.ts";
import { LIFTING_FIXED } from "./lifting/fixed-constants.ts";
import { MOTION_FIXED } from "./motion/fixed-constants.ts";
import { PACING_FIXED } from "./pacing/fixed-constants.ts";
import { PLACES_FIXED } from "./places/fixed-constants.ts";
import { PLAN_FIXED } from "./plan/fixed-constants.ts";
import { SEARCH_FIXED } from "./search/fixed-constants.ts";
import { SET_UP_FIXED } from "./set-up/fixed-constants.ts";
import { UNROLL_FIXED } from "./unroll/fixed-constants.ts";
import { WARM_UP_FIXED } from "./warm-up/fixed-constants.ts";

/** One model: what it is about, and its constants. */
export type ModelTable = { readonly about: string; readonly constants: ModelConstants };

/** The numbers of one folder that no coach sets. */
export type FixedTable = { readonly about: string; readonly constants: FixedConstants };

/** Every constant of every model, in the order of the computation. No name stands in two of them. */
export const MODEL_TABLES: readonly ModelTable[] = [
  { about: "unroll", constants: unrollConstants },
  { about: "pacing", constants: pacingConstants },
  { about: "capacity", constants: CAPACITY_CONSTANTS },
  { about: "body-mass", constants: BODY_MASS_CONSTANTS },
  { about: "age", constants: AGE_CONSTANTS },
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

/** The numbers no coach sets, folder by folder in the order of the computation. */
export const FIXED_TABLES: readonly FixedTable[] = [
  { about: "unroll", constants: UNROLL_FIXED },
  { about: "motion", constants: MOTION_FIXED },
  { about: "search", constants: SEARCH_FIXED },
  { about: "capacity", constants: CAPACITY_FIXED },
  { about: "pacing", constants: PACING_FIXED },
  { about: "early-splits", constants: EARLY_SPLITS_FIXED },
  { about: "places", constants: PLACES_FIXED },
  { about: "lifting", constants: LIFTING_FIXED },
  { about: "warm-up", constants: WARM_UP_FIXED },
  { about: "after", constants: AFTER_FIXED },
  { about: "set-up", constants: SET_UP_FIXED },
  { about: "plan", constants: PLAN_FIXED },
  { about: "debrief", constants: DEBRIEF_FIXED },
];

/** What `overrides:` may name, and how far each can be set. */
export const SETTABLE: SettableConstants = new Map(
  MODEL_TABLES.flatMap(({ constants }) =>
    Object.entries(constants).map(([name, constant]) => [name, rangeOf(constant)] as const),
  ),
);
