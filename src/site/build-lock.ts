import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";

/** Someone who is building: a process of this computer. */
type Holder = { readonly pid: number };

/**
 * Takes the lock of a build, so that two of them cannot mix. Gives what releases it, or nothing while another build
 * holds it. A lock whose process is gone is taken over: that build was killed.
 */
export function takeBuildLock(file: string): (() => void) | undefined {
  mkdirSync(dirname(file), { recursive: true });
  for (let attempt = 0; attempt < 2; attempt++) {
    try {
      writeFileSync(file, JSON.stringify({ pid: process.pid } satisfies Holder), { flag: "wx" });
      return () => {
        rmSync(file, { force: true });
      };
    } catch (error) {
      if (!hasCode(error, "EEXIST")) throw error;
      if (isRunning(readHolder(file))) return undefined;
      rmSync(file, { force: true });
    }
  }
  return undefined;
}

function readHolder(file: string): number | undefined {
  try {
    return (JSON.parse(readFileSync(file, "utf8")) as Holder).pid;
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

/** Whether an error of the system has a code such as `ENOSPC`, itself or in what caused it. */
export function hasCode(error: unknown, code: string): boolean {
  if (!(error instanceof Error)) return false;
  return ("code" in error && error.code === code) || hasCode(error.cause, code);
}
