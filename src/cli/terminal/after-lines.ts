import type { Plan } from "../../models/plan/plan.ts";
import { sayExtent, sayWork } from "../../wording/after.ts";
import { heading, wrap } from "./lines.ts";

/** What to do afterwards: the steps, the self-check, and what it allows the same day. */
export function afterLines({ after, athlete }: Plan): readonly string[] {
  if (after === undefined) return [];
  const steps = after.steps.flatMap((step) => {
    const extent = sayExtent(step);
    return wrap(`${step.title}${extent === undefined ? "" : `, ${extent}`}. ${step.say}`, 80, "  ");
  });
  const check = after.selfCheck.flatMap(({ question, good, bad }) =>
    wrap(`${question} Good: ${good}. Bad: ${bad}.`, 80, "  "),
  );
  const options = after.options.flatMap((option) => {
    const work = option.work.map((each) => sayWork(each, athlete.units)).join("; ");
    return wrap(
      `${option.title} (check ${option.check}). ${option.say}${work === "" ? "" : ` ${work}.`}`,
      80,
      "  ",
    );
  });
  return [
    heading("AFTER"),
    ...steps,
    ...(check.length === 0 ? [] : ["Ask yourself:", ...check]),
    ...(options.length === 0 ? [] : ["The same day, by your answers:", ...options]),
  ];
}
