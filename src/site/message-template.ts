import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { checkMessage, USUAL_MESSAGE } from "./write-message.ts";

/**
 * The coach's own text of messages, `content/message.txt`, where there is one.
 *
 * @throws an Error that names every word in it that does not exist.
 */
export function messageTemplate(dataFolder: string): string {
  const file = join(dataFolder, "content", "message.txt");
  if (!existsSync(file)) return USUAL_MESSAGE;
  const template = readFileSync(file, "utf8").replace(/^\uFEFF/, "");
  const faults = checkMessage(template);
  if (faults.length > 0) throw new Error(faults.map((fault) => `content/message.txt, ${fault}`).join("\n"));
  return template;
}
