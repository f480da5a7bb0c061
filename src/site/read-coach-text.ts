import { type Features, mdxToHast, mdxToMdast } from "satteri";
import type { CoachText } from "../models/coach-text.ts";
import type { Checked } from "../models/fault.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import { splitFrontMatter } from "../reading/yaml/front-matter.ts";
import { checkText } from "./check-text.ts";
import { coachTextOf, FOOTNOTE_PREFIX } from "./coach-text-of.ts";
import type { TextContext } from "./text-context.ts";
import { unreadable } from "./unreadable-text.ts";

/** Coaches write 5'30" and 3--5, which stay as they are; a line of hyphens in the text begins no second entries. */
const FEATURES: Features = {
  frontmatter: false,
  smartPunctuation: false,
  gfm: { footnotes: { label: "Notes", clobberPrefix: FOOTNOTE_PREFIX } },
};

/**
 * Reads the text below the entries of a file as a tree that only has to be drawn. MDX is taken for how words are written
 * and for nothing else: what would be a program in it is a fault at its place. A file whose entries are not closed has no
 * text to be read.
 */
export function readCoachText(file: SourceFile, context: TextContext): Checked<CoachText> {
  const split = splitFrontMatter(file);
  if (!split.ok) return { ok: true, value: [], notices: [] };
  // The lines of the entries stay, empty, so that every place in the text is one in the file.
  const text = "\n".repeat(split.value.bodyLine - 1) + split.value.body;
  const root = unreadable(file.path, text, () => mdxToMdast(text, { features: FEATURES }));
  if (!root.ok) return root;
  const faults = checkText(file.path, text, root.value, context);
  if (faults.length > 0) return { ok: false, faults };
  return unreadable(file.path, text, () => coachTextOf(mdxToHast(text, { features: FEATURES })));
}
