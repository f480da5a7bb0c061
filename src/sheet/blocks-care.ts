import type { Plan } from "../models/plan/plan.ts";
import { sayAsk, sayInstead, sayLeftOut } from "../wording/left-out.ts";
import type { Block, BlockLine, Detail } from "./block.ts";

const WEIGHTS = ["stop", "care", "rule"] as const;

/**
 * The cautions meant for the sheet: stop signs first, what prevails over the plan last. Short: of each the first sentence.
 * Shorter: what each is called, one after another; only what prevails is still said.
 */
export function cautionBlock({ cautions }: Plan, detail: Detail): Block | undefined {
  if (detail === "shorter") return inWords(cautions.filter(({ onSheet }) => onSheet));
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
      { text: sayAsk(entry.reason) },
      ...(entry.instead ? [{ text: sayInstead(entry) ?? "" }] : []),
    ],
  }));
  return lines.length === 0 ? undefined : { title: "Left out on purpose", lines };
}

function inWords(cautions: Plan["cautions"]): Block | undefined {
  const named = (weight: (typeof WEIGHTS)[number]): string =>
    cautions
      .filter((caution) => caution.weight === weight)
      .map(({ title }) => title)
      .join(" · ");
  const runs = [{ text: named("stop"), strong: true }, { text: named("care") }].filter(
    ({ text }) => text !== "",
  );
  const lines = [
    ...runs.map((run): BlockLine => ({ runs: [run] })),
    ...cautions
      .filter(({ weight }) => weight === "rule")
      .map(({ say }): BlockLine => ({ runs: [{ text: firstSentence(say) }] })),
  ];
  return lines.length === 0 ? undefined : { title: "Take care", lines };
}

const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;
