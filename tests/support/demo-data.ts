import { fileURLToPath } from "node:url";
import type { Data } from "../../src/models/data.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import type { AthleteContext } from "../../src/reading/athlete-file/context.ts";
import { readFiles } from "../../src/reading/read-data.ts";
import { loadData, readSources } from "../../src/site/load-data.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What athletes of the demonstration may refer to. */
export function demoContext(): AthleteContext {
  const { builtIn, own } = readSources({ root, dataFolder: root, audience: "everyone" });
  return readFiles(builtIn, own).context;
}

/** The demonstration's own content and athletes, read as the tool reads them. */
export function demoData(): Data {
  const data = loadData({ root, dataFolder: root, audience: "everyone" });
  if (!data.ok) throw new Error(sayFaults(data.faults));
  return data.value;
}
