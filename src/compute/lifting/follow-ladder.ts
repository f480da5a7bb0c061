import { addTo, both, DAY_WEIGHTS, type DayChances, totalOf, without } from "./day-grid.ts";

/** How a day can end: the heaviest made load (undefined for none), the misses of it, and how likely that is. */
export type Outcome = { readonly best: number | undefined; readonly misses: number; readonly chance: number };

/** What is lifted after the opener is missed. */
export type Ladder = {
  /** Loads while everything is made, ascending. */
  readonly loads: readonly [number, ...number[]];
  /** Loads after misses without any made lift, in order: first miss, second miss; the opener again where nothing lighter is allowed. */
  readonly lower: readonly number[];
  /**
   * The rung aimed at, from 0. Rungs after it are lifted only once it was made at its first try, and a miss there ends the day;
   * absent where the last is aimed at.
   */
  readonly aimed?: number;
};

/** What a row of the ladder says. */
export type Rung = {
  /** Chance that it is made, where the lifts before it were. */
  readonly chance: number;
  /** Chance that the day comes to it, with the second tries after misses. */
  readonly lifted: number;
  /** Chance that it is made that day, with the second try after a miss. */
  readonly made: number;
  /** What is lifted after it is missed, and how likely that is made; absent where nothing is. */
  readonly ifMissed?: { readonly load: number; readonly chance: number };
};

/** How days that follow a ladder go: how they may end, and how likely they come to each load of it. */
type Followed = { readonly outcomes: readonly Outcome[]; readonly lifted: readonly number[] };

/** Where a day stands: the next rung, misses at it, misses in all, and what was made. `down`: loads below the opener taken. */
type Standing = {
  readonly rung: number;
  readonly inRow: number;
  readonly misses: number;
  readonly down: number;
  readonly best: number | undefined;
};

const START: Standing = { rung: 0, inRow: 0, misses: 0, down: 0, best: undefined };

const loadAt = ({ rung, down }: Standing, { loads, lower }: Ladder): number =>
  (down > 0 ? lower[down - 1] : loads[rung]) ?? 0;

/**
 * After a made lift the next rung; after one below the opener the load missed before it. From the load aimed at nothing goes on
 * that took a second try.
 */
function afterMade(at: Standing, load: number, { loads, aimed = Infinity }: Ladder): Standing {
  const made = { ...at, inRow: 0, down: Math.max(0, at.down - 1), best: Math.max(at.best ?? 0, load) };
  if (load < loads[0]) return made;
  const next = at.inRow > 0 && at.rung >= aimed ? loads.length : at.rung + 1;
  return { ...made, down: 0, rung: next };
}

/**
 * After a missed lift the same load again, and two misses in a row end the day, one over the load aimed at. Without any made lift
 * the loads below the opener, until there are none left to try.
 */
function afterMissed(at: Standing, ladder: Ladder): Standing | undefined {
  const misses = at.misses + 1;
  if (at.best !== undefined)
    return at.inRow > 0 || at.rung > (ladder.aimed ?? Infinity) ? undefined : { ...at, inRow: 1, misses };
  return ladder.lower[at.down] === undefined ? undefined : { ...at, down: at.down + 1, inRow: 1, misses };
}

/** A standing as a number; what is best is told by the rung, or lies below the opener. */
const keyOf = ({ rung, inRow, misses, down, best = 0 }: Standing): number =>
  rung > 0
    ? (rung * MANY + misses) * MANY + inRow
    : -(((best * MANY + misses) * MANY + down) * MANY + inRow) - 1;
const MANY = 128;

/**
 * Every way a day can end that follows a ladder, with its chance. Days that stand alike are carried on together, as how
 * likely each strength of the day is by then, so the work grows with the slots and not with the ways; exact up to the grid of strengths.
 */
export function followLadder(ladder: Ladder, chances: DayChances): Followed {
  const ended = new Map<number, Outcome>();
  const lifted = ladder.loads.map(() => 0);
  const end = ({ best, misses }: Pick<Standing, "best" | "misses">, weights: Float64Array): void => {
    const key = (best ?? 0) * MANY + misses;
    ended.set(key, { best, misses, chance: (ended.get(key)?.chance ?? 0) + totalOf(weights) });
  };
  type Standings = Map<number, { readonly at: Standing; readonly weights: Float64Array }>;
  let standing: Standings = new Map([[keyOf(START), { at: START, weights: DAY_WEIGHTS }]]);
  for (const number of chances.slots.keys()) {
    const next: Standings = new Map();
    const go = (at: Standing, weights: Float64Array): void => {
      if (at.down === 0 && at.rung >= ladder.loads.length) {
        end(at, weights);
        return;
      }
      const key = keyOf(at);
      const there = next.get(key);
      if (there) addTo(there.weights, weights);
      else next.set(key, { at, weights });
    };
    for (const { at, weights } of standing.values()) {
      if (at.inRow === 0 && (at.rung > 0 || at === START))
        lifted[at.rung] = (lifted[at.rung] ?? 0) + totalOf(weights);
      const load = loadAt(at, ladder);
      const byDay = chances.of(number, load);
      const missed = without(weights, byDay);
      const then = afterMissed(at, ladder);
      go(afterMade(at, load, ladder), both(weights, byDay));
      if (then) go(then, missed);
      else end({ ...at, misses: at.misses + 1 }, missed);
    }
    standing = next;
  }
  for (const { at, weights } of standing.values()) end(at, weights);
  return { outcomes: [...ended.values()], lifted };
}

/** The rows of a ladder, whose days go as told. Each must have a slot. */
export function rungsOf(
  ladder: Ladder,
  chances: DayChances,
  { outcomes, lifted }: Followed = followLadder(ladder, chances),
): readonly Rung[] {
  let weights = DAY_WEIGHTS;
  return ladder.loads.map((load, at) => {
    const before = totalOf(weights);
    const byDay = chances.of(at, load);
    const missed = without(weights, byDay);
    weights = both(weights, byDay);
    const again = at === 0 ? ladder.lower[0] : at > (ladder.aimed ?? Infinity) ? undefined : load;
    const made =
      again === undefined || at + 1 >= chances.slots.length ? undefined : chances.of(at + 1, again);
    return {
      chance: totalOf(weights) / before,
      lifted: lifted[at] ?? 0,
      made: outcomes.reduce((sum, { best = 0, chance }) => sum + (best >= load ? chance : 0), 0),
      ...(again !== undefined &&
        made && { ifMissed: { load: again, chance: totalOf(both(missed, made)) / totalOf(missed) } }),
    };
  });
}
