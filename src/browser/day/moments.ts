/** A moment as a clock on the wall shows it, in the zone of the start, or that of the device. Reads `18:20`. */
export function sayWallTime(moment: number, zone: string | undefined): string {
  const options = { hour: "2-digit", minute: "2-digit", hourCycle: "h23" } as const;
  try {
    return new Intl.DateTimeFormat("en-GB", {
      ...options,
      ...(zone !== undefined && { timeZone: zone }),
    }).format(moment);
  } catch {
    return new Intl.DateTimeFormat("en-GB", options).format(moment);
  }
}

/** The day of a moment, such as `2026-11-28`. */
export function dayOfMoment(moment: number, zone: string | undefined): string {
  const options = { year: "numeric", month: "2-digit", day: "2-digit" } as const;
  const form = (timeZone?: string): string =>
    new Intl.DateTimeFormat("en-CA", { ...options, ...(timeZone !== undefined && { timeZone }) }).format(
      moment,
    );
  try {
    return form(zone);
  } catch {
    return form();
  }
}

/** The moment nearest to now at which the wall shows a time such as `18:20`. */
export function nearestMoment(time: string, now: number, zone: string | undefined): number | undefined {
  const parts = /^(\d{1,2}):(\d{2})$/.exec(time.trim());
  if (!parts) return undefined;
  const wanted = Number(parts[1]) * 60 + Number(parts[2]);
  const [hours = 0, minutes = 0] = sayWallTime(now, zone).split(":").map(Number);
  const apart = ((((wanted - hours * 60 - minutes) % 1440) + 1440 + 720) % 1440) - 720;
  return Math.floor(now / 60_000) * 60_000 + apart * 60_000;
}
