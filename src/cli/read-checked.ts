import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Data } from "../models/data.ts";
import { sayFaults } from "../reading/say-fault.ts";
import { loadData } from "../site/load-data.ts";
import type { Surroundings } from "../site/surroundings.ts";

/**
 * Everything people wrote, checked, with the notices about it told on the error output.
 *
 * @throws an Error that tells all faults of all files, or that there is nothing to read.
 */
export function readChecked(surroundings: Surroundings, tell: (text: string) => void): Data {
  const { dataFolder } = surroundings;
  if (!existsSync(join(dataFolder, "content"))) {
    throw new Error(
      `There is no folder content/ in ${dataFolder}. ` +
        `Name the folder that holds content/ and athletes/ with --data or RIGSHEET_DATA.`,
    );
  }
  const checked = loadData(surroundings);
  if (!checked.ok) throw new Error(sayFaults(checked.faults));
  if (checked.notices.length > 0) tell(`${sayFaults(checked.notices)}\n`);
  return checked.value;
}
