import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";

type Retry = NonNullable<Plan["retry"]>;

const ANSWERS: Readonly<Record<Retry["answer"], string>> = {
  yes: "Do it again.",
  no: "Do not do it again.",
  "only-if": "Do it again only if:",
};

/** The plain answer to "again?", the reason behind it. */
export const sayRetry = (retry: Retry): string => `${ANSWERS[retry.answer]} ${retry.say}`;

/** What a second try could win, with its uncertainty. @example sayGain({ seconds: 12, error: 15 }) // => "12\u00a0s, give or take 15\u00a0s" */
export function sayGain({ seconds, score, error }: NonNullable<Retry["gain"]>): string | undefined {
  const amount = seconds ?? score;
  if (amount === undefined) return undefined;
  const unit = seconds === undefined ? "" : `${NO_BREAK_SPACE}s`;
  return `${sayNumber(amount, 0)}${unit}, give or take ${sayNumber(error, 0)}${unit}`;
}
