import type { Seconds } from "./quantity.ts";
import type { Condition } from "./condition.ts";
import type { Movement } from "./movement.ts";
import type { Joint, Muscle, Stress } from "./vocabulary.ts";

export const WARM_UP_STAGES = [
  "ready",
  "mobility",
  "general",
  "specific",
  "build",
  "primer",
  "rehearsal",
  "rest",
] as const;
export type WarmUpStage = (typeof WARM_UP_STAGES)[number];

/** One block a warm-up may pick. */
export type WarmUpBlock = {
  readonly id: string;
  readonly title: string;
  readonly stage: WarmUpStage;
  readonly say: string;
  readonly time: { readonly shortest: Seconds; readonly usual: Seconds };
  /** All must hold for the block to be offered. */
  readonly when: readonly Condition[];
  /** 1 is dropped last. */
  readonly priority: number;
  readonly muscles: readonly Muscle[];
  readonly joints: readonly Joint[];
  readonly stresses: readonly Stress[];
  /** Longest stretch held still in it; long ones are not put before a lift. */
  readonly holdsStill?: Seconds;
  /**
   * Offered once for each movement of the workout that meets `when`, with `{amount}` and `{movement}` in its words
   * filled in: a few easy reps of it.
   */
  readonly perMovement: boolean;
  readonly source: string;
};

/** Where a piece of the same day belongs, in the order of a session. */
export const SESSION_SLOTS = [
  "walk",
  "loosen",
  "strength",
  "gymnastics",
  "easy-work",
  "skill",
  "easy-end",
  "mobility",
  "film",
] as const;
export type SessionSlot = (typeof SESSION_SLOTS)[number];

/** What an amount to eat is of. */
export const NUTRIENTS = ["carbohydrate", "protein", "caffeine"] as const;
type Nutrient = (typeof NUTRIENTS)[number];

export type RecoveryOption = {
  readonly id: string;
  readonly title: string;
  /** `cool-down` right after, `refuel`, `sleep`, or a `same-day` maintenance option. `rest` is always offered. */
  readonly kind: "cool-down" | "refuel" | "sleep" | "same-day" | "rest";
  readonly say: string;
  /** A version with less of it. */
  readonly less?: string;
  readonly when: readonly Condition[];
  readonly minutes?: number;
  /** Where it belongs in a session of the same day; without one it is no piece of a session. */
  readonly slot?: SessionSlot;
  /** How hard it may feel, out of ten. */
  readonly effort?: number;
  /** 1 is left out last when time is short. */
  readonly keep?: number;
  /** The options that are left out where this one holds. */
  readonly insteadOf?: readonly string[];
  /** Place among the steps of its kind, 1 first; what has none stands last. */
  readonly order?: number;
  readonly muscles: readonly Muscle[];
  readonly stresses: readonly Stress[];
  /** Light enough for muscles that have just worked. */
  readonly easy: boolean;
  /** Ranges per kilogram of body mass, for refuelling. */
  readonly perBodyMass?: {
    readonly low: number;
    readonly high: number;
    readonly unit: "g" | "mL" | "mg" | "g/h" | "g/day";
    /** What the range is a range of. */
    readonly of?: Nutrient;
  };
  /** Loads from the athlete's own lifts. */
  readonly work?: readonly {
    readonly movement: string;
    readonly sets: number;
    readonly reps: number;
    /** Of the best lift; absent where no load is put on. */
    readonly share?: number;
    /** Of the athlete's own best unbroken set, for the reps; `reps` where that is not known. */
    readonly setShare?: number;
  }[];
  readonly source: string;
};

export type CautionEntry = {
  readonly id: string;
  readonly title: string;
  readonly say: string;
  /** `stop`: stop signs, on every brief; `care`; `rule`: what prevails over the brief. */
  readonly weight: "stop" | "care" | "rule";
  readonly when: readonly Condition[];
  /** What the caution withholds from the plan. */
  readonly withholds: readonly {
    readonly what: "max-lift" | "stress" | "workout" | "movement";
    readonly word?: string;
    readonly ask: string;
  }[];
  /** Whether it is important enough for the sheet. */
  readonly onSheet: boolean;
  readonly source: string;
};

/** Everything of the library and the coach's own content that plans pick from. */
export type Library = {
  readonly movements: ReadonlyMap<string, Movement>;
  readonly warmUps: readonly WarmUpBlock[];
  readonly recovery: readonly RecoveryOption[];
  readonly cautions: readonly CautionEntry[];
};
