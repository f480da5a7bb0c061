import { appendFileSync, existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";

/**
 * A brief that could not be computed although its files are right, or a file of it that could not be drawn, told with what
 * was met.
 */
export type FailedBrief = {
  readonly athlete: string;
  readonly workout: string;
  /** What of the brief could not be made; absent where all of it could not. */
  readonly file?: string;
  readonly problem: string;
};

const fileIn = (folder: string): string => join(folder, ".failed.jsonl");

/** Leaves word in the folder a site is being made in: pages are made apart from the command that waits for them. */
export function leaveWord(folder: string, failed: readonly FailedBrief[]): void {
  for (const one of failed) appendFileSync(fileIn(folder), `${JSON.stringify(one)}\n`, { mode: 0o600 });
}

/** Takes the word away again, so that it is not published. */
export function takeWord(folder: string): readonly FailedBrief[] {
  const file = fileIn(folder);
  if (!existsSync(file)) return [];
  const lines = readFileSync(file, "utf8").split("\n");
  rmSync(file);
  return lines.filter((line) => line !== "").map((line) => JSON.parse(line) as FailedBrief);
}
