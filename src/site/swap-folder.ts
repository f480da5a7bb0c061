import { cpSync, existsSync, renameSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { hasCode } from "./build-lock.ts";

/** Names beside a folder while it is replaced. They begin so that git passes over them. */
const beside = (target: string): { readonly fresh: string; readonly old: string } => ({
  fresh: join(dirname(target), `.rigsheet-${basename(target)}-new`),
  old: join(dirname(target), `.rigsheet-${basename(target)}-old`),
});

/**
 * Puts a finished folder in the place of another. The old one is moved aside, never changed: whoever looks sees all of
 * the old or all of the new.
 */
export function swapFolder(finished: string, target: string): void {
  const { fresh, old } = beside(target);
  rmSync(fresh, { recursive: true, force: true });
  rmSync(old, { recursive: true, force: true });
  moveFolder(finished, fresh);
  if (existsSync(target)) renameSync(target, old);
  renameSync(fresh, target);
  rmSync(old, { recursive: true, force: true });
}

/** Moves a folder; across file systems by copying. */
function moveFolder(from: string, to: string): void {
  try {
    renameSync(from, to);
  } catch (error) {
    if (!hasCode(error, "EXDEV")) throw error;
    cpSync(from, to, { recursive: true });
    rmSync(from, { recursive: true, force: true });
  }
}

/**
 * Finishes or undoes a replacement that was killed halfway. Says whether there was one: where the target is missing, the
 * new folder beside it was finished before the old one was moved, so it takes its place.
 */
export function recoverSwap(target: string): boolean {
  const { fresh, old } = beside(target);
  const left = [fresh, old].some((folder) => existsSync(folder));
  if (!existsSync(target)) {
    if (existsSync(fresh)) renameSync(fresh, target);
    else if (existsSync(old)) renameSync(old, target);
  }
  for (const folder of [fresh, old]) rmSync(folder, { recursive: true, force: true });
  return left;
}
