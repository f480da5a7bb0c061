import type { Athlete, IsoDate, Limit } from "../../models/athlete.ts";

/** The limits that still stand on a day; a limit stands up to and including its last day. ISO dates sort as text. */
export const activeLimits = (athlete: Athlete, date: IsoDate): readonly Limit[] =>
  athlete.limits.filter((limit) => limit.until === undefined || limit.until >= date);
