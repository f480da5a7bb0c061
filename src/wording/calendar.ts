import { sayGym } from "./gym-name.ts";
import type { Plan } from "../models/plan/plan.ts";
import { sayPieces } from "./mass.ts";
import { clockShift } from "./part-clock.ts";
import { sayClock } from "./time.ts";

/** Minutes before the first entry at which a calendar reminds: to eat, pack and leave (judgement). */
export const REMIND_BEFORE = 45;

type Known = Pick<Plan, "parts">;

/** When the first lift is and with what, one sentence a part that has lifts. Reads `Part b: first lift 85 kg at 6:55 on the clock.` */
export const sayFirstLifts = ({ parts }: Known): readonly string[] =>
  parts.flatMap((part) => {
    const [lift] = part.lifting?.lifts ?? [];
    const [first] = lift?.attempts ?? [];
    if (!lift || !first || lift.ofOwnBest) return [];
    const at = sayClock(first.clock + clockShift(part));
    return [`Part ${part.name}: first lift ${sayPieces(first.load)} at ${at} on the clock.`];
  });

/** What is in the calendar file of a plan, or why there is none. Empty for a typical band, which has no start. */
export function sayCalendar({
  start,
  athlete,
  warmUp,
  gym,
  ...plan
}: Pick<Plan, "start" | "athlete" | "warmUp" | "gym" | "parts">): string {
  if (athlete.anonymous) return "";
  if (!start) return "No calendar yet: your start is not known. Tell your coach the day and the time.";
  const entries = warmUp ? "warm-up and start" : "the start";
  const lift = sayFirstLifts(plan).length > 0 ? ", with the first lift" : "";
  const place = gym.assumed ? "" : ` at ${sayGym(gym)}`;
  return `The calendar holds ${entries}${place}${lift}; it reminds you ${REMIND_BEFORE} minutes before.`;
}
