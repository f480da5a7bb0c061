import type { Plan } from "../models/plan/plan.ts";
import { sayExtent, sayWork } from "../wording/after.ts";
import type { Block, BlockLine, Detail } from "./block.ts";

/** Cool-down, food and sleep. Short: what and how much, without the how. */
export function afterBlock({ after }: Plan, detail: Detail): Block | undefined {
  const lines = (after?.steps ?? []).map((step): BlockLine => {
    const extent = sayExtent(step);
    const lead = { text: extent ? `${step.title}, ${extent}.` : `${step.title}.`, strong: true };
    return { runs: detail !== "full" ? [lead] : [lead, { text: step.say }] };
  });
  return lines.length === 0 ? undefined : { title: "Afterwards", lines };
}

/** The short self-check with its answers to tick, and what may be done the same day after a good one. */
export function selfCheckBlock({ after, athlete }: Plan, detail: Detail): Block | undefined {
  if (!after || after.selfCheck.length === 0) return undefined;
  const questions = after.selfCheck.map((check): BlockLine => ({
    tick: true,
    runs: [{ text: check.question }, { text: `good: ${check.good}`, strong: true }],
  }));
  const options =
    detail !== "full"
      ? []
      : after.options.map((option): BlockLine => {
          const work = option.work.map((each) => sayWork(each, athlete.units)).join(", ");
          const when = option.check === "bad" ? "Always open" : `If ${option.check} or better`;
          return {
            runs: [
              { text: `${when}: ${option.title}.`, strong: true },
              { text: work ? `${work}.` : option.say },
            ],
          };
        });
  return { title: "Later the same day", lines: [...questions, ...options] };
}
