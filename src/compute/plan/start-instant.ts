import { Temporal } from "temporal-polyfill";

/** A start as the brief shows it and as a calendar needs it. */
export type StartInstant = { readonly local: string; readonly zone: string; readonly instant: string };

/**
 * The instant of a local wall time in a zone, in UTC (RFC 9557 rules through Temporal). A time that a clock change
 * skips or repeats is undefined: nobody can be told to start then.
 *
 * @example startInstant("2026-11-27T18:40", "Europe/Oslo")?.instant // => "2026-11-27T17:40:00Z"
 */
export function startInstant(local: string, zone: string): StartInstant | undefined {
  const wall = Temporal.PlainDateTime.from(local);
  try {
    const instant = wall.toZonedDateTime(zone, { disambiguation: "reject" }).toInstant().toString();
    return { local, zone, instant };
  } catch (cause) {
    if (cause instanceof RangeError) return undefined;
    throw cause;
  }
}
