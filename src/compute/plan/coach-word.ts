import type { Athlete } from "../../models/athlete.ts";
import type { CoachWord } from "../../models/coach-word.ts";
import type { Plan } from "../../models/plan/plan.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { AttemptBounds, Part, Workout } from "../../models/workout.ts";

/** What the coach set for this athlete here: the word for everyone, over it that for the level, over it their own. */
export function coachWordFor(athlete: Athlete, workout: Workout): CoachWord | undefined {
  const words = workout.words ?? [];
  const all = [
    ...words.filter((word) => word.for === "everyone"),
    ...words.filter((word) => word.for === athlete.level),
    ...words.filter((word) => word.for === athlete.id),
    ...(athlete.words?.[workout.id] ? [athlete.words[workout.id]] : []),
  ];
  if (all.length === 0) return undefined;
  const { opener, jump, lifts, liftRest, warmUp, say } = Object.assign({}, ...all) as CoachWord;
  return {
    ...(opener === undefined ? {} : { opener }),
    ...(jump === undefined ? {} : { jump }),
    ...(lifts === undefined ? {} : { lifts }),
    ...(liftRest === undefined ? {} : { liftRest }),
    ...(warmUp === undefined ? {} : { warmUp }),
    ...(say === undefined ? {} : { say }),
  };
}

/**
 * The athlete and the workout with the coach's word in them. A load to open with that is more than the best known is not
 * set, and neither are steps from it: that is told, not bent. Limits stand in the athlete and are untouched.
 */
export function withCoachWord(
  athlete: Athlete,
  workout: Workout,
  word: CoachWord,
  /** The best lift of the part today, kilograms; nothing where none is known. */
  bestOf: (part: Part) => number | undefined,
): { readonly athlete: Athlete; readonly workout: Workout; readonly overBest: readonly number[] } {
  const overBest: number[] = [];
  const parts = workout.parts.map((part) => {
    if (part.clock.kind !== "max-load" && part.attempts === undefined) return part;
    const best = bestOf(part);
    const isOver = word.opener !== undefined && best !== undefined && inKilograms(word.opener) > best;
    if (isOver) overBest.push(best);
    const own: AttemptBounds = {
      ...(word.opener === undefined || isOver ? {} : { opener: word.opener }),
      ...(word.jump === undefined || isOver ? {} : { jump: word.jump }),
      ...(word.lifts === undefined ? {} : { attempts: word.lifts }),
      ...(word.liftRest === undefined ? {} : { smallestRest: word.liftRest }),
    };
    const attempts = Object.fromEntries(
      workout.divisions.map((division) => [division, { ...part.attempts?.[division], ...own }]),
    );
    return Object.keys(own).length === 0 ? part : { ...part, attempts };
  });
  return {
    athlete: word.warmUp === undefined ? athlete : { ...athlete, warmUpTime: word.warmUp },
    workout: { ...workout, parts },
    overBest,
  };
}

/** What the word changed, beside the plan without it. */
export function tellCoachWord(
  word: CoachWord,
  withWord: Plan,
  without: Plan,
  overBest: readonly number[],
): NonNullable<Plan["coachWord"]> {
  const lifts = withWord.parts.flatMap((part) => {
    const set = part.lifting?.lifts[0];
    const own = without.parts.find(({ name }) => name === part.name)?.lifting?.lifts[0];
    if (!set || !own) return [];
    return [
      {
        part: part.name,
        expected: set.expected.middle,
        expectedWithout: own.expected.middle,
        ...firstOf(set, "opener"),
        ...firstOf(own, "openerWithout"),
      },
    ];
  });
  return {
    ...(word.say === undefined ? {} : { say: word.say }),
    sets: (["opener", "jump", "lifts", "liftRest", "warmUp"] as const).filter(
      (kind) => word[kind] !== undefined,
    ),
    lifts,
    ...(word.opener !== undefined && overBest[0] !== undefined
      ? { openerOverBest: { opener: inKilograms(word.opener), best: overBest[0] } }
      : {}),
  };
}

type Lift = NonNullable<Plan["parts"][number]["lifting"]>["lifts"][number];

function firstOf<K extends string>({ attempts }: Lift, name: K): { readonly [key in K]?: number } {
  const [first] = attempts;
  return (first === undefined ? {} : { [name]: first.load.kilograms }) as { readonly [key in K]?: number };
}
