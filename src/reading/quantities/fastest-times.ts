/** Over so many metres nobody has been faster than so many seconds. */
type Best = readonly [metres: number, seconds: number];

/**
 * The fastest known times over distances, men's, a little rounded down: beyond them a time is a slip of the pen. Remembered
 * from public lists of records, not looked up (judgement); 3 % of room are added where they are used.
 */
const BESTS: Readonly<Record<"run" | "row" | "ski", readonly Best[]>> = {
  run: [
    [100, 9.58],
    [200, 19.19],
    [400, 43.0],
    [800, 100.9],
    [1609.344, 223],
    [3000, 437],
    [5000, 755],
    [10000, 1571],
    [21097.5, 3400],
    [42195, 7200],
  ],
  row: [
    [100, 12.5],
    [500, 68],
    [1000, 155],
    [2000, 335],
    [5000, 885],
    [10000, 1830],
    [42195, 8700],
  ],
  ski: [
    [100, 14],
    [500, 76],
    [1000, 163],
    [2000, 345],
    [5000, 900],
    [10000, 1900],
    [42195, 9000],
  ],
};
const ROOM = 0.97;

/**
 * The shortest time anybody takes for a distance, seconds: between two bests along a straight line of the logarithms, as
 * records over distance lie; outside at the speed of the nearest. Nothing where no bests are known.
 *
 * @param metres over 0
 */
export function fastestTime(kind: string, metres: number): number | undefined {
  const bests = kind === "run" || kind === "row" || kind === "ski" ? BESTS[kind] : undefined;
  const [first] = bests ?? [];
  const last = bests?.at(-1);
  if (bests === undefined || first === undefined || last === undefined) return undefined;
  if (metres <= first[0]) return (ROOM * first[1] * metres) / first[0];
  const above = bests.findIndex(([distance]) => distance >= metres);
  const [from, to] = [bests[above - 1], bests[above]];
  if (from === undefined || to === undefined) return (ROOM * last[1] * metres) / last[0];
  const exponent = Math.log(to[1] / from[1]) / Math.log(to[0] / from[0]);
  return ROOM * from[1] * (metres / from[0]) ** exponent;
}
