import { CONFIDENCES } from "../../models/vocabulary.ts";
import { textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";

/** The id a movement's name stands for: `devil's press` is the file `devils-press.mdx`. */
export const movementIdField = textField.transform((name) =>
  name.toLowerCase().replaceAll("'", "").replaceAll(/\s+/g, "-"),
);

/** Where a number comes from and how far it can be trusted; beside every number that matters. */
export const sourceFields = {
  source: textField.describe("where the number comes from, so that others can check it"),
  confidence: wordField(CONFIDENCES).describe("measured (from open results), published or judgement"),
};
