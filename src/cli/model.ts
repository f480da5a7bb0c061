import { FIXED_TABLES, MODEL_TABLES } from "../compute/model-tables.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { readChecked } from "./read-checked.ts";
import { modelAsText } from "./say-model.ts";

await run(
  makeCommand(
    "model",
    "Prints every number of the model, where it comes from, and what your settings change.",
  )
    .argument("[word]", "only numbers with this word in their name or in what they do")
    .action((word: string | undefined, options: CommonOptions) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "gym" });
      const { settings } = readChecked(surroundings, (text) => process.stderr.write(`${text}\n`));
      console.log(modelAsText(MODEL_TABLES, FIXED_TABLES, settings.overrides, word));
    }),
);
