import { sayFaults } from "../reading/say-fault.ts";
import { counted } from "./counted.ts";
import type { LogsTaken } from "./take-logs.ts";

/** What a folder of logs gave: whose files hold how many results more, and what kept a log from being taken. */
export function sayLogs({ added, faults, others }: LogsTaken, folder: string): string {
  const total = added.reduce((sum, { results }) => sum + results, 0);
  const lines =
    added.length === 0
      ? ["No result was taken."]
      : [
          `${counted(total, "result")} taken into ${counted(added.length, "file")} in ${folder}/athletes/:`,
          ...added.map(({ athlete, results }) => `  ${athlete}.yaml: ${counted(results, "result")}`),
          "Look at them, then: npm run intake -- --take",
        ];
  const left = faults.length === 0 ? [] : ["", "Logs with a fault were left out whole:", sayFaults(faults)];
  const unread =
    others.length === 0
      ? []
      : ["", `Not read, because a log is a text ending in .yaml, .yml or .txt: ${others.join(", ")}`];
  return [...lines, ...left, ...unread].join("\n");
}
