import type { Sex } from "../../models/vocabulary.ts";

/** The value for a sex; the mean of both where it is not stated. */
export const bySex = (values: Readonly<Record<Sex, number>>, sex: Sex | undefined): number =>
  sex === undefined ? (values.female + values.male) / 2 : values[sex];
