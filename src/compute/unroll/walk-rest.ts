import { seconds } from "../../models/quantity.ts";
import type { RestLength } from "../../models/workout.ts";
import { emitRest, type Emitter } from "./emitter.ts";
import type { Position } from "./frame.ts";

/** Emits a rest; clocks of the workout become clocks of the part. */
export function walkRest(
  length: RestLength,
  counted: boolean,
  { soonest, clock }: Position,
  emitter: Emitter,
): Position {
  switch (length.kind) {
    case "exactly":
      emitRest(emitter, { kind: "exactly", time: length.time }, counted);
      return { soonest: soonest + length.time, clock: clock === undefined ? undefined : clock + length.time };
    case "until": {
      const end = seconds(length.clock - emitter.context.startClock);
      emitRest(emitter, { kind: "until", clock: end }, counted);
      return { soonest: Math.max(soonest, end), clock: end };
    }
    case "at-least":
      emitRest(emitter, { kind: "at-least", time: length.time }, counted);
      return { soonest: soonest + length.time, clock: undefined };
    case "rest-of-interval":
      // The end of the interval is waited for anyway.
      return { soonest, clock };
    case "as-long-as-work":
      emitRest(emitter, { kind: "as-long-as-work", times: length.times }, counted);
      return { soonest, clock: undefined };
  }
}

/** What is left of an interval is rest, unless the last effort of it goes on to its end anyway. */
export function waitUntil(clock: number, emitter: Emitter): void {
  const last = emitter.items.at(-1);
  if (last?.kind === "effort" && last.amount.kind === "until" && last.amount.clock === clock) return;
  emitRest(emitter, { kind: "until", clock: seconds(clock) }, true);
}
