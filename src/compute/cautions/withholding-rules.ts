import type { Limit } from "../../models/athlete.ts";
import type { CautionEntry } from "../../models/library.ts";
import type { Movement } from "../../models/movement.ts";
import type { Cause } from "./causes-of.ts";
import type { Reason } from "./withholding.ts";

/** A stress that speaks of how heavy a lift is, not of a movement: it rules out lifting for load and nothing else. */
const MAXIMAL = "maximal-lift";

/** A stress of a way to do a movement: kept out, the movement is done strictly, at the pace and in the sets of that. */
export const KIPPING = "kipping";

type Rules = {
  /** Movements that are cleared although a stated limit would keep them out by what they do. */
  readonly cleared: ReadonlySet<string>;
  /** Stresses kept out by a caution, which clearing by the athlete does not lift. */
  readonly byCaution: ReadonlySet<string>;
  readonly workout?: Reason;
  readonly maxLift?: Reason;
  readonly stresses: ReadonlyMap<string, Reason>;
  readonly movements: ReadonlyMap<string, Reason>;
};

export function rulesFrom(
  limits: readonly Limit[],
  held: readonly { readonly entry: CautionEntry; readonly because: Cause[] }[],
): Rules {
  const stresses = new Map<string, Reason>();
  const movements = new Map<string, Reason>();
  let workout: Reason | undefined;
  let maxLift: Reason | undefined;
  for (const limit of limits) {
    const reason = reasonOf(limit);
    for (const stress of limit.avoid) if (!stresses.has(stress)) stresses.set(stress, reason);
    for (const id of limit.without) if (!movements.has(id)) movements.set(id, reason);
  }
  for (const { entry, because } of held) {
    for (const { what, word, ask } of entry.withholds) {
      const reason = { kind: "caution" as const, title: entry.title, because, ask };
      if (what === "workout") workout ??= reason;
      if (what === "max-lift") maxLift ??= reason;
      if (what === "stress" && word !== undefined && !stresses.has(word)) stresses.set(word, reason);
      if (what === "movement" && word !== undefined && !movements.has(word)) movements.set(word, reason);
    }
  }
  maxLift ??= stresses.get(MAXIMAL);
  return {
    stresses,
    movements,
    cleared: new Set(limits.flatMap((limit) => limit.cleared ?? [])),
    byCaution: new Set(
      held.flatMap(({ entry }) =>
        entry.withholds.flatMap(({ what, word }) => (what === "stress" ? (word ?? []) : [])),
      ),
    ),
    ...(workout !== undefined && { workout }),
    ...(maxLift !== undefined && { maxLift }),
  };
}

/** A stated limit as a reason. The athlete's own words are shown elsewhere and not used here. */
const reasonOf = ({ joint, condition }: Limit): Reason => ({
  kind: "limit",
  ...(joint !== undefined && { joint }),
  ...(condition !== undefined && { condition }),
});

export function reasonAgainst(movement: Movement | undefined, id: string, rules: Rules): Reason | undefined {
  const byName = rules.movements.get(id);
  if (byName !== undefined) return byName;
  const stress = movement?.stresses.find(
    (each) =>
      each !== MAXIMAL && rules.stresses.has(each) && (!rules.cleared.has(id) || rules.byCaution.has(each)),
  );
  return stress === undefined ? undefined : rules.stresses.get(stress);
}

/** The strict movement that one becomes where kipping is kept out, unless it is cleared; undefined where it stays as it is. */
export function strictForm(
  movement: Movement | undefined,
  { stresses, cleared, byCaution }: Rules,
  movements: ReadonlyMap<string, Movement>,
): Movement | undefined {
  if (movement?.withoutKipping === undefined || !stresses.has(KIPPING)) return undefined;
  const isCleared = cleared.has(movement.id) && !byCaution.has(KIPPING);
  return isCleared ? undefined : movements.get(movement.withoutKipping);
}
