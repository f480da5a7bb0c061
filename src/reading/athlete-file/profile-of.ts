import type * as z from "zod";
import type { WrittenAthlete, WrittenProfile } from "./athlete-schema.ts";
import { sexOfDivision } from "../../models/sex-words.ts";
import type { AthleteContext } from "./context.ts";
import { checkCannot, checkMassAgainstLifts, checkNoteAgainstLimits } from "./cross-checks.ts";

/** An athlete of the entries of a profile, which are checked against one another; what is left out gets its usual value. */
export function profileOf(
  written: WrittenProfile,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): WrittenAthlete {
  const lifts = written.lifts?.lifts ?? [];
  const unbroken = written.unbroken?.unbroken ?? [];
  const efforts = written.efforts ?? [];
  const cannot = [
    ...(written.cannot ?? []),
    ...(written.lifts?.cannot ?? []),
    ...(written.unbroken?.cannot ?? []),
  ];
  const done = [
    ...lifts.map(({ movement }) => ({ movement, where: "lifts" })),
    ...efforts.map(({ movement }) => ({ movement, where: "efforts" })),
    ...unbroken.map(({ movement }) => ({ movement, where: "unbroken" })),
  ];
  const nameOf = (id: string): string => {
    const found = context.findMovement(id);
    return found.kind === "found" ? found.movement.name : id;
  };
  checkMassAgainstLifts(written["body mass"], lifts, nameOf, ctx);
  checkNoteAgainstLimits(written.note, written.limits, ctx);
  checkCannot(cannot, done, nameOf, ctx);
  const {
    division,
    sex = division === undefined ? undefined : sexOfDivision(division),
    recovery = "usual",
    units = "kg",
    retry = "open",
    gym,
  } = written;
  return {
    level: written.level,
    ...defined("birthYear", written.born),
    ...defined("sex", sex),
    ...defined("division", division),
    ...defined("bodyMass", written["body mass"]),
    ...defined("height", written.height),
    units,
    lifts,
    efforts,
    unbroken,
    cannot: [...new Set(cannot)],
    recovery,
    habits: [...new Set(written.habits ?? [])],
    ...defined("trainingHours", written.trains),
    ...defined("stiff", written.stiff && [...new Set(written.stiff)]),
    limits: written.limits ?? [],
    prefers: written.prefers ?? {},
    ...defined("gym", gym),
    starts: [],
    ...defined("warmUpTime", written["warm up"]),
    shares: [],
    results: [],
    ...defined("heat", written.heat),
    retry,
  };
}

/** An entry that is only there where its value is. */
export function defined<K extends string, V>(key: K, value: V | undefined): { readonly [key in K]?: V } {
  return (value === undefined ? {} : { [key]: value }) as { readonly [key in K]?: V };
}
