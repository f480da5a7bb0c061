import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join, posix } from "node:path";

/** A file as the checkers see it: its path from the folder read, with forward slashes, and its text. */
export type SourceFile = { readonly path: string; readonly text: string };

/** Lists every file below a folder, sorted; a folder that is missing holds none. */
export function filesBelow(folder: string, skip: readonly string[] = []): readonly string[] {
  if (!existsSync(folder)) return [];
  const found: string[] = [];
  const visit = (inside: string): void => {
    for (const name of readdirSync(join(folder, inside)).sort()) {
      if (skip.includes(name)) continue;
      const path = posix.join(inside, name);
      if (statSync(join(folder, path)).isDirectory()) visit(path);
      else found.push(path);
    }
  };
  visit("");
  return found;
}

/** Reads every file below a folder; only code is read as text, of the rest the path is enough. */
export function readSources(folder: string): readonly SourceFile[] {
  return filesBelow(folder).map((path) => ({
    path,
    text: isCode(path) ? readFileSync(join(folder, path), "utf8") : "",
  }));
}

/** Says whether the checkers read inside a file. */
export function isCode(path: string): boolean {
  return path.endsWith(".ts") || path.endsWith(".astro");
}
