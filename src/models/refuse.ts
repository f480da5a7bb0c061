import * as z from "zod";
import type { Fault } from "./fault.ts";

/** What a reading says of a text it cannot take as it stands. */
export type Refusal = {
  /** The words found; the whole text when absent. */
  readonly found?: string;
  readonly problem: string;
  readonly allowed?: string | undefined;
  readonly nearest?: string | undefined;
  readonly remedy: string;
  readonly severity?: "fault" | "question";
  /** Where in the text the words stand, counted in characters from 0, so that the column points at them. */
  readonly offset?: number | undefined;
};

/** How a doubtful text was read. `readAs` is the same said beyond doubt; the file is read as if that stood there. */
export type Notice = Omit<Refusal, "severity"> & { readonly readAs: string };

/** The parts of a refusal or notice inside a schema's issue. */
export type IssueParams = Omit<Refusal, "severity"> & {
  readonly severity: Fault["severity"];
  readonly readAs?: string;
};

/** Refuses, or asks about, the text a schema's transform was given. Return its result from the transform. */
export function refuse(ctx: z.RefinementCtx, refusal: Refusal): never {
  const params: IssueParams = { severity: "fault", ...refusal };
  ctx.issues.push({ code: "custom", input: ctx.value, message: refusal.problem, params });
  return z.NEVER;
}

/** Takes a text but tells how it was read. The reader repeats the reading with `readAs`, which must need no notice. */
export function notice(ctx: z.RefinementCtx, told: Notice): never {
  const params: IssueParams = { severity: "notice", ...told };
  ctx.issues.push({ code: "custom", input: ctx.value, message: told.problem, params });
  return z.NEVER;
}
