import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import type { Plan } from "../models/plan/plan.ts";
import { OWN_FOLDER, prepareOwnFolder } from "./secret.ts";
import { writeSafely } from "./write-safely.ts";

/** A mark of each brief as it was when it was last sent, by athlete and workout. Tells nothing of what it says. */
export type SentBriefs = Readonly<Record<string, string>>;

const fileIn = (dataFolder: string): string => join(dataFolder, OWN_FOLDER, "sent.json");
const sentField = z.record(z.string(), z.string());

/** The name of a brief among those sent. */
export const sentName = (athlete: string, workout: string): string => `${athlete}/${workout}`;

/** The mark of a plan: another where anything the athlete reads is another, but not for the day it was made alone. */
export function markOf(plan: Plan): string {
  return createHash("sha256")
    .update(JSON.stringify({ ...plan, date: "" }))
    .digest("hex")
    .slice(0, 16);
}

/** Reads the marks; nothing was sent where there is no file, or none that can be read. */
export function readSent(dataFolder: string): SentBriefs {
  const file = fileIn(dataFolder);
  if (!existsSync(file)) return {};
  try {
    return sentField.parse(JSON.parse(readFileSync(file, "utf8")));
  } catch {
    return {};
  }
}

export function writeSent(dataFolder: string, sent: SentBriefs): void {
  prepareOwnFolder(dataFolder);
  writeSafely(fileIn(dataFolder), `${JSON.stringify({ ...readSent(dataFolder), ...sent }, null, 1)}\n`);
}

/** Whether a brief is new, changed since it was sent, or as it was. */
export const sinceSent = (plan: Plan, sent: SentBriefs): "new" | "changed" | "same" =>
  sinceMarked(plan, markOf(plan), sent);

/** The same where the mark of the plan is known. */
export function sinceMarked(
  {
    athlete,
    workout,
  }: { readonly athlete: { readonly id: string }; readonly workout: { readonly id: string } },
  mark: string,
  sent: SentBriefs,
): "new" | "changed" | "same" {
  const before = sent[sentName(athlete.id, workout.id)];
  if (before === undefined) return "new";
  return before === mark ? "same" : "changed";
}
