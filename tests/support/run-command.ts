import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** What a command said and how it ended. */
export type Said = { readonly out: string; readonly err: string; readonly code: number | null };

/** The secret of every test site: the bytes 0 to 31, so that addresses and keys are the same on every run. */
export const TEST_SECRET = "000G40R40M30E209185GR38E1W8124GK2GAHC5RR34D1P70X3RFG";

/** Environment of a command in tests: nothing of the caller's own surroundings. */
const cleanEnvironment = (more: Readonly<Record<string, string>>): NodeJS.ProcessEnv => ({
  ...Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(RIGSHEET_|NODE_OPTIONS|FORCE_COLOR)/.test(name)),
  ),
  NO_COLOR: "1",
  ...more,
});

/** What `npm run` starts every command with: files compiled before are not compiled again. */
const AS_NPM_RUNS = ["--import", "./compile-cache.mjs"];

/** Starts a command of `src/cli` with the Node that runs the tests. */
export const startCommand = (
  name: string,
  args: readonly string[],
  more: Readonly<Record<string, string>> = {},
  nodeArguments: readonly string[] = [],
) =>
  spawn(process.execPath, [...nodeArguments, ...AS_NPM_RUNS, `src/cli/${name}.ts`, ...args], {
    cwd: ROOT,
    env: cleanEnvironment(more),
  });

/** Runs a command to its end. */
export async function runCommand(
  name: string,
  args: readonly string[] = [],
  more: Readonly<Record<string, string>> = {},
  nodeArguments: readonly string[] = [],
): Promise<Said> {
  const child = startCommand(name, args, more, nodeArguments);
  let [out, err] = ["", ""];
  child.stdout.on("data", (piece: Buffer) => (out += piece.toString()));
  child.stderr.on("data", (piece: Buffer) => (err += piece.toString()));
  const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
  return { out, err, code };
}

const BUSY = /Another build is under way/;

/** Builds, and waits its turn where another build is under way; unless meanwhile there is nothing left to do. */
export async function runBuild(
  args: readonly string[],
  more: Readonly<Record<string, string>> = {},
  isDone: () => boolean = () => false,
  nodeArguments: readonly string[] = [],
): Promise<Said> {
  for (;;) {
    if (isDone()) return { out: "", err: "", code: 0 };
    const said = await runCommand("build", args, { RIGSHEET_SECRET: TEST_SECRET, ...more }, nodeArguments);
    if (!BUSY.test(said.err)) return said;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
}
