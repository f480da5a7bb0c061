import type { PartStart } from "../../models/workout.ts";
import type { Path } from "../yaml/open-yaml.ts";
import type { TextSource } from "./token.ts";

/** The entries of a part as written, its place in the file, and the names of the parts before it. */
export type WrittenPart = {
  readonly entries: Readonly<Record<string, unknown>>;
  readonly path: Path;
  readonly name: string;
  readonly earlier: readonly { readonly name: string; readonly start: PartStart }[];
};

/** What stands behind an entry of a part; nothing where it is no text. */
export const sourceOf = (part: WrittenPart, name: string): TextSource => {
  const value = part.entries[name];
  return { text: typeof value === "string" ? value : "", path: [...part.path, name], isName: false };
};

/** The part as a whole, for what no entry of it says. */
export const wholePart = (part: WrittenPart): TextSource => ({ text: "", path: part.path, isName: false });
