import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { hasCode } from "./has-code.ts";
import { processAge } from "./process-age.ts";
import { writeOnce } from "./write-once.ts";

/** Someone who is building: a process of this computer, and when it began, because numbers come again. */
type Holder = { readonly pid: number; readonly began: number };

const self: Holder = { pid: process.pid, began: Math.round(performance.timeOrigin) };

/**
 * Takes the lock of a build, so that two of them cannot mix. Gives what releases it, or nothing while another build
 * holds it. A lock whose process is gone is taken over: that build was killed.
 */
export function takeBuildLock(file: string): (() => void) | undefined {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  if (!isTaken(file) && !isTakenOver(file)) return undefined;
  return () => {
    rmSync(file, { force: true });
  };
}

/** Whether the file could be made for this process. */
const isTaken = (file: string): boolean =>
  writeOnce(file, JSON.stringify(self), { mode: 0o600, flush: false });

/**
 * Whether a dead lock could be replaced by one of this process. A second lock beside it says who may: nobody else takes the first away
 * meanwhile, so what was read as dead is still that when it is removed, and a lock that lives is never touched.
 */
function isTakenOver(file: string): boolean {
  if (isHeld(textOf(file))) return false;
  const beside = `${file}.over`;
  if (!isTaken(beside)) {
    if (isHeld(textOf(beside))) return false;
    // Whoever was taking over was killed in the middle of it.
    rmSync(beside, { force: true });
    if (!isTaken(beside)) return false;
  }
  try {
    const left = textOf(file);
    if (isHeld(left)) return false;
    if (left !== undefined) rmSync(file, { force: true });
    return isTaken(file);
  } finally {
    rmSync(beside, { force: true });
  }
}

/** Whether the process that wrote a lock still builds. In a container every build has the same number, this one's too. */
function isHeld(text: string | undefined): boolean {
  const holder = text === undefined ? undefined : holderIn(text);
  if (holder?.pid === self.pid) return holder.began === self.began;
  if (!holder || !isRunning(holder.pid)) return false;
  const age = processAge(holder.pid);
  // Numbers of processes come again: one that began after the lock was taken is another.
  return age === undefined || Date.now() / 1000 - age < holder.began / 1000 + SECONDS_APART;
}

/** How far the two clocks that tell when a process began may lie apart. */
const SECONDS_APART = 10;

/** What stands in a lock; undefined where there is none. */
function textOf(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    if (hasCode(error, "ENOENT")) return undefined;
    throw error;
  }
}

function holderIn(text: string): Holder | undefined {
  try {
    return JSON.parse(text) as Holder;
  } catch {
    return undefined;
  }
}

/** Whether a process runs. Signal 0 only asks; one that may not be asked runs all the same. */
export function isRunning(pid: number | undefined): boolean {
  if (pid === undefined) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return hasCode(error, "EPERM");
  }
}
