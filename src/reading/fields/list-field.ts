import * as z from "zod";
import { answerWord } from "../quantities/answer-word.ts";

const NOTHING = /^(?:none|nothing|no|nil|-+)$/i;

/**
 * A list of entries. Left empty, or written as `none`, it has no entries; a single entry needs no brackets. `split`
 * parts an entry without brackets at its commas.
 */
export const listField = <T extends z.ZodType>(entry: T, options: { readonly split?: boolean } = {}) =>
  z.preprocess((written) => asList(written, options.split === true), z.array(entry));

function asList(written: unknown, split: boolean): unknown {
  if (written === null || (typeof written === "string" && NOTHING.test(written.trim()))) return [];
  if (typeof written === "string")
    return split ? written.split(/\s*,\s*/).filter((part) => part !== "") : [written];
  return isGroup(written) ? [written] : written;
}

const isGroup = (value: unknown): boolean => typeof value === "object" && !Array.isArray(value);

/** An entry that may be left empty, or hold a word for unknown such as `?` or `n/a`: both are the same as leaving it out. */
export const known = <T extends z.ZodType>(field: T) =>
  z.preprocess((written) => (isUnknown(written) ? undefined : written), field.optional()).optional();

const isUnknown = (written: unknown): boolean =>
  written === null || (typeof written === "string" && answerWord(written) === "unknown");
