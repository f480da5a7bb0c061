import { fileURLToPath } from "node:url";
import type { Data } from "../../src/models/data.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { loadData } from "../../src/site/load-data.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The demonstration's own content and athletes, read as the tool reads them. */
export function demoData(): Data {
  const data = loadData({ root, dataFolder: root, audience: "everyone" });
  if (!data.ok) throw new Error(sayFaults(data.faults));
  return data.value;
}
