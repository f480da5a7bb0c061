import type { Plan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { SET_UP_CONSTANTS } from "./constants.ts";
import { isSameStandard } from "./same-standard.ts";

type Standard = Plan["standards"][number];
type Numbers = Readonly<Record<keyof typeof SET_UP_CONSTANTS, number>>;

/** The word that stands in for a movement where a standard is the event's own. */
const EVENT = "event";

/**
 * The standards of a workout: those that cost this athlete reps first, then the event's own, then the others of each
 * movement, the most often lost first. What the event says in its own words is not said again in the library's.
 *
 * Reps are lost where many are done under strain: the exposure of a movement is its reps times how near its sets and
 * its load come to the athlete's best, more where it limits them; a lift for load counts as many reps. The first
 * standards of the most exposed movements are marked, further ones of them where there are fewer movements. Where no reps are
 * counted (machines, running) none is.
 */
export function standardsOf(
  workout: Pick<Workout, "standards">,
  movements: readonly AtMovement[],
  overrides?: Readonly<Record<string, number>>,
): readonly Standard[] {
  const numbers = withOverrides(SET_UP_CONSTANTS, overrides);
  const known = movements.flatMap(({ movement }) =>
    movement.standards.slice(0, numbers.standardsOfMovement).map((standard, rank) => {
      const names = [movement.name, movement.plural];
      const others = movements.filter((at) => at.movement !== movement).map((at) => at.movement.name);
      const saidBy = workout.standards.find((own) => isSameStandard(own, standard, names, others));
      return { movement, standard, rank, saidBy };
    }),
  );
  const exposed = movements
    .map((at) => ({ id: at.movement.id, exposure: exposureOf(at, numbers) }))
    .filter((each) => each.exposure > 0)
    .sort((one, other) => other.exposure - one.exposure)
    .map((each) => each.id);
  const costly = known
    .filter(({ movement }) => exposed.includes(movement.id))
    .sort(
      (one, other) =>
        one.rank - other.rank || exposed.indexOf(one.movement.id) - exposed.indexOf(other.movement.id),
    )
    .slice(0, numbers.costlyStandards);
  const told = (each: (typeof known)[number], costsThisAthlete: boolean): Standard =>
    each.saidBy === undefined
      ? {
          movement: each.movement.id,
          say: `${sentenceCase(each.movement.name)}: ${asClause(each.standard)}`,
          costsThisAthlete,
        }
      : { movement: EVENT, say: withStop(each.saidBy), costsThisAthlete };
  const all = [
    ...costly.map((each) => told(each, true)),
    ...workout.standards.map((say) => ({ movement: EVENT, say: withStop(say), costsThisAthlete: false })),
    ...known.filter((each) => !costly.includes(each)).map((each) => told(each, false)),
  ];
  return all.filter(({ say }, at) => all.findIndex((other) => other.say === say) === at);
}

function exposureOf({ movement, situation }: AtMovement, numbers: Numbers): number {
  const isLifted = situation.facts.lifted?.includes("yes") === true;
  if (movement.counts[0] !== "reps" || movement.standards.length === 0) return 0;
  const reps = isLifted ? numbers.repsOfALift : (situation.numbers["total-amount"] ?? 0);
  const strain = Math.max(
    numbers.leastStrain,
    situation.numbers["set-share"] ?? 0,
    situation.numbers["load-share"] ?? 0,
  );
  const limits = situation.facts.limiter?.includes("yes") === true ? numbers.limiterWeight : 1;
  return reps * strain * limits;
}

const sentenceCase = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** A standard after a colon: a small first letter, a full stop at the end. */
const asClause = (standard: string): string => withStop(standard.charAt(0).toLowerCase() + standard.slice(1));

const withStop = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
