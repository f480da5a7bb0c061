import type { PartPlan } from "../../models/plan/plan.ts";
import { KILOGRAMS_PER_POUND } from "../../models/quantity.ts";
import type { HoldBackInput } from "../places/hold-back.ts";
import type { PlacesInput } from "../places/places-of.ts";
import { resultsOfRange, stoppedByCap } from "../places/possible-results.ts";
import { rankField } from "../places/rank-field.ts";

type PlannedLifting = NonNullable<PartPlan["lifting"]>;

/** A part with the sample of scores that counts its score, ready to be compared. */
export type ComparedPart = PlacesInput & { readonly plan: PartPlan };

/**
 * What holding back in a part trades against the lift after it; undefined where the second is no lift, the first is not
 * paced, or leaves no strength lost.
 *
 * The strength that could come back is what is still lost at the last lift of the line: the heaviest made loads come
 * last. A part that ends later leaves less of a window that closes by the clock: its cost is read off the finish-time
 * table.
 */
export function planTrade(
  first: ComparedPart,
  second: ComparedPart,
  tiesByFirst: boolean,
): HoldBackInput | undefined {
  const { pacing } = first.plan;
  const { lifting } = second.plan;
  const kilogramsLost = lostToPart(first.plan, second.plan);
  if (pacing === undefined || lifting === undefined || kilogramsLost <= 0 || second.plate === undefined)
    return undefined;
  const perUnit = second.field.unit === "lb" ? KILOGRAMS_PER_POUND : 1;
  const endsByWork = pacing.ending === "finishes";
  const possible = ({ results, cap }: ComparedPart) =>
    results
      .flatMap(({ range, side, chance }) => resultsOfRange(range, side, chance))
      .map((result) => stoppedByCap(result, cap));
  return {
    first: {
      field: rankField(first.field),
      results: possible(first),
      target: pacing.result.target,
      unit: pacing.score === "time" ? "second" : "rep",
      later: (share) => (endsByWork ? share * pacing.duration : 0),
      ...(first.cap && { cap: first.cap }),
    },
    lift: {
      part: second.part,
      field: rankField(second.field),
      results: possible(second),
      plate: { inField: second.plate, kilograms: second.plate * perUnit },
      kilogramsLost,
      costOfLater: (seconds) => costOfLater(lifting.finishTable, pacing.duration, seconds),
    },
    tiesByFirst,
  };
}

/** Strength lost to a part at the last lifts of the one after it, kilograms; 0 where the second is not lifted right after it. */
export function lostToPart(first: PartPlan, { lifting, start }: PartPlan): number {
  const follows = start.kind === "clock" || start.after === first.name;
  if (first.pacing === undefined || lifting === undefined || !follows) return 0;
  return lifting.lifts.reduce((sum, lift) => sum + lostAtLast(lift), 0);
}

function lostAtLast({ today }: PlannedLifting["lifts"][number]): number {
  const fresh = today.kilograms / (1 - today.lossShare);
  return fresh * today.lossAtLast;
}

/** Kilograms of the expected lift lost when the part before ends so much later than planned, straight between rows. */
export function costOfLater(table: PlannedLifting["finishTable"], ends: number, seconds: number): number {
  const rows = table.filter(({ expected }) => expected !== undefined);
  const [first] = rows;
  const planned = rows.findLast(({ finish }) => finish <= ends + 1) ?? first;
  if (!planned || seconds <= 0) return 0;
  const next = rows.find(({ finish }) => finish >= planned.finish + seconds);
  const last = rows.at(-1);
  const to = next ?? last;
  if (!to || to === planned) return 0;
  const fall = (planned.expected ?? 0) - (to.expected ?? 0);
  return Math.max(0, (fall * seconds) / (to.finish - planned.finish));
}
