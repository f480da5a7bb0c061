import { Temporal } from "temporal-polyfill";

/** The instant of a local date and time in a zone, in milliseconds since 1970; times doubled or left out go the later way. */
export const instantOf = (at: string, zone: string): number =>
  Temporal.PlainDateTime.from(at).toZonedDateTime(zone, { disambiguation: "compatible" }).epochMilliseconds;
