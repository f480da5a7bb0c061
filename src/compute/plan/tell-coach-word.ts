import type { CoachWord } from "../../models/coach-word.ts";
import type { NotSet, PacedWord } from "../../models/plan/coach-word.ts";
import type { PartPlan, Plan } from "../../models/plan/plan.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { PlannedPart } from "./planned-part.ts";

/** A plan with the parts it was put together from. */
export type PlanAndParts = { readonly plan: Plan; readonly parts: readonly PlannedPart[] };

type Told = NonNullable<Plan["coachWord"]>;

const KINDS = [
  "target",
  "firstRound",
  "sets",
  "paces",
  "opener",
  "jump",
  "heaviest",
  "lifts",
  "liftRest",
  "firstLiftAfter",
  "prefers",
  "warmUp",
] as const satisfies readonly (keyof CoachWord)[];

/**
 * What the word changed, beside the plan without it.
 *
 * @param alone the parts planned with one thing of the word only
 */
export function tellCoachWord(
  word: CoachWord,
  withWord: PlanAndParts,
  without: Plan,
  notSet: readonly NotSet[],
  alone: (one: CoachWord) => readonly PlannedPart[],
): Told {
  const own = (name: string): PartPlan | undefined => without.parts.find((part) => part.name === name);
  const pacing = oneByOne(word).map((one) => ({ one, parts: alone(one) }));
  return {
    ...(word.say === undefined ? {} : { say: word.say }),
    sets: KINDS.filter((kind) => word[kind] !== undefined),
    lifts: withWord.plan.parts.flatMap((part) => tellLift(word, part, own(part.name))),
    paced: withWord.parts.flatMap(({ plan, paced }) => {
      const before = own(plan.name)?.pacing;
      if (paced?.word === undefined || plan.pacing === undefined || before === undefined) return [];
      const { aimed, first } = paced.word;
      const told: PacedWord = {
        part: plan.name,
        score: plan.pacing.score,
        ...(plan.pacing.perRound === undefined ? {} : { perRound: plan.pacing.perRound }),
        target: plan.pacing.result.target,
        targetWithout: before.result.target,
        ...(aimed === undefined ? {} : { aimed }),
        ...(first === undefined ? {} : { first }),
        costs: pacing.flatMap(({ one, parts }) => costOf(one, parts, before, plan)),
      };
      return [told];
    }),
    notSet: [...notSet, ...withWord.parts.flatMap(({ paced }) => paced?.word?.notSet ?? [])],
  };
}

/** Each thing of a word that costs time by itself, as a word of its own. */
const oneByOne = ({ sets = [], paces = [], firstRound }: CoachWord): readonly CoachWord[] => [
  ...sets.map((one) => ({ sets: [one] })),
  ...paces.map((one) => ({ paces: [one] })),
  ...(firstRound === undefined ? [] : [{ firstRound }]),
];

/** What cannot be costs nothing, and is told as not set. */
function costOf(
  one: CoachWord,
  parts: readonly PlannedPart[],
  before: Pacing,
  { name }: PartPlan,
): PacedWord["costs"] {
  const part = parts.find(({ plan }) => plan.name === name);
  const after = part?.plan.pacing;
  if (after === undefined || (part?.paced?.word?.notSet.length ?? 0) > 0) return [];
  const [set] = one.sets ?? [];
  const [pace] = one.paces ?? [];
  const movement = set?.movement ?? pace?.movement;
  const row = after.rows.find((each) => each.movement === movement);
  if (movement !== undefined && row === undefined) return [];
  const kind = pace ? "pace" : set ? (set.sizes ? "sets" : "rests") : "first-round";
  return [
    {
      kind,
      ...(row ? { name: row.name } : {}),
      ...(set?.sizes ? { sizes: [...set.sizes] } : {}),
      ...(set?.rest === undefined ? {} : { rest: set.rest }),
      ...difference(before, after),
    },
  ];
}

type Pacing = NonNullable<PartPlan["pacing"]>;

const isTime = (score: Pacing["score"]): boolean => score === "time" || score === "slowest-interval";

/** By how much a plan is worse than another: of results where they show it, else of the clock at the end of the last round both do. */
function difference(before: Pacing, after: Pacing): { readonly cost: number; readonly inSeconds: boolean } {
  const results = after.result.target - before.result.target;
  if (after.score === before.score && isTime(before.score)) return { cost: results, inSeconds: true };
  if (after.score === before.score && Math.abs(results) >= 1) return { cost: -results, inSeconds: false };
  const whole = (pacing: Pacing): Pacing["rounds"] =>
    pacing.rounds.filter(({ lastRow }) => pacing.rows[lastRow]?.prescribed === undefined);
  const ends = new Map(whole(before).map(({ round, end }) => [round, end]));
  const last = whole(after).findLast(({ round }) => ends.has(round));
  return { cost: last === undefined ? 0 : last.end - (ends.get(last.round) ?? last.end), inSeconds: true };
}

function tellLift(word: CoachWord, part: PartPlan, without: PartPlan | undefined): Told["lifts"] {
  const [set, own] = [part.lifting?.lifts[0], without?.lifting?.lifts[0]];
  if (!set || !own) return [];
  const { lifting } = part;
  const heaviest = word.heaviest === undefined ? undefined : inKilograms(word.heaviest);
  const last = own.attempts.at(-1)?.load.kilograms;
  const aimed = word.target?.kind === "load" ? inKilograms(word.target.load) : undefined;
  const chance = lifting?.objectiveChance;
  return [
    {
      part: part.name,
      expected: set.expected.middle,
      expectedWithout: own.expected.middle,
      ...firstOf(set, "opener"),
      ...firstOf(own, "openerWithout"),
      ...(heaviest === undefined ? {} : { heaviest }),
      ...(heaviest === undefined || last === undefined ? {} : { heaviestWithout: last }),
      ...(aimed === undefined || chance === undefined ? {} : { aimed: { load: aimed, chance } }),
    },
  ];
}

type Lift = NonNullable<Plan["parts"][number]["lifting"]>["lifts"][number];

function firstOf<K extends string>({ attempts }: Lift, name: K): { readonly [key in K]?: number } {
  const [first] = attempts;
  return (first === undefined ? {} : { [name]: first.load.kilograms }) as { readonly [key in K]?: number };
}
