import * as z from "zod";
import { gapsIn, type MovementChoice, type MovementOption, REASON_GAPS } from "../../models/movement.ts";
import { refuse } from "../yaml/refuse.ts";
import { STRESSES } from "../../models/vocabulary.ts";
import { conditionsField } from "../conditions/condition-schema.ts";
import { listField } from "../fields/list-field.ts";
import { textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";

const optionField = z
  .strictObject({
    id: textField.describe("a short name athletes' files use under `prefers`, such as `butterfly`"),
    name: textField.describe("a few words for it, as read aloud"),
    say: textField.describe("what to do, second person, one sentence"),
    when: conditionsField.describe(
      "conditions that favour it; of the options whose conditions all hold, the first is taken",
    ),
    because: textField.optional().describe(
      `why it suits, one sentence of the trade; the athlete's numbers stand in gaps: ${Object.keys(
        REASON_GAPS,
      )
        .map((gap) => `{${gap}}`)
        .join(", ")}`,
    ),
    "switch when": textField
      .optional()
      .describe("when to go over to another option in the middle of the workout"),
    test: textField.optional().describe("what to try in the warm-up when it is close"),
    adds: listField(wordField(STRESSES), { split: true })
      .default([])
      .describe("what this way does to a body beyond the movement itself, for stated limits"),
  })
  .describe("one way to do it")
  .transform(({ "switch when": switchWhen, test, because, ...option }, ctx): MovementOption => {
    const unknown = gapsIn(because ?? "").find((gap) => !Object.hasOwn(REASON_GAPS, gap));
    if (unknown !== undefined) {
      refuse(ctx, {
        path: ["because"],
        found: unknown,
        problem: "no number of the athlete stands for this gap",
        allowed: Object.keys(REASON_GAPS).join(", "),
        remedy: "Use one of the names allowed, or words.",
      });
    }
    return {
      ...option,
      ...(because !== undefined && { because }),
      ...(switchWhen !== undefined && { switchWhen }),
      ...(test !== undefined && { test }),
    };
  });

/** A choice a movement offers. Its last option needs no condition, so that every athlete is given one. */
export const choiceField = z
  .strictObject({
    id: textField.describe("a short name athletes' files use under `prefers`, such as `pull-up-style`"),
    question: textField.describe("what is to be decided, as a question to the athlete"),
    worth: wordField(["little"])
      .optional()
      .describe("`little` where seconds do not hang on it: gear, a hand, what training settles; told last"),
    when: conditionsField.describe("asked only where all of these hold, such as `amount over 1`"),
    options: z.array(optionField).min(2).describe("the ways to choose from, those with conditions first"),
  })
  .describe("one thing to decide")
  .transform(({ worth, ...choice }, ctx): MovementChoice => {
    const last = choice.options.length - 1;
    if ((choice.options[last]?.when.length ?? 0) > 0) {
      refuse(ctx, {
        path: ["options", last, "when"],
        problem: "the last option has conditions, so an athlete who meets none would be given no option",
        remedy: "Put the option that suits anybody last and leave its `when` out.",
      });
    }
    return { ...choice, ...(worth !== undefined && { worth }) };
  });
