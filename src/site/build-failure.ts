import { existsSync } from "node:fs";
import { explain } from "./explain.ts";
import { hasCode } from "./has-code.ts";

/** Raised when a build cannot be made; the message is for a person, and the earlier site is as it was. */
export class BuildFailure extends Error {}

/** What went wrong in plain words, with what it means for the site that was there before. */
export function explainFailure(error: unknown, target: string): BuildFailure {
  if (error instanceof BuildFailure) return error;
  const left = existsSync(target) ? " What was built before is as it was." : "";
  if (hasCode(error, "EBUSY")) {
    return new BuildFailure(
      `${target} cannot be replaced as a whole: another disk is mounted there, or a program has it open. ` +
        `Close that program, or put the site into a folder inside it with --out.${left}`,
    );
  }
  return new BuildFailure(`${explain(error)}${left}`, { cause: error });
}
