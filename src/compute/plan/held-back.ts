import type { PartPlan } from "../../models/plan/plan.ts";
import type { PlacesConstants } from "../places/constants.ts";
import { costOfLater, lostToPart } from "./plan-trade.ts";
import { PLAN_FIXED } from "./fixed-constants.ts";

type HeldBack = NonNullable<PartPlan["heldBack"]>;

/** Seconds held back in a part for time, and share of the work of one that its clock ends. */
const SECONDS = 10;
const SHARE = PLAN_FIXED.heldBackTold.value;

/**
 * What going a little easier in a part buys at the lift right after it: the strength it saves, less what a later end costs of a window that
 * closes by the clock. Undefined where no lift follows or no strength is lost to the part.
 *
 * @param loadAbove the lightest load above another that can be made, kilograms
 */
export function heldBack(
  first: PartPlan,
  second: PartPlan,
  loadAbove: (load: number) => number,
  { lossPerEffort }: PlacesConstants,
): HeldBack | undefined {
  const { pacing } = first;
  const { lifting } = second;
  const lost = lostToPart(first, second);
  if (!pacing || !lifting || lost <= 0) return undefined;
  const isTime = pacing.score === "time" && pacing.ending === "finishes";
  const held = isTime ? SECONDS : Math.max(1, Math.round(SHARE * pacing.result.target));
  const spared = Math.min(1, (lossPerEffort * held) / pacing.result.target) * lost;
  const [lift] = lifting.lifts;
  const aim = lift?.attempts[lift.target - 1]?.load.kilograms;
  const above = aim === undefined ? undefined : loadAbove(aim);
  const kilograms = spared - (isTime ? costOfLater(lifting.finishTable, pacing.duration, held) : 0);
  const step = aim === undefined || above === undefined || above <= aim ? undefined : above - aim;
  const share = step === undefined ? 1 : (held * step) / kilograms / pacing.result.target;
  return {
    lift: second.name,
    held,
    unit: isTime ? "second" : "rep",
    kilograms,
    ...(step !== undefined && { step }),
    ...(share > 0 && share < 1 && { stepShare: share }),
  };
}
