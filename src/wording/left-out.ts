import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "./basis.ts";
import { sayCause } from "./cause.ts";
import { sayPart } from "./part-name.ts";
import { sayCondition } from "./stated-condition.ts";

type Withheld = Plan["withheld"][number];
type Reason = Withheld["reason"];

/** What is not planned, as a title. @example titleOfLeftOut({ of: "pull-ups", way: "kipping" }) // => "Pull-ups: kipping" */
export const titleOfLeftOut = ({ of, way }: Pick<Withheld, "of" | "way">): string =>
  [of === undefined ? "The lift for load" : capitalised(of), ...(way === undefined ? [] : [way])].join(": ");

/** What is not planned on purpose, as a sentence. */
export const sayLeftOut = ({ part, ...entry }: Pick<Withheld, "part" | "of" | "way">): string =>
  `Left out${part ? ` in part ${sayPart(part)}` : ""}: ${titleOfLeftOut(entry)}.`;

/** What is planned in its place, as a sentence; nothing where nothing is. */
export const sayInstead = ({ instead }: Pick<Withheld, "instead">): string | undefined =>
  instead && `Instead: ${capitalised(instead)}${/[.!?]$/.test(instead) ? "" : "."}`;

/** Why something is left out, as a sentence. A limit is named by its joint, else by its condition. */
function sayWhy(reason: Reason): string {
  if (reason.kind === "caution") {
    const cause = sayCause(reason.because);
    return cause === "" ? `${reason.title}.` : `Because of ${cause}.`;
  }
  const { joint, condition } = reason;
  const state = condition === undefined ? undefined : sayCondition(condition);
  const named = joint === undefined ? state : `your ${joint}`;
  return named === undefined ? "You asked to keep away from it." : `You stated a limit: ${named}.`;
}

/** Whom to ask before it is done all the same, as a sentence. */
export function sayAsk(reason: Reason): string {
  if (reason.kind === "caution") return reason.ask;
  return reason.joint === undefined
    ? "Ask your coach or a licensed professional before you do it."
    : `Ask your coach, or the licensed professional who knows your ${reason.joint}, before you do it.`;
}

/** Why a group is left out, whom to ask, and what to ask where something is done in its place; each sentence once. */
export const sayWhyLeftOut = (entries: readonly Withheld[]): string =>
  [
    ...new Set([
      ...entries.map(({ reason }) => sayWhy(reason)),
      ...entries.map(({ reason }) => sayAsk(reason)),
      ...(entries.some(({ what, instead }) => what === "movement" && instead !== undefined)
        ? ["Ask before the start what still counts with it."]
        : []),
    ]),
  ].join(" ");

/** What is left out for one reason, together, so that the reason is said once. */
export function sameReasons(withheld: Plan["withheld"]): readonly (readonly Withheld[])[] {
  const reasons = [...new Set(withheld.map(({ reason }) => sayWhy(reason)))];
  return reasons.map((why) => withheld.filter(({ reason }) => sayWhy(reason) === why));
}
