import { cpSync, existsSync, renameSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { hasCode } from "./has-code.ts";

/** Names beside a folder while it is replaced. They begin so that git passes over them. */
const beside = (target: string) => {
  const named = (what: string): string => join(dirname(target), `.rigsheet-${basename(target)}-${what}`);
  return { copy: named("copy"), fresh: named("new"), old: named("old") };
};

const clearAway = (folder: string): void => {
  rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
};

/**
 * Puts a finished folder in the place of another, by two changes of name with nothing between them. Whoever looks sees all
 * of the old or all of the new; a build killed just between the two is put right by {@link recoverSwap}.
 */
export function swapFolder(finished: string, target: string): void {
  const { copy, fresh, old } = beside(target);
  for (const folder of [copy, fresh, old]) clearAway(folder);
  moveFolder(finished, fresh, copy);
  try {
    if (existsSync(target)) renameSync(target, old);
    renameSync(fresh, target);
  } catch (error) {
    recoverSwap(target);
    throw error;
  }
  clearAway(old);
}

/** Moves a folder; to another disk by a copy, which gets the name only when it is whole. */
function moveFolder(from: string, to: string, copy: string): void {
  try {
    renameSync(from, to);
  } catch (error) {
    if (!hasCode(error, "EXDEV")) throw error;
    try {
      cpSync(from, copy, { recursive: true, preserveTimestamps: true });
      renameSync(copy, to);
    } catch (full) {
      clearAway(copy);
      throw full;
    }
    clearAway(from);
  }
}

/**
 * Finishes or undoes a replacement that was killed halfway. Says whether there was one: where the target is missing, the
 * new folder beside it was finished before the old one was moved, so it takes its place.
 */
export function recoverSwap(target: string): boolean {
  const { copy, fresh, old } = beside(target);
  const left = [copy, fresh, old].some((folder) => existsSync(folder));
  if (!existsSync(target)) {
    if (existsSync(fresh)) renameSync(fresh, target);
    else if (existsSync(old)) renameSync(old, target);
  }
  for (const folder of [copy, fresh, old]) clearAway(folder);
  return left;
}
