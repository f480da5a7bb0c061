import type { MassUnit } from "../../models/quantity.ts";
import type { KnownScore } from "../athlete-file/context.ts";

/** Entries of an athlete file that hold one value. */
type SingleEntry =
  | "level"
  | "division"
  | "sex"
  | "body mass"
  | "height"
  | "born"
  | "gym"
  | "group"
  | "units"
  | "recovery"
  | "habits"
  | "share name"
  | "note"
  | "limits";

/** A workout done: its score, the attempts of its lift, or the clock at the end of its rounds or lines. */
export type ResultMeaning = {
  readonly kind: "result" | "attempts" | "splits";
  readonly workout: string;
  readonly part?: string;
  readonly score?: KnownScore;
};

/** What a column of a table holds. Movements by the library's name. */
export type Meaning =
  | { readonly kind: "name" | "first name" | "last name" | "age" }
  | { readonly kind: "entry"; readonly entry: SingleEntry; readonly unit?: string }
  | {
      readonly kind: "lift";
      readonly movement: string;
      readonly reps?: number;
      readonly unit?: MassUnit;
      readonly estimated?: true;
    }
  | { readonly kind: "unbroken"; readonly movement: string }
  /** `before` and `behind` stand around the cell: `2000 m row in ` 7:05, or 84 ` burpee in 7:00`. */
  | { readonly kind: "effort"; readonly before: string; readonly behind: string }
  /** Facts in words, of this movement where the cell names none. */
  | { readonly kind: "efforts"; readonly movement: string }
  /** The day of the tests: of one movement, or of everything in the row. */
  | { readonly kind: "tested"; readonly movement?: string }
  | { readonly kind: "start"; readonly workout: string }
  | ResultMeaning
  | { readonly kind: "passed over"; readonly why: string }
  /** Nobody can tell; `proposals` are headings that would say it. */
  | { readonly kind: "unclear"; readonly why: string; readonly proposals: readonly string[] };
