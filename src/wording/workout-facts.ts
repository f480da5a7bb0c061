import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";

const SECONDS_A_MINUTE = 60;

/** The kind of each part, in order. Reads `for time, cap 11:00, then max load, until 18:00`. */
export const sayKind = ({ parts }: Pick<Plan, "parts">): string =>
  parts.map(({ title }) => title).join(", then ");

/**
 * The kind and clock of a part for somebody who does not know how workouts are written down.
 *
 * @example sayKindInFull("amrap, 13:00") // => "13:00, as many rounds as possible"
 */
export const sayKindInFull = (title: string): string =>
  title
    .replace(/^amrap, (.+)$/, "$1, as many rounds as possible")
    .replace(/^on the clock, ([\d:]+)$/, "$1 on the clock")
    .replace(/^max load, /, "heaviest load, ");

/** How long a workout takes athletes from the quickest to the slowest of these plans, in whole minutes; empty where nothing is planned. */
export function sayLength(plans: readonly Pick<Plan, "parts">[]): string {
  const ends = plans.map(endOf).filter((end) => end > 0);
  if (ends.length === 0) return "";
  const [least, most] = [Math.min(...ends), Math.max(...ends)].map((end) =>
    sayNumber(Math.max(1, Math.round(end / SECONDS_A_MINUTE)), 0),
  );
  return `${least === most ? (least ?? "") : `${least ?? ""} to ${most ?? ""}`}${NO_BREAK_SPACE}min`;
}

/**
 * Clock of the workout at which the last part that is planned ends, seconds. A plan that ends before something out of reach says
 * nothing of the length of the workout but its cap.
 */
const endOf = ({ parts }: Pick<Plan, "parts">): number =>
  Math.max(
    0,
    ...parts.map(({ start, pacing, lifting }) => {
      const lasts = (pacing?.outOfReach.length ?? 0) > 0 ? pacing?.cap : pacing?.duration;
      return Math.max(lasts === undefined ? 0 : start.clock + lasts, lifting?.window.closes ?? 0);
    }),
  );

/** What is set out for it, each thing once, in the order of use. Reads `dumbbell, box, barbell`; empty where nothing is needed. */
export const sayEquipment = ({ setUp }: Pick<Plan, "setUp">): string =>
  setUp
    .flatMap((line) => (line.kind === "equipment" ? line.things : []))
    .map(({ what }) => (what === "row" ? "rower" : what.replaceAll("-", " ")))
    .join(", ");
