import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import { comparable } from "../models/nearest.ts";
import { idOfFile } from "../reading/files/id-of-file.ts";
import type { EarlierCells } from "../reading/tables/merge-athlete.ts";
import { type Answers, readAnswers } from "../reading/tables/questions.ts";
import { openYaml } from "../reading/yaml/open-yaml.ts";
import { schemaLine } from "./editor-schemas.ts";
import { writeSafely } from "./write-safely.ts";

/** A file of an athlete that exists, where it stands and what it says. */
export type ExistingFile = { readonly id: string; readonly text: string };

/** What an import left in its folder, and the athlete files there and in the data folder. */
export type IntakeFolder = {
  readonly folder: string;
  readonly answers: Answers;
  /** Cells of the last import, by the athlete's id. */
  readonly earlier: Readonly<Record<string, EarlierCells>>;
  /** Files by names blind to case, spaces and accents; those in the folder of the import go before. */
  readonly files: ReadonlyMap<string, ExistingFile>;
  readonly ids: ReadonlySet<string>;
};

const putField = z.strictObject({
  entry: z.string(),
  key: z.string().optional(),
  listed: z.literal(true).optional(),
  value: z.union([z.string(), z.record(z.string(), z.unknown())]),
});
const stateField = z.record(
  z.string(),
  z.record(z.string(), z.strictObject({ raw: z.string(), puts: z.array(putField) })),
);

/** A name as files are found by it. */
export const nameKey = (name: string): string => comparable(name.replace(/[.'’-]/g, ""));

/**
 * Opens the folder of imports.
 *
 * @throws an Error where its list of cells cannot be read: without it a second import could overwrite what was typed.
 */
export function openIntake(dataFolder: string, folder: string): IntakeFolder {
  const questions = join(folder, "questions.txt");
  const files = new Map<string, ExistingFile>();
  for (const each of [join(dataFolder, "athletes"), join(folder, "athletes")]) {
    for (const [name, file] of filesIn(each)) files.set(name, file);
  }
  return {
    folder,
    answers: existsSync(questions) ? readAnswers(readFileSync(questions, "utf8")) : new Map(),
    earlier: readState(join(folder, "cells.json")),
    files,
    ids: new Set([...files.values()].map(({ id }) => id)),
  };
}

function readState(file: string): IntakeFolder["earlier"] {
  if (!existsSync(file)) return {};
  try {
    return stateField.parse(JSON.parse(readFileSync(file, "utf8"))) as IntakeFolder["earlier"];
  } catch {
    throw new Error(
      `${file} cannot be read. It says which cells were taken at the last import. Put back an earlier copy, or delete it: ` +
        `values that differ from your files are then asked about.`,
    );
  }
}

function filesIn(folder: string): readonly (readonly [string, ExistingFile])[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => /\.ya?ml$/i.test(name) && !name.startsWith("."))
    .sort()
    .map((name) => {
      const text = readFileSync(join(folder, name), "utf8");
      const { value } = openYaml(name, text, "text");
      const entries = (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
      const own = typeof entries["name"] === "string" ? entries["name"] : idOfFile(name);
      return [nameKey(own), { id: idOfFile(name), text }] as const;
    });
}

const LETTERS: Readonly<Record<string, string>> = {
  ł: "l",
  ø: "o",
  đ: "d",
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ð: "d",
  þ: "th",
  ı: "i",
};

/** A file's name for a new athlete: letters of their name without marks, and a number where it is taken. */
export function idFor(name: string, taken: ReadonlySet<string>): string {
  const plain = name
    .toLowerCase()
    .replace(/[łøđßæœðþı]/g, (letter) => LETTERS[letter] ?? letter)
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  const base = plain === "" ? "athlete" : plain;
  let id = base;
  for (let number = 2; taken.has(id); number++) id = `${base}-${number}`;
  return id;
}

/** What an import writes. */
export type IntakeOutput = {
  readonly athletes: readonly ExistingFile[];
  readonly questions: string;
  readonly cells: Readonly<Record<string, EarlierCells>>;
};

/** Writes files of athletes where they are to be looked at before they count. */
export function writeAthletes(folder: string, athletes: readonly ExistingFile[]): void {
  mkdirSync(join(folder, "athletes"), { recursive: true, mode: 0o700 });
  for (const { id, text } of athletes) writeSafely(join(folder, "athletes", `${id}.yaml`), text);
}

export function writeIntake(folder: string, { athletes, questions, cells }: IntakeOutput): void {
  writeAthletes(folder, athletes);
  writeSafely(join(folder, "questions.txt"), questions);
  writeSafely(join(folder, "cells.json"), `${JSON.stringify(cells, null, 1)}\n`);
}

/** Moves the athlete files of an import to where they count. Says how many. */
export function takeIntake(dataFolder: string, folder: string): number {
  const from = join(folder, "athletes");
  const names = existsSync(from) ? readdirSync(from).filter((name) => name.endsWith(".yaml")) : [];
  mkdirSync(join(dataFolder, "athletes"), { recursive: true });
  for (const name of names) {
    const text = readFileSync(join(from, name), "utf8");
    const line = schemaLine("athlete", "../");
    writeSafely(join(dataFolder, "athletes", name), text.startsWith("#") ? text : `${line}${text}`);
    rmSync(join(from, name));
  }
  return names.length;
}
