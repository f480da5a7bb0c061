import { pathToFileURL } from "node:url";
import { join } from "node:path";

/** Processes that work for this one now. */
const running = new Set<number>();

/** Ends them at once, where this one is asked to stop: none may write into what is being cleared away. */
export function endOwnProcesses(): void {
  for (const pid of running) process.kill(pid, "SIGKILL");
  running.clear();
}

/** What this process may not do, those it starts may not either, and what it does not warn of they do not. */
const PERMISSION = /^--(?:permission|allow-|disable-warning)/;

/**
 * Runs a function of a file of this folder in a process of its own: what it took of memory is free again when it has ended.
 * A stopped build ends it.
 *
 * @throws what the function throws
 */
export async function inOwnProcess<T>(file: string, name: string, given: object): Promise<T> {
  const { Tinypool } = await import("tinypool");
  const pool = new Tinypool({
    filename: pathToFileURL(join(import.meta.dirname, file)).href,
    runtime: "child_process",
    minThreads: 1,
    maxThreads: 1,
    execArgv: process.execArgv.filter((each) => PERMISSION.test(each)),
    env: { ...process.env } as Record<string, string>,
  });
  const pids = pool.threads.map(({ threadId }: { readonly threadId: number }) => threadId);
  for (const pid of pids) running.add(pid);
  try {
    return (await pool.run(given, { name })) as T;
  } finally {
    for (const pid of pids) running.delete(pid);
    await pool.destroy();
  }
}
