const MINUTES_PER_DAY = 1440;

/** Minutes after midnight of `18:40`, or of the minutes themselves. @example minutesOfDay("18:40") // => 1120 */
export function minutesOfDay(start: string | number): number {
  if (typeof start === "number") return start;
  const match = /(\d{1,2}):(\d{2})$/.exec(start.slice(0, "2026-11-26T18:40".length));
  if (match?.[1] === undefined) throw new RangeError(`"${start}" is no time of day such as 18:40`);
  return Number(match[1]) * 60 + Number(match[2]);
}

/** Minutes after midnight as a wall clock; before midnight is the evening of the day before. @example wallClock(-5) // => "23:55" */
export function wallClock(minutes: number): string {
  const ofDay = ((Math.floor(minutes) % MINUTES_PER_DAY) + MINUTES_PER_DAY) % MINUTES_PER_DAY;
  const [hours, rest] = [Math.floor(ofDay / 60), ofDay % 60];
  return `${String(hours).padStart(2, "0")}:${String(rest).padStart(2, "0")}`;
}
