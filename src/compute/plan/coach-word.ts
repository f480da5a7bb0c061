import { namesLifted } from "../../models/choose-field.ts";
import type { Athlete } from "../../models/athlete.ts";
import type { CoachWord } from "../../models/coach-word.ts";
import type { Movement } from "../../models/movement.ts";
import type { NotSet } from "../../models/plan/coach-word.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { AttemptBounds, Part, Workout } from "../../models/workout.ts";
import type { BestLift } from "../capacity/best-lift.ts";
import type { PartWord } from "../pacing/pace-with-word.ts";

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
  const word = Object.assign({}, ...all) as CoachWord & { for?: string };
  delete word.for;
  return word;
}

/** The athlete and the workout with the word in them, and what of it cannot be. */
type WithWord = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly notSet: readonly NotSet[];
};

/** Who lifts, with the library at hand. */
export type Lifter = {
  readonly division: string;
  readonly movements: ReadonlyMap<string, Movement>;
  readonly bestLift: (movement: string) => BestLift | undefined;
};

/**
 * The athlete and the workout with what the coach set of lifts, versions and warm-up. A load to open with that is more than the
 * best known is not set, and neither are steps from it: that is told, not bent. Limits stand in the athlete and are untouched.
 */
export function withCoachWord(athlete: Athlete, workout: Workout, word: CoachWord, lifter: Lifter): WithWord {
  const notSet: NotSet[] = [];
  const parts = workout.parts.map((part) => {
    if (part.clock.kind !== "max-load" && part.attempts === undefined) return part;
    const best = bestOf(athlete, part, lifter);
    const isOver = word.opener !== undefined && best !== undefined && inKilograms(word.opener) > best;
    if (isOver) notSet.push({ kind: "opener-over-best", opener: inKilograms(word.opener), best });
    const own: AttemptBounds = {
      ...(word.opener === undefined || isOver ? {} : { opener: word.opener }),
      ...(word.jump === undefined || isOver ? {} : { jump: word.jump }),
      ...(word.heaviest === undefined ? {} : { heaviest: word.heaviest }),
      ...(word.lifts === undefined ? {} : { attempts: word.lifts }),
      ...(word.liftRest === undefined ? {} : { smallestRest: word.liftRest }),
      ...(word.firstLiftAfter === undefined ? {} : { firstRest: word.firstLiftAfter }),
    };
    const attempts = Object.fromEntries(
      workout.divisions.map((division) => [division, { ...part.attempts?.[division], ...own }]),
    );
    return Object.keys(own).length === 0 ? part : { ...part, attempts };
  });
  return {
    athlete: {
      ...athlete,
      prefers: { ...athlete.prefers, ...word.prefers },
      ...(word.warmUp === undefined ? {} : { warmUpTime: word.warmUp }),
    },
    workout: {
      ...workout,
      parts,
      ...(word.target?.kind === "load"
        ? { objective: "chance-of-load", objectiveLoad: word.target.load }
        : {}),
    },
    notSet,
  };
}

/** The most known of the lift of a part, kilograms: an old best counts for less today, but nobody need ask about a load that was lifted. */
function bestOf(athlete: Athlete, part: Part, { division, movements, bestLift }: Lifter): number | undefined {
  const [lift] = namesLifted(part, division, movements);
  const known = lift === undefined ? undefined : bestLift(lift)?.kilograms;
  if (known === undefined) return undefined;
  const lifted = athlete.lifts.filter(({ movement, added }) => movement === lift && added !== true);
  return Math.max(known, ...lifted.map(({ load }) => inKilograms(load)));
}

/** What a word says of how one part is paced; undefined where it says nothing of it. */
export function partWordOf(word: CoachWord | undefined, part: Part): PartWord | undefined {
  if (word === undefined) return undefined;
  const { sets, paces, firstRound, target } = word;
  const isHere = (named: { readonly part?: string } | undefined): boolean =>
    named !== undefined && (named.part === undefined || named.part === part.name);
  const aims =
    target !== undefined && target.kind !== "load" && isHere(target) && isOfKind(target.kind, part);
  const holds = firstRound !== undefined && isHere(firstRound) && part.clock.kind !== "max-load";
  if (!aims && !holds && sets === undefined && paces === undefined) return undefined;
  return {
    way: { ...(sets === undefined ? {} : { sets }), ...(paces === undefined ? {} : { paces }) },
    ...(holds ? { firstRound: firstRound.time } : {}),
    ...(aims ? { target } : {}),
  };
}

/** Whether a part without a name behind the target can be meant: a time for a part scored by it, an amount for others. */
function isOfKind(kind: "time" | "amount" | "rounds", { score, clock }: Part): boolean {
  if (clock.kind === "max-load") return false;
  const isTime = score.kind === "time" || score.kind === "slowest-interval";
  return (kind === "time") === isTime;
}
