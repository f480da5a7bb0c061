import { readFileSync } from "node:fs";
import { parse } from "yaml";

/** A field to compare with: its file, the workout done, who did it, and the kind of work. */
export type FieldCase = {
  readonly file: string;
  readonly kind: string;
  readonly sex?: "male" | "female";
  readonly columns?: "stations";
  /** Station of the file, movement of the workout, correlation of the station's time with the whole. */
  readonly stations?: readonly (readonly [station: string, movement: string, correlation: number])[];
  readonly workout: string;
};

/** Reads a list of fields. */
export const readFieldList = (path: string | URL): readonly FieldCase[] =>
  parse(readFileSync(path, "utf8")) as readonly FieldCase[];
