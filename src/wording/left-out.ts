import type { Plan } from "../models/plan/plan.ts";
import { sayPart } from "./part-name.ts";

type Withheld = Plan["withheld"][number];

/** What is not planned on purpose, as a sentence. */
export const sayLeftOut = ({ part, title }: Pick<Withheld, "part" | "title">): string =>
  `Left out${part ? ` in part ${sayPart(part)}` : ""}: ${title}.`;

/** What is planned in its place, as a sentence; nothing where nothing is. */
export const sayInstead = ({ instead }: Pick<Withheld, "instead">): string | undefined =>
  instead && `Instead: ${/[.!?]$/.test(instead) ? instead : `${instead}.`}`;

/** Why a group is left out, whom to ask, and what to ask where something is done in its place; each sentence once. */
export const sayWhyLeftOut = (entries: readonly Withheld[]): string =>
  [
    ...new Set([
      ...entries.map(({ why }) => why),
      ...entries.map(({ ask }) => ask),
      ...(entries.some(({ what, instead }) => what === "movement" && instead !== undefined)
        ? ["Ask before the start what still counts with it."]
        : []),
    ]),
  ].join(" ");

/** What is left out for one reason, together, so that the reason is said once. */
export function sameReasons(withheld: Plan["withheld"]): readonly (readonly Withheld[])[] {
  const reasons = [...new Set(withheld.map(({ why }) => why))];
  return reasons.map((reason) => withheld.filter(({ why }) => why === reason));
}
