import type { CoachWord, TargetWord } from "../../models/coach-word.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { Part, Step, Workout } from "../../models/workout.ts";
import { sayTime } from "../quantities/time.ts";

/** What is wrong in a coach's word beside its workout; `entry` is the entry it stands in. */
export type WordTrouble = {
  readonly entry: string;
  readonly found: string;
  readonly problem: string;
  readonly allowed?: string;
  readonly remedy: string;
};

/** What of a word contradicts itself or has nothing in the workout it could be about. */
export const coachWordTroubles = (
  word: CoachWord,
  workout: Workout,
  movements: ReadonlyMap<string, Movement>,
): readonly WordTrouble[] => [
  ...(workout.parts.some(isLifted) ? troublesOfLoads(word) : troublesWithoutLift(word)),
  ...troublesOfTarget(word, workout),
  ...troublesOfFirstRound(word, workout),
  ...troublesOfMovements(word, workout, movements),
];

function troublesOfLoads({ opener, jump, heaviest }: CoachWord): readonly WordTrouble[] {
  const alone: readonly WordTrouble[] =
    jump !== undefined && opener === undefined
      ? [
          {
            entry: "up by",
            found: "up by",
            problem: "fixed steps need a load to open with",
            remedy: "Add `open with:` and the first load.",
          },
        ]
      : [];
  if (opener === undefined || heaviest === undefined || inKilograms(opener) <= inKilograms(heaviest))
    return alone;
  return [
    ...alone,
    {
      entry: "heaviest",
      found: `${heaviest.value} ${heaviest.unit}`,
      problem: "the first load is heavier than the heaviest allowed",
      allowed: `${opener.value} ${opener.unit} and more`,
      remedy: "Raise the heaviest load, or open lighter.",
    },
  ];
}

/** What can only be set of a lift for load. */
const OF_LIFTS = {
  opener: "open with",
  jump: "up by",
  heaviest: "heaviest",
  lifts: "lifts",
  liftRest: "rest between lifts",
  firstLiftAfter: "first lift after",
} as const satisfies Partial<Record<keyof CoachWord, string>>;

function troublesWithoutLift(word: CoachWord): readonly WordTrouble[] {
  return (Object.keys(OF_LIFTS) as (keyof typeof OF_LIFTS)[])
    .filter((kind) => word[kind] !== undefined)
    .map((kind) => ({
      entry: OF_LIFTS[kind],
      found: OF_LIFTS[kind],
      problem: "nothing is lifted for load in this workout",
      allowed: "`target`, `first round`, `sets`, `rest between sets`, `pace`, `version`, `warm up`, `say`",
      remedy: "Leave it out.",
    }));
}

const isLifted = ({ clock, score }: Part): boolean => clock.kind === "max-load" || /load/.test(score.kind);

function troublesOfTarget({ target }: CoachWord, { parts }: Workout): readonly WordTrouble[] {
  if (target === undefined) return [];
  const found = sayTarget(target);
  const fitting = parts.filter((part) => fits(target, part));
  const names = fitting.map(({ name }) => name).join(", ");
  if (target.part !== undefined && fitting.every(({ name }) => name !== target.part)) {
    const known = parts.some(({ name }) => name === target.part);
    return [
      {
        entry: "target",
        found: `in part ${target.part}`,
        problem: known ? "this part is scored by something else" : "the workout has no part of this name",
        allowed: names === "" ? "a part that is scored so; here there is none" : names,
        remedy: "Name a part the target can be about.",
      },
    ];
  }
  if (fitting.length === 0) {
    const problem = "no part of this workout is scored so";
    return [
      {
        entry: "target",
        found,
        problem,
        allowed: sayScores(parts),
        remedy: "Write a target of such a score.",
      },
    ];
  }
  if (target.part !== undefined || fitting.length < 2) return [];
  const problem = "several parts are scored so, and the target can be of any of them";
  return [
    {
      entry: "target",
      found,
      problem,
      allowed: names,
      remedy: `Write \`in part ${fitting[0]?.name ?? ""}\` behind it, or another part.`,
    },
  ];
}

function fits(target: TargetWord, part: Part): boolean {
  const { clock, score } = part;
  if (target.kind === "load") return isLifted(part);
  const isTime = score.kind === "time" || score.kind === "slowest-interval";
  return clock.kind !== "max-load" && (target.kind === "time") === isTime;
}

const sayTarget = (target: TargetWord): string => {
  if (target.kind === "load") return `${target.load.value} ${target.load.unit}`;
  if (target.kind === "time") return sayTime(target.time);
  return target.kind === "amount" ? `${target.amount} reps` : `${target.rounds} rounds ${target.reps} reps`;
};

const sayScores = (parts: readonly Part[]): string =>
  [
    ...new Set(
      parts.map((part) => (part.clock.kind === "max-load" ? "load" : part.score.kind.replaceAll("-", " "))),
    ),
  ].join(", ");

function troublesOfFirstRound({ firstRound }: CoachWord, { parts }: Workout): readonly WordTrouble[] {
  const paced = parts.filter(({ clock }) => clock.kind !== "max-load");
  if (firstRound === undefined || (firstRound.part === undefined && paced.length === 1)) return [];
  if (paced.some(({ name }) => name === firstRound.part)) return [];
  return [
    {
      entry: "first round",
      found: firstRound.part === undefined ? "first round" : `in part ${firstRound.part}`,
      problem:
        paced.length === 0
          ? "this workout has no rounds"
          : firstRound.part === undefined
            ? "which part is meant cannot be told"
            : "no part with rounds has this name",
      allowed: paced.map(({ name }) => `in part ${name}`).join(", "),
      remedy: paced.length === 0 ? "Leave it out." : "Write one of them behind the time.",
    },
  ];
}

function troublesOfMovements(
  { sets = [], paces = [] }: CoachWord,
  { parts }: Workout,
  movements: ReadonlyMap<string, Movement>,
): readonly WordTrouble[] {
  const nameOf = (id: string): string => movements.get(id)?.name ?? id;
  const known = new Set(parts.flatMap(({ work }) => Object.values(work).flatMap(movementsIn)));
  const named = [
    ...sets.map(({ movement, sizes }) => ({ movement, entry: sizes ? "sets" : "rest between sets" })),
    ...paces.map(({ movement }) => ({ movement, entry: "pace" })),
  ];
  return named
    .filter(({ movement }) => !known.has(movement))
    .map(({ movement, entry }) => ({
      entry,
      found: nameOf(movement),
      problem: "no line of this workout has this movement",
      allowed: [...known].map(nameOf).join(", "),
      remedy: "Write a movement of the workout.",
    }));
}

const movementsIn = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap((step) => {
    if (step.kind === "effort") return step.pieces.flatMap((piece) => piece.movements);
    return step.kind === "block" ? movementsIn(step.steps) : [];
  });
