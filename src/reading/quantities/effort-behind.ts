import type { LiftResult } from "../../models/athlete.ts";

export type LiftEffort = NonNullable<LiftResult["effort"]>;

/** Words that stand before or behind a load, with a comma or in brackets as people like it. */
const WORDS: readonly (readonly [LiftEffort, RegExp])[] = [
  ["true-max", /\s*[,(;]?\s*\b(?:(?:a )?true max(?:imum)?|all[- ]out)\)?$|^true max(?:imum)?\s*[:=,]?\s+/i],
  ["easy", /\s*[,(;]?\s*\b(?:(?:felt|was|too) easy|easy|easily)\)?$|^easy\s*[:=,]?\s+/i],
];

/** Parts what a coach says of a lift, `110 kg true max`, `110 kg, easy`, from the lift. */
export function takeEffortOff(text: string): { readonly core: string; readonly effort?: LiftEffort } {
  for (const [effort, words] of WORDS) {
    if (words.test(text)) return { core: text.replace(words, "").trim(), effort };
  }
  return { core: text };
}

/** The words as they are best written. @example sayLiftEffort("true-max") // => "true max" */
export const sayLiftEffort = (effort: LiftEffort): string => effort.replace("-", " ");
