import type { Plan } from "../models/plan/plan.ts";
import { sayExtent, sayPieceExtent, sayWork } from "../wording/after.ts";
import { SELF_CHECK } from "../wording/self-check.ts";
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

/** The self-check with its good answers to tick, how it adds up, and in full the pieces of the day in their order. */
export function selfCheckBlock({ after, athlete }: Plan, detail: Detail): Block | undefined {
  if (!after) return undefined;
  const questions = SELF_CHECK.map((check): BlockLine => ({
    tick: true,
    runs: [{ text: `${check.question}:` }, { text: check.good, strong: true }],
  }));
  const pieces =
    detail !== "full"
      ? []
      : after.day.pieces.map((piece): BlockLine => {
          const work = piece.work.map((each) => sayWork(each, athlete.units)).join(", ");
          const extent = sayPieceExtent(piece);
          return {
            runs: [
              { text: extent === "" ? `${piece.title}.` : `${piece.title}, ${extent}.`, strong: true },
              { text: work ? `${work}.` : piece.say },
            ],
          };
        });
  const sum = { runs: [{ text: `All ticked: ${WHEN_TICKED[after.day.kind]}. Else ease off; pain: rest.` }] };
  return { title: "Later the same day", lines: [...questions, sum, ...pieces] };
}

const WHEN_TICKED: Readonly<Record<NonNullable<Plan["after"]>["day"]["kind"], string>> = {
  session: "the session",
  light: "something light",
  between: "eat and rest until the next start",
  rest: "rest, with a walk if you like",
};
