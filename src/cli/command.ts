import { fileURLToPath } from "node:url";
import { Command } from "commander";
import { visibleText } from "../models/visible-text.ts";
import { explain } from "../site/explain.ts";
import { readSurroundings, type Surroundings, today } from "../site/surroundings.ts";

/** The folder of the tool. */
export const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** The folder a site is put into where nobody names another. */
export const USUAL_FOLDER = "dist";

/** Options that every command understands; each has a variable of the environment beside it. */
export type CommonOptions = { readonly data?: string; readonly date?: string };

/** A command with what all commands share. */
export const makeCommand = (name: string, says: string): Command =>
  new Command(name)
    .description(says)
    .option("--data <folder>", "folder with content/ and athletes/ (RIGSHEET_DATA)")
    .option(
      "--date <day>",
      "day the plans are made for, such as 2026-11-25 (RIGSHEET_DATE); today if not given",
    )
    .allowExcessArguments(false)
    .showHelpAfterError();

/** The surroundings of a command: its options first, then the environment. */
export function surroundingsOf(
  options: CommonOptions,
  more: Record<string, string | undefined> = {},
): Surroundings {
  const environment = {
    ...process.env,
    ...(options.data === undefined ? {} : { RIGSHEET_DATA: options.data }),
    ...(options.date === undefined ? {} : { RIGSHEET_DATE: options.date }),
    ...more,
  };
  return readSurroundings(ROOT, environment, today());
}

/** Runs a command. What goes wrong is told in its own words, without the way through the program, and gives 1. */
export async function run(command: Command): Promise<void> {
  try {
    await command.parseAsync();
  } catch (error) {
    process.stderr.write(`${visibleText(explain(error))}\n`);
    if (process.env["RIGSHEET_DEBUG"] && error instanceof Error) console.error(error);
    process.exitCode = 1;
  }
}

/**
 * The port that is named, or any free one for 0.
 *
 * @throws an Error in plain words where the text is no port.
 */
export function readPort(written: string): number {
  const port = /^\d{1,5}$/.test(written) ? Number(written) : Number.NaN;
  if (port <= 65_535) return port;
  throw new Error(`The port is "${written}"; write a whole number from 1 to 65535, such as --port 4321.`);
}
