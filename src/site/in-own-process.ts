import { pathToFileURL } from "node:url";
import { join } from "node:path";

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
    // What the command itself was started with is not for it.
    execArgv: [],
    env: { ...process.env } as Record<string, string>,
  });
  try {
    return (await pool.run(given, { name })) as T;
  } finally {
    await pool.destroy();
  }
}
