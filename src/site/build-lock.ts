import { linkSync, mkdirSync, readFileSync, renameSync, rmSync } from "node:fs";
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
  for (let attempt = 0; attempt < 2; attempt++) {
    if (writeOnce(file, JSON.stringify(self), { mode: 0o600, flush: false })) {
      return () => {
        rmSync(file, { force: true });
      };
    }
    if (isHeld(file) || !moveAway(file)) return undefined;
  }
  return undefined;
}

/**
 * Takes a dead lock away. Of several who find it, all move something; who finds that it moved a lock taken meanwhile puts
 * it back and is not the one.
 */
function moveAway(file: string): boolean {
  const aside = `${file}.${process.pid}.old`;
  try {
    renameSync(file, aside);
  } catch (error) {
    // Somebody else was quicker; whoever that was is tried for once more.
    if (hasCode(error, "ENOENT")) return true;
    throw error;
  }
  const held = isHeld(aside);
  if (held) linkSync(aside, file);
  rmSync(aside, { force: true });
  return !held;
}

/** Whether the process that left a lock still builds. In a container every build has the same number, this one's too. */
function isHeld(file: string): boolean {
  const holder = readHolder(file);
  if (holder?.pid === self.pid) return holder.began === self.began;
  if (!holder || !isRunning(holder.pid)) return false;
  const age = processAge(holder.pid);
  // Numbers of processes come again: one that began after the lock was taken is another.
  return age === undefined || Date.now() / 1000 - age < holder.began / 1000 + SECONDS_APART;
}

/** How far the two clocks that tell when a process began may lie apart. */
const SECONDS_APART = 10;

function readHolder(file: string): Holder | undefined {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as Holder;
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
