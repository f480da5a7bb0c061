import { spawnSync } from "node:child_process";

/** Seconds a process has been running, as the computer's own list of processes tells; nothing where it does not. */
export function processAge(pid: number): number | undefined {
  const told = spawnSync("ps", ["-o", "etime=", "-p", String(pid)], { encoding: "utf8", timeout: 5000 });
  return told.status === 0 ? readAge(told.stdout.trim()) : undefined;
}

/** Seconds of `[[days-]hours:]minutes:seconds`. @example readAge("1-02:03:04") // => 93784 */
export function readAge(written: string): number | undefined {
  const [, days = "0", hours = "0", minutes = "0", seconds = "0"] =
    /^(?:(?:(\d+)-)?(\d+):)?(\d+):(\d+)$/.exec(written) ?? [];
  return /\d/.test(written)
    ? ((Number(days) * 24 + Number(hours)) * 60 + Number(minutes)) * 60 + Number(seconds)
    : undefined;
}
