import type { Deadline } from "../../models/course.ts";
import { seconds } from "../../models/quantity.ts";
import type { BlockStep } from "../../models/workout.ts";
import type { Emitter } from "./emitter.ts";
import type { Frame, Position } from "./frame.ts";

/** The frame with a deadline added; the earlier of two holds. */
export function withDeadline(frame: Frame, own: Deadline | undefined): Frame {
  const around = frame.deadline;
  if (own === undefined || (around !== undefined && around.clock <= own.clock)) return frame;
  return { ...frame, deadline: own };
}

/**
 * Clock by which a block, or with `by +3:00` each of its passes, must be done, else the part ends. Moves the last
 * deadline on.
 */
export function byDeadline({ by }: BlockStep, emitter: Emitter): Deadline | undefined {
  if (by === undefined) return undefined;
  const clock = by.kind === "clock" ? by.time - emitter.context.startClock : emitter.lastDeadline + by.time;
  emitter.lastDeadline = clock;
  return { clock: seconds(clock), onMiss: "part-ends" };
}

/** The frame of one pass that is capped: what is not done by then is left, and as much as possible goes on until then. */
export function withCap(block: BlockStep, position: Position, frame: Frame): Frame {
  if (block.cap === undefined || position.clock === undefined) return frame;
  const end = position.clock + block.cap;
  return { ...withDeadline(frame, { clock: seconds(end), onMiss: "work-is-left" }), windowEnd: end };
}

/** The frame inside a window of the clock that ends at a clock of the part. */
export function insideWindow(frame: Frame, end: number, onMiss: Deadline["onMiss"]): Frame {
  return { ...withDeadline(frame, { clock: seconds(end), onMiss }), windowEnd: end, inWindow: true };
}
