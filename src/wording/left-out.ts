import type { Plan } from "../models/plan/plan.ts";
import { sayPart } from "./part-name.ts";

type Withheld = Plan["withheld"][number];

/** What is not planned on purpose, as a sentence. */
export const sayLeftOut = ({ part, title }: Pick<Withheld, "part" | "title">): string =>
  `${part ? `${sayPart(part)}: ` : ""}${title} is left out.`;

/** What is planned in its place, as a sentence; nothing where nothing is. */
export const sayInstead = ({ instead }: Pick<Withheld, "instead">): string | undefined =>
  instead &&
  `Instead: ${/[.!?]$/.test(instead) ? instead : `${instead}.`} Ask before the start what still counts with it.`;
