import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Data, Usable } from "../models/data.ts";
import { sayFaults } from "../reading/say-fault.ts";
import { loadUsable } from "../site/load-data.ts";
import { counted } from "./counted.ts";
import type { Surroundings } from "../site/surroundings.ts";

/** What can be used of everything people wrote, and what has to be told of the rest. */
type ReadData = { readonly data: Data; readonly faults: Usable["faults"] };

/**
 * Everything people wrote, checked, with the notices about it told on the error output.
 *
 * @throws an Error that tells all faults of all files, or that there is nothing to read.
 */
export function readChecked(surroundings: Surroundings, tell: (text: string) => void): Data {
  const { value, faults, notices } = readFolders(surroundings);
  if (!value || faults.length > 0) throw new Error(sayFaults(faults));
  if (notices.length > 0) tell(`${sayFaults(notices)}\n`);
  return value;
}

/**
 * What can be used though some files have faults; the faults are told on the error output and given back, so that a
 * command can end accordingly. Where one athlete is named, only what that one's plans rest on is read.
 * Notices are the check\'s to tell: here only that there are some.
 *
 * @throws an Error that tells all faults, where every brief needs what is broken, or that there is nothing to read.
 */
export function readUsable(
  surroundings: Surroundings,
  tell: (text: string) => void,
  athlete?: string,
): ReadData {
  const { value, faults, notices } = readFolders(surroundings, athlete);
  if (!value) throw new Error(sayFaults(faults));
  if (faults.length > 0) tell(`${sayFaults(faults)}\n`);
  if (notices.length > 0)
    tell(
      `${counted(notices.length, "notice")}: npm run check tells ${notices.length === 1 ? "it" : "them"}.\n`,
    );
  return { data: value, faults };
}

function readFolders(surroundings: Surroundings, athlete?: string): Usable {
  const { dataFolder } = surroundings;
  if (!existsSync(join(dataFolder, "content"))) {
    throw new Error(
      `There is no folder content/ in ${dataFolder}. ` +
        `Name the folder that holds content/ and athletes/ with --data or RIGSHEET_DATA.`,
    );
  }
  return loadUsable(surroundings, athlete);
}
