import { readFileSync } from "node:fs";
import { join } from "node:path";
import { filesBelow } from "./source-files.ts";

/**
 * Every word of the fixture's athletes that is theirs alone: ids, names and their parts, loads with a decimal, times,
 * notes. Taken from the files, so that a new one is searched for without anyone thinking of it.
 */
export function personalWords(data: string): readonly string[] {
  return filesBelow(join(data, "athletes")).flatMap((path) => {
    const text = readFileSync(join(data, "athletes", path), "utf8");
    const valueOf = (name: string): string =>
      new RegExp(`^ *(?:- )?${name}: (.*)$`, "m").exec(text)?.[1] ?? "";
    const names = [valueOf("name"), valueOf("share name")].filter((name) => name !== "");
    const parts = names.flatMap((name) => name.split(/[\s-]+/)).filter((part) => part.length > 3);
    const notes = [...text.matchAll(/note: (.*)$/gm)].flatMap(([, note = ""]) => [
      note,
      ...(note.match(/\p{L}{6,}/gu) ?? []),
    ]);
    const loads = [...text.matchAll(/: (\d+\.\d) kg$/gm)].map(([, load = ""]) => `${load} kg`);
    return [path.replace(/\.yaml$/, ""), ...names, ...parts, ...notes, ...loads];
  });
}
