import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Fault } from "../models/fault.ts";
import type { SourceFile } from "../reading/files/source-file.ts";

/** Folders of `content/` that the tool brings along; a data folder adds to them. */
export const LIBRARY_FOLDERS = ["movements", "warm-ups", "recovery", "cautions", "bands"] as const;

/** The files people wrote, and those that cannot even be read as text. */
export type SourceFolder = { readonly files: readonly SourceFile[]; readonly faults: readonly Fault[] };

/** Endings of texts. */
const TEXT = /\.(mdx?|ya?ml|csv|tsv|json|txt)$/i;
/** Endings of files that are given by name only, so that somebody can be told that they are not read. */
const NAMED = /\.(xlsx?|ods|numbers|docx?)$/i;

/**
 * Reads every written file of some folders below one, in the order of their names. Paths are given from that folder, with
 * forward slashes, as people see them. Passes over hidden files, `README.md`, and folders that are not there.
 */
export function readFolder(folder: string, below: readonly string[]): SourceFolder {
  const files: SourceFile[] = [];
  const faults: Fault[] = [];
  for (const path of below.flatMap((inside) => filesBelow(folder, inside))) {
    const text = NAMED.test(path) ? "" : decode(readFileSync(join(folder, path)));
    if (text === undefined) faults.push(notText(path));
    else files.push({ path, text });
  }
  return { files, faults };
}

function filesBelow(folder: string, inside: string): readonly string[] {
  const whole = join(folder, inside);
  if (!existsSync(whole)) return [];
  if (statSync(whole).isFile()) return [inside];
  return readdirSync(whole)
    .filter((name) => !name.startsWith(".") && name !== "README.md")
    .sort()
    .map((name) => `${inside}/${name}`)
    .flatMap((path) => (statSync(join(folder, path)).isDirectory() ? filesBelow(folder, path) : [path]))
    .filter((path) => TEXT.test(path) || NAMED.test(path));
}

/** Text in UTF-8 or, as spreadsheets save it, in UTF-16 with a mark; nothing when it is neither. */
function decode(bytes: Uint8Array): string | undefined {
  const mark = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : "utf-8";
  try {
    return new TextDecoder(mark, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

const notText = (file: string): Fault => ({
  place: { file, line: 1, column: 1 },
  found: "",
  problem: "the file is not text in UTF-8, so letters such as é or ł cannot be read",
  remedy: "Open it in the program it was written with and save it again as UTF-8.",
  severity: "fault",
});
