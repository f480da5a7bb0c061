import * as z from "zod";
import type { Fault } from "../../models/fault.ts";

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
  /** Way from the value at hand to the one that is refused, for transforms of whole groups. */
  readonly path?: readonly PropertyKey[];
  /** The name of the entry is refused, not its value. */
  readonly at?: "name";
};

/** How a doubtful text was read. `readAs` is the same said beyond doubt; the file is read as if that stood there. */
type Notice = Omit<Refusal, "severity"> & { readonly readAs: string };

/** The parts of a refusal or notice inside a schema's issue. */
export type IssueParams = Omit<Refusal, "severity"> & {
  readonly severity: Fault["severity"];
  readonly readAs?: string;
};

/** Refuses, or asks about, the text a schema's transform was given. Return its result from the transform. */
export function refuse(ctx: z.RefinementCtx, refusal: Refusal): never {
  tellRefusal(ctx, refusal);
  return z.NEVER;
}

/** Like `refuse`, where the transform goes on to the next entry of a group. */
export function tellRefusal(ctx: z.RefinementCtx, refusal: Refusal): void {
  raise(ctx, { severity: "fault", ...refusal });
}

/** Tells how a text was read that is taken. The reader repeats the reading with `readAs`, which must need no notice. */
export function tellNotice(ctx: z.RefinementCtx, told: Notice): void {
  raise(ctx, { severity: "notice", ...told });
}

function raise(ctx: z.RefinementCtx, params: IssueParams): void {
  const path = [...(params.path ?? [])];
  ctx.issues.push({ code: "custom", input: ctx.value, message: params.problem, path, params });
}
