import type { Place } from "../../models/fault.ts";
import type { SourceFile } from "../files/source-file.ts";

/** Where a word, with spaces or hyphens, first stands in a file after a colon, a comma, a bracket or a hyphen; else its first line. */
export function placeOfWord(file: SourceFile, word: string): Place {
  const escaped = word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/[-\s]+/g, "[-\\s]+");
  const found = new RegExp(`(^|[:,\\[{-]\\s*["']?)(${escaped})(?![\\w-])`, "im").exec(file.text);
  const at = found ? found.index + (found[1]?.length ?? 0) : 0;
  const before = file.text.slice(0, at).split("\n");
  return { file: file.path, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
