import * as z from "zod";
import type { Reading } from "../quantities/reading.ts";
import { tellNotice, tellRefusal } from "../yaml/refuse.ts";

/** Where in the value at hand the text stands; see `Refusal`. */
type Spot = {
  readonly path?: readonly PropertyKey[];
  readonly found?: string;
  readonly offset?: number;
};

/** Gives what a reader of quantities took; hands on its questions, refusals and how it read a doubtful text. */
export function takeReading<T>(ctx: z.RefinementCtx, reading: Reading<T>, spot: Spot = {}): T {
  tellReading(ctx, reading, spot);
  return reading.ok && !reading.told ? reading.value : z.NEVER;
}

/** Hands on the questions, refusals and notices of a reading. */
export function tellReading(ctx: z.RefinementCtx, reading: Reading<unknown>, spot: Spot = {}): void {
  if (!reading.ok) {
    const { severity, problem, allowed, remedy } = reading;
    tellRefusal(ctx, { ...spot, severity, problem, allowed, remedy });
  } else if (reading.told) {
    const { problem, readAs } = reading.told;
    tellNotice(ctx, { ...spot, problem, readAs, remedy: `Write \`${readAs}\` to be sure.` });
  }
}
