import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Checked } from "../models/fault.ts";
import type { Movement } from "../models/movement.ts";
import { checkMessage } from "./check-message.ts";
import { USUAL_MESSAGE } from "./write-message.ts";

const PATH = "content/message.txt";

/** The coach's own text of messages, where there is one, checked. */
export function readTemplate(dataFolder: string, movements: ReadonlyMap<string, Movement>): Checked<string> {
  const file = join(dataFolder, PATH);
  if (!existsSync(file)) return { ok: true, value: USUAL_MESSAGE, notices: [] };
  const text = readFileSync(file, "utf8").replace(/^\uFEFF/, "");
  // Letters that were lost are told where all files are read.
  if (text.includes("\uFFFD")) return { ok: false, faults: [] };
  const faults = checkMessage({ path: PATH, text }, movements);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, value: text.trim() === "" ? USUAL_MESSAGE : text, notices: [] };
}

/** The text of messages for boards: the usual one where the coach's own has faults, which the check tells. */
export function messageTemplate(dataFolder: string, movements: ReadonlyMap<string, Movement>): string {
  const read = readTemplate(dataFolder, movements);
  return read.ok ? read.value : USUAL_MESSAGE;
}
