import type { MassUnit } from "../../models/quantity.ts";
import type { SourceFile } from "../files/source-file.ts";
import type { Columns } from "./columns.ts";
import type { Measure } from "./measure-of.ts";
import type { Remarks } from "./remarks.ts";
import type { Kind, Score } from "./sort-scores.ts";

/** What the whole table says about its rows. */
export type ScoreReading = {
  readonly file: SourceFile;
  readonly columns: Columns;
  readonly measure: Measure;
  readonly remarks: Remarks;
  /** Some results are times, so that a number of reps stands for a capped one. */
  readonly hasTimes: boolean;
};

export type ReadScore = Score & { readonly line: number; readonly kind?: Kind; readonly unit?: MassUnit };

/** What is known of a row beside its value. */
export type Base = { readonly line: number; readonly count: number; readonly group?: string };
export type RowKind = Kind | "capped" | "text";
