import type { MaxEffort } from "./athlete.ts";
import type { Movement } from "./movement.ts";

/** Why a max effort of an athlete's file cannot be right. Paces in seconds for each unit the movement is counted in. */
export type EffortTrouble = { readonly effort: MaxEffort; readonly movement: Movement } & (
  | { readonly kind: "nothing-done" }
  | { readonly kind: "no-conversion" }
  /** Quicker than the quickest cycle of anybody; `most` units are believed in the time. */
  | { readonly kind: "too-fast"; readonly pace: number; readonly quickest: number; readonly most: number }
  /** Slower by far than the steady pace of a beginner. */
  | { readonly kind: "too-slow"; readonly pace: number; readonly beginner: number }
  /** Slower than a longer effort of the same movement at the same load. */
  | {
      readonly kind: "slower-than-longer";
      readonly pace: number;
      readonly longer: MaxEffort;
      readonly longerPace: number;
    }
);
