import type { TargetWord } from "../../models/coach-word.ts";
import type { Pacing } from "../../models/plan/pacing.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import type { Aimed, NotSet } from "../../models/plan/coach-word.ts";
import type { Capacity } from "../motion/movement-capacity.ts";
import type { PacedPart } from "./paced-part.ts";

type Paced = Extract<PacedPart, { kind: "paced" }>;

/** A capacity that makes the target is tried so often, and no further from the own than this. */
const TRIES = 8;
const FURTHEST = 1.8;
/** A step where the plan does not come to a result of the target's kind. */
const STEP = 0.94;
/** A result is taken to answer to the capacity by a power in these bounds: between them the search neither runs away nor stands. */
const [LEAST_ANSWER, MOST_ANSWER] = [0.15, 2];
/** A target is out of reach when the plan stays this far from it, as a share. */
const OFF = 0.01;

const TIMES: readonly ScoreKind[] = ["time", "slowest-interval"];
const AMOUNTS: readonly ScoreKind[] = ["reps", "rounds-and-reps", "calories", "metres"];

/**
 * A part paced for a target: as for a day on which that is just what the athlete's numbers come to, with the sets and the fastest
 * cycles the athlete really has. The range stays true to the athlete: a day that is worse than the target asks ends where the
 * numbers end, a better one at the target.
 *
 * @param own the part by the athlete's own numbers
 * @param beginning share of the planned time in which a pace that is too fast is misjudged
 * @param paceAs the part paced for another capacity
 */
export function paceAtTarget(
  own: Paced,
  target: TargetWord,
  beginning: number,
  paceAs: (capacity: (own: Capacity) => Capacity) => PacedPart,
): Paced {
  const asked = askedOf(target, own.pacing);
  if (asked === undefined) return told(own, { kind: "target-of-another-kind", score: own.pacing.score });
  const isTime = target.kind === "time";
  const wanted: Wanted = { asked, isTime, of: (paced) => valueOf(paced.pacing, isTime) };
  const found = searched(own, wanted, paceAs);
  const value = wanted.of(found);
  if (value === undefined || Math.abs(value / asked - 1) > OFF) {
    const nearest = value ?? own.pacing.result.target;
    return told(own, {
      kind: "target-out-of-reach",
      asked,
      score: isTime ? "time" : own.pacing.score,
      nearest,
    });
  }
  return {
    ...aimedAt(found, own, value, isTime),
    word: { ...own.word, notSet: own.word?.notSet ?? [], aimed: meaning(own, asked, isTime, beginning) },
  };
}

/** What is looked for: a number in the unit of the result, and how a paced part is read in it. */
type Wanted = {
  readonly asked: number;
  readonly isTime: boolean;
  readonly of: (paced: Paced) => number | undefined;
};

/** The number asked for in the unit of the part's result; undefined where the part comes to something else. */
function askedOf(target: TargetWord, { score, perRound, cap }: Pacing): number | undefined {
  if (target.kind === "time") return TIMES.includes(score) || cap !== undefined ? target.time : undefined;
  if (!AMOUNTS.includes(score)) return undefined;
  if (target.kind === "amount") return target.amount;
  return target.kind === "rounds" && perRound !== undefined
    ? target.rounds * perRound + target.reps
    : undefined;
}

const valueOf = ({ score, result }: Pacing, isTime: boolean): number | undefined =>
  TIMES.includes(score) === isTime ? result.target : undefined;

/**
 * The part paced for capacities nearer and nearer to the one that makes the target. How a result answers to the capacity is taken from the
 * last two tries: work bound by sets answers little. The try that comes nearest is the one returned.
 */
function searched(
  own: Paced,
  wanted: Wanted,
  paceAs: (capacity: (own: Capacity) => Capacity) => PacedPart,
): Paced {
  let [nearest, last] = [own, own];
  let [slower, answers] = [1, 1];
  for (let tries = 0; tries < TRIES && offBy(nearest, wanted) > 0; tries += 1) {
    const value = wanted.of(last);
    const ratio = value === undefined ? STEP : wanted.isTime ? wanted.asked / value : value / wanted.asked;
    const next = Math.min(FURTHEST, Math.max(1 / FURTHEST, slower * ratio ** (1 / answers)));
    if (next === slower) break;
    const paced = paceAs((capacity) => asIf(capacity, next));
    if (paced.kind === "not-paced") break;
    const now = wanted.of(paced);
    if (value !== undefined && now !== undefined) {
      const answered = ((wanted.isTime ? 1 : -1) * Math.log(now / value)) / Math.log(next / slower);
      answers = Math.min(MOST_ANSWER, Math.max(LEAST_ANSWER, answered));
    }
    [slower, last] = [next, paced];
    if (offBy(paced, wanted) < offBy(nearest, wanted)) nearest = paced;
  }
  return nearest;
}

/** How far a result is from the one wanted, both rounded; a result of another kind is farthest. */
function offBy(paced: Paced, { asked, of }: Wanted): number {
  const value = of(paced);
  return value === undefined ? Number.POSITIVE_INFINITY : Math.abs(Math.round(value) - Math.round(asked));
}

/** The athlete when steady work takes `slower` times as long, with the sets and the fastest cycles they have. */
function asIf(own: Capacity, slower: number): Capacity {
  const other = own.slowedBy(slower);
  return {
    ...other,
    of: (task) => {
      const [found, real] = [other.of(task), own.of(task)];
      if ("missing" in found || "missing" in real) return real;
      return { ...found, fastest: real.fastest, unbroken: real.unbroken, possible: real.possible };
    },
    slowedBy: (factor) => asIf(own.slowedBy(factor), slower),
  };
}

/** The plan of the target with the days of the own numbers: none ends better than the target, however good. */
function aimedAt(paced: Paced, own: Paced, value: number, isTime: boolean): Paced {
  const worse = (one: number): number => (isTime ? Math.max(one, value) : Math.min(one, value));
  const { result, chanceOfFinishing, gates } = own.pacing;
  const ofTheOwn = TIMES.includes(own.pacing.score) === isTime;
  const range = ofTheOwn ? result : paced.pacing.result;
  const pacing = { ...paced.pacing };
  // These are of the athlete the plan pretends; what stands in their place is of the own numbers.
  delete pacing.margin;
  delete pacing.chanceOfFinishing;
  delete pacing.gates;
  return {
    ...paced,
    pacing: {
      ...pacing,
      ...(chanceOfFinishing === undefined ? {} : { chanceOfFinishing }),
      ...(gates === undefined ? {} : { gates }),
      result: { target: value, cautious: worse(range.cautious), middle: worse(range.middle), hopeful: value },
    },
    days: ofTheOwn ? own.days.map(worse) : paced.days,
    finish:
      isTime && ofTheOwn ? { ...own.finish, mean: laterOf(own.finish.mean, paced.finish.mean) } : own.finish,
  };
}

const laterOf = <T extends number>(one: T, other: T): T => (one > other ? one : other);

/** What a target means beside the own numbers: on how many days they come to it, and what a day on which they do not would cost. */
function meaning(own: Paced, asked: number, isTime: boolean, beginning: number): Aimed {
  const { target } = own.pacing.result;
  const comparable = TIMES.includes(own.pacing.score) === isTime;
  const there = own.days.filter((day) => (isTime ? day <= asked : day >= asked)).length;
  const faster = target / asked - 1;
  const ifTried = isTime && comparable && faster > 0 ? own.hasty(faster, beginning).at(-1) : undefined;
  return {
    asked,
    own: target,
    chance: comparable ? there / Math.max(1, own.days.length) : (own.pacing.chanceOfFinishing ?? 0),
    ...(ifTried === undefined ? {} : { ifTried }),
  };
}

const told = (own: Paced, not: NotSet): Paced => ({
  ...own,
  word: { ...own.word, notSet: [...(own.word?.notSet ?? []), not] },
});
