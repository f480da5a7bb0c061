import type { Plan } from "../models/plan/plan.ts";
import { sayInstead, sayLeftOut } from "../wording/left-out.ts";
import type { Block, BlockLine, Detail } from "./block.ts";

const WEIGHTS = ["stop", "care", "rule"] as const;

/** The cautions meant for the sheet: stop signs first, what prevails over the plan last. Short: of each the first sentence. */
export function cautionBlock({ cautions }: Plan, detail: Detail): Block | undefined {
  const lines = WEIGHTS.flatMap((weight) =>
    cautions
      .filter((caution) => caution.onSheet && caution.weight === weight)
      .map((caution): BlockLine => ({
        runs: [
          { text: `${caution.title}.`, strong: true },
          { text: detail === "full" ? caution.say : firstSentence(caution.say) },
        ],
      })),
  );
  return lines.length === 0 ? undefined : { title: "Take care", lines };
}

/**
 * What is not planned on purpose, whom to ask, and what is planned instead. Why stays on the private page: a sheet hangs
 * where others read it.
 */
export function withheldBlock({ withheld }: Plan): Block | undefined {
  const lines = withheld.map((entry): BlockLine => ({
    runs: [
      { text: sayLeftOut(entry), strong: true },
      { text: entry.ask },
      ...(entry.instead ? [{ text: sayInstead(entry) ?? "" }] : []),
    ],
  }));
  return lines.length === 0 ? undefined : { title: "Left out on purpose", lines };
}

const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;
