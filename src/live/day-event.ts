import type { Feeling } from "../models/vocabulary.ts";

/** How the work before a lift was felt, against what was planned. */
export const BODY_FEELINGS = ["easier", "as-planned", "harder"] as const;
export type BodyFeeling = (typeof BODY_FEELINGS)[number];

/** A lift as it was tapped. Kilograms. */
export type TappedLift = {
  /** Which of the lifts of the part, from 0. */
  readonly lift: number;
  readonly load: number;
  readonly made: boolean;
};

/** What somebody tapped, without its moment. `row` is the index of the row of the plan at whose end the tap stands. */
export type Tap =
  | { readonly kind: "start-at"; readonly start: number }
  | { readonly kind: "go"; readonly part: string }
  | { readonly kind: "passed"; readonly part: string; readonly row: number }
  | { readonly kind: "ended"; readonly part: string }
  | { readonly kind: "score"; readonly part: string; readonly done: number }
  | { readonly kind: "body"; readonly part: string; readonly felt: BodyFeeling }
  | ({ readonly kind: "lift"; readonly part: string } & TappedLift)
  | { readonly kind: "felt"; readonly part: string; readonly felt: Feeling }
  | { readonly kind: "version"; readonly part: string; readonly version: "prescribed" | "scaled" }
  | { readonly kind: "note"; readonly text: string }
  | { readonly kind: "stopped" }
  | { readonly kind: "new-day" }
  | { readonly kind: "undo" };

/** A tap with its moment: milliseconds since 1970 by the steady clock. The log of a day is a list of these, in order. */
export type DayEvent = Tap & { readonly at: number };
