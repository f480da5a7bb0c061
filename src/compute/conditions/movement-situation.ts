import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { daysBetween } from "../capacity/age-of-result.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { SITUATION_CONSTANTS } from "./constants.ts";
import { lengthOf, type PlannedPart, type PlannedRow, taxedBy, workRowsOf, yesOrNo } from "./situation-of.ts";
import { type Situation, withMore } from "./situation.ts";
import { needsOf } from "./needs.ts";
import type { UsualAmounts } from "./usual-amounts.ts";

/** What the athlete can do, as far as conditions ask: the models of capacity stand behind these. */
export type Abilities = {
  /** Best lift today and what it rests on; undefined where a best lift means nothing. */
  readonly best: (movement: string) => { readonly kilograms: number; readonly basis: Basis } | undefined;
  /** Units in one set when fresh; where it is not known, the athlete's own best or the reference of the level is used. */
  readonly unbroken?: (movement: string) => number | undefined;
};
type Basis = "tested" | "estimated" | "related" | "level" | "assumed";

export type MovementSituationInput = {
  readonly situation: Situation;
  readonly movement: Movement;
  readonly movements: ReadonlyMap<string, Movement>;
  readonly athlete: Athlete;
  readonly date: IsoDate;
  readonly parts: readonly PlannedPart[];
  readonly abilities: Abilities;
  readonly usual?: UsualAmounts;
  /** One load of several, kilograms: only what is done at it counts. Of all of them, the heaviest load counts. */
  readonly atLoad?: number;
  readonly overrides?: Readonly<Record<string, number>>;
};

/** One movement of a workout, or of one part of it, with the situation narrowed to it. */
export type AtMovement = {
  readonly movement: Movement;
  readonly situation: Situation;
  /** The part it is narrowed to; absent for the whole workout. */
  readonly part?: string;
  /** Where the part does it at several loads: those over the lightest, rising. `situation` is then at the lightest. */
  readonly heavier?: readonly {
    readonly situation: Situation;
    readonly load: NonNullable<PlannedRow["load"]>;
  }[];
};

/**
 * The situation of a workout narrowed to one movement of it: its amounts, load and pace for this athlete, what it
 * taxes and stresses, and how the athlete's bests compare.
 */
export function atMovement(input: MovementSituationInput): Situation {
  const { situation, movement, parts, abilities, overrides } = input;
  const { taxedFrom } = withOverrides(SITUATION_CONSTANTS, overrides);
  const limiters = parts.flatMap((part) => part.pacing?.roles.limiter ?? []);
  const basis = abilities.best(movement.id)?.basis;
  return withMore(situation, {
    numbers: { ...amountNumbers(input), ...loadNumbers(input) },
    facts: {
      planned: plannedAs(input),
      ...placeIn(input),
      "set-known": [yesOrNo(input.athlete.unbroken.some((each) => each.movement === movement.id))],
      needs: needsOf(movement),
      "movement-kind": [movement.kind],
      taxes: taxedBy(movement, taxedFrom),
      stress: movement.stresses,
      lifted: [yesOrNo(liftsOf(parts).some((lift) => isLiftOf(lift, movement.id)))],
      "needs-catching": [yesOrNo(movement.loading?.needsCatching === true)],
      limiter: [yesOrNo(limiters.includes(movement.name) || limiters.includes(movement.plural))],
      ...(basis !== undefined && {
        "best-known": [yesOrNo(isOwn(basis))],
        "best-guessed": [yesOrNo(basis === "level" || basis === "assumed")],
      }),
    },
  });
}

/** How the rows of a movement are planned; a lift for load and visits of one rep are one at a time by nature. */
function plannedAs(input: MovementSituationInput): readonly string[] {
  const rows = rowsOf(input);
  const isReps = rows.some((row) => row.unit === "reps");
  const amounts = rows.map((row) => row.amount);
  if (rows.length === 0 || (isReps && Math.max(...amounts) <= 1)) return ["one"];
  const broken = rows.filter((row) => row.sets.length > 1);
  if (broken.length === 0) return ["unbroken"];
  const sets = broken.flatMap((row) => row.sets.map((set) => set.amount));
  const isMostlyOne = sets.filter((amount) => amount <= 1).length * 2 > sets.length;
  return [isReps && isMostlyOne ? "singles" : "sets"];
}

function amountNumbers(input: MovementSituationInput): Situation["numbers"] {
  const { movement, date, usual, parts } = input;
  const rows = rowsOf(input).filter((row) => row.unit === movement.counts[0]);
  const visits = rows.map((row) => row.amount);
  const amount = visits.length === 0 ? undefined : Math.max(...visits);
  const here = visits.reduce((sum, each) => sum + each, 0);
  const total = rowsAtAnyLoad(input)
    .filter((row) => row.unit === movement.counts[0])
    .reduce((sum, row) => sum + row.amount, 0);
  const unbroken = unbrokenOf(input);
  const used = usual?.get(movement.id);
  const sets = rows.flatMap((row) => row.sets.map((set) => set.amount));
  const seconds = rows.reduce((sum, row) => sum + (row.secondsPerUnit ?? 0) * row.amount, 0);
  return {
    ...(unbroken !== undefined && { unbroken }),
    ...(amount !== undefined && { amount, "total-amount": total }),
    ...(amount !== undefined && unbroken !== undefined && { "set-share": amount / unbroken }),
    ...(seconds > 0 && { "seconds-per-unit": seconds / here }),
    ...(seconds > 0 && { "pace-share": seconds / here / movement.pace.steady.regular }),
    ...(parts.length === 1 && rows.length > 0 && { visits: rows.length }),
    ...(sets.length > 0 && { "planned-set": Math.max(...sets) }),
    ...partMinutes(input),
    ...(used !== undefined && { "usual-amount": used.amount }),
    ...(used !== undefined && amount !== undefined && { "times-usual": total / used.amount }),
    ...(used?.last !== undefined && { "days-unaccustomed": daysBetween(used.last, date) }),
  };
}

/** Whether the part at hand begins with the movement, and whether it ends with it. A plan cut short at a wall has no known end. */
function placeIn({ parts, movement }: MovementSituationInput): Situation["facts"] {
  const [only] = parts;
  const rows = parts.length === 1 ? workRowsOf(parts) : [];
  if (rows.length === 0) return {};
  const isCut = only?.pacing?.whenStopped?.atWall === true;
  return {
    place: [
      ...(rows[0]?.movement === movement.id ? ["first"] : []),
      ...(!isCut && rows.at(-1)?.movement === movement.id ? ["last"] : []),
    ],
  };
}

/** Planned length of the part at hand, where one is; rests and other parts are not in it. */
function partMinutes({ parts }: MovementSituationInput): Situation["numbers"] {
  const [only] = parts;
  const duration = parts.length === 1 && only !== undefined ? lengthOf(only) : undefined;
  return duration === undefined ? {} : { "part-minutes": duration / 60 };
}

/** Of a lift for load the load aimed at counts: how it is caught is decided there, not by the opener. */
function loadNumbers(input: MovementSituationInput): Situation["numbers"] {
  const { movement, parts, abilities } = input;
  const best = abilities.best(movement.id)?.kilograms;
  const lifted = liftsOf(parts).filter((lift) => isLiftOf(lift, movement.id));
  const ofBest = (load: AimedLoad): number | undefined =>
    best === undefined ? undefined : (load.kilograms * load.pieces) / best;
  const shares = [
    ...rowsOf(input).flatMap(({ load }) => (load && (load.shareOfBest ?? ofBest(load))) ?? []),
    ...(input.atLoad === undefined ? lifted : []).flatMap((lift) => {
      const load = aimedAt(lift);
      // A complex is told as a share of its own best, which is less than that of some of its movements alone.
      return (
        (load && (lift.others === undefined ? load.shareOfBest : undefined)) ?? (load && ofBest(load)) ?? []
      );
    }),
  ];
  const ratio = ratioToParent(input);
  return {
    ...(shares.length > 0 && { "load-share": Math.max(...shares) }),
    ...(ratio !== undefined && { "ratio-to-parent": ratio }),
  };
}

const rowsAtAnyLoad = ({ parts, movement }: MovementSituationInput): readonly PlannedRow[] =>
  workRowsOf(parts).filter((row) => row.movement === movement.id);

const rowsOf = (input: MovementSituationInput): readonly PlannedRow[] =>
  rowsAtAnyLoad(input).filter(({ load }) => input.atLoad === undefined || load?.kilograms === input.atLoad);

type PlannedLift = NonNullable<PlannedPart["lifting"]>["lifts"][number];
type AimedLoad = PlannedLift["attempts"][number]["load"];

/** Whether a movement is lifted in an attempt: alone, or within a complex. */
const isLiftOf = ({ movement, others = [] }: PlannedLift, id: string): boolean =>
  movement === id || others.includes(id);

const aimedAt = ({ attempts, target }: PlannedLift): AimedLoad | undefined =>
  (attempts[target - 1] ?? attempts.at(-1))?.load;

const liftsOf = (parts: readonly PlannedPart[]): readonly PlannedLift[] =>
  parts.flatMap((part) => part.lifting?.lifts ?? []);

function unbrokenOf({ athlete, abilities, movement }: MovementSituationInput): number | undefined {
  const own = athlete.unbroken.find((each) => each.movement === movement.id)?.reps;
  const unbroken = abilities.unbroken?.(movement.id) ?? own ?? movement.pace.unbroken[athlete.level];
  // Machines and running have no set that ends.
  return Number.isFinite(unbroken) ? unbroken : undefined;
}

/**
 * Best of a style over best of the general movement, from the athlete's own results only: best lifts where both are
 * lifts, else best unbroken sets. For the general movement itself, the highest ratio among its styles.
 */
function ratioToParent(input: MovementSituationInput): number | undefined {
  const { movement, movements } = input;
  if (movement.styleOf !== undefined) return ratioOf(movement.id, movement.styleOf, input);
  const styles = [...movements.values()].filter((each) => each.styleOf === movement.id);
  const ratios = styles.flatMap((style) => ratioOf(style.id, movement.id, input) ?? []);
  return ratios.length === 0 ? undefined : Math.max(...ratios);
}

function ratioOf(style: string, parent: string, { abilities, athlete }: MovementSituationInput) {
  const [own, general] = [abilities.best(style), abilities.best(parent)];
  if (own !== undefined && general !== undefined) {
    return isOwn(own.basis) && isOwn(general.basis) ? own.kilograms / general.kilograms : undefined;
  }
  const set = (id: string): number | undefined => athlete.unbroken.find((each) => each.movement === id)?.reps;
  const [ownSet, generalSet] = [set(style), set(parent)];
  return ownSet === undefined || generalSet === undefined || generalSet === 0
    ? undefined
    : ownSet / generalSet;
}

const isOwn = (basis: Basis): boolean => basis === "tested" || basis === "estimated";
