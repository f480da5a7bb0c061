import type { CourseEffort, CourseItem, CourseRest, PassTag } from "../../models/course.ts";
import type { Part } from "../../models/workout.ts";
import { unrollConstants } from "./constants.ts";
import type { UnrollContext } from "./context.ts";

/** The list under construction, and the counters its tags come from. Lives as long as one unrolling. */
export type Emitter = {
  readonly part: Part;
  readonly context: UnrollContext;
  /** Clock of the part at which it ends whatever was done. */
  readonly ends: number | undefined;
  readonly items: CourseItem[];
  readonly pauses: { readonly from: number; readonly to: number }[];
  round: number;
  /** The round at hand is of lines that stand loose beside the rounds of the part. */
  aside: boolean;
  section: number | undefined;
  /** Interval or round inside the section. */
  roundOfSection: number;
  line: number;
  groups: number;
  lastDeadline: number;
  /** Score units done in each pass of the endless rounds, for the size of a round. */
  readonly perPass: number[];
  /** The list was cut where nobody gets. */
  cut: boolean;
};

/** An empty list for a part, with all counters before their first. */
export const emitterFor = (part: Part, context: UnrollContext, ends: number | undefined): Emitter => ({
  part,
  context,
  ends,
  items: [],
  pauses: [],
  round: 0,
  aside: false,
  section: undefined,
  roundOfSection: 0,
  line: 0,
  groups: 0,
  lastDeadline: 0,
  perPass: [],
  cut: false,
});

/** Begins a round. Inside a window, that is one interval, the interval stays the same. */
export function beginRound(emitter: Emitter, inWindow: boolean, aside = false): void {
  emitter.round += 1;
  emitter.aside = aside;
  if (!inWindow) emitter.roundOfSection += 1;
}

/** Begins an interval: a window of the clock. */
export function beginInterval(emitter: Emitter): void {
  emitter.roundOfSection += 1;
}

/** The tag of an item emitted now; before the first round began, that of round 1. */
export function tagOf(emitter: Emitter, ladder: number | undefined): PassTag {
  return {
    round: Math.max(emitter.round, 1),
    ...(emitter.aside ? { aside: true } : {}),
    ...(ladder === undefined ? {} : { ladder }),
    ...(emitter.section === undefined ? {} : { section: emitter.section }),
    roundOfSection: Math.max(emitter.roundOfSection, 1),
  };
}

/** Appends an effort with the next index. */
export function emitEffort(emitter: Emitter, effort: Omit<CourseEffort, "kind" | "index">): void {
  emitter.items.push({ kind: "effort", index: emitter.items.length, ...effort });
}

/** Appends a rest; where the score leaves rests out, none counts. */
export function emitRest(emitter: Emitter, rest: CourseRest["rest"], counted: boolean): void {
  const pass = tagOf(emitter, undefined);
  const index = emitter.items.length;
  emitter.items.push({
    kind: "rest",
    index,
    rest,
    counted: counted && emitter.part.score.restCounts,
    pass,
  });
}

/** Whether the list is so long that it must be cut. */
export function isFull(emitter: Emitter): boolean {
  const full = emitter.items.length >= unrollConstants.mostItems.value;
  if (full) emitter.cut = true;
  return full;
}

/** Marks the last effort emitted since an index as a moment of tie-break. */
export function markTieBreak(emitter: Emitter, since: number): void {
  const last = emitter.items.findLastIndex((item, index) => index >= since && item.kind === "effort");
  const item = emitter.items[last];
  if (item?.kind === "effort") emitter.items[last] = { ...item, tieBreak: true };
}

/** Score units of the counted efforts emitted since an index. */
export function scoredSince(emitter: Emitter, since: number): number {
  return emitter.items
    .slice(since)
    .reduce(
      (sum, item) => sum + (item.kind === "effort" && item.amount.kind === "counted" ? item.scores : 0),
      0,
    );
}
