import type { BlockStep, Step } from "../../models/workout.ts";
import { unrollConstants } from "./constants.ts";
import { byDeadline, insideWindow, withCap, withDeadline } from "./deadlines.ts";
import { beginInterval, beginRound, isFull, markTieBreak, scoredSince, type Emitter } from "./emitter.ts";
import type { Frame, Position } from "./frame.ts";
import { holdsRepeated, holdsWindow, isRepeated, ladderNumber, passCount, standsAlone } from "./passes.ts";
import { walkEffort } from "./walk-effort.ts";
import { waitUntil, walkRest } from "./walk-rest.ts";

/**
 * Emits the steps of a list in order. Lines that stand beside repeated blocks, not inside one, make a round of their
 * own; `beginSection` is called before each such round or block.
 */
export function walkSteps(
  steps: readonly Step[],
  start: Position,
  frame: Frame,
  emitter: Emitter,
  beginSection?: () => void,
): Position {
  let position = start;
  let loose = false;
  const { accumulates, ...plain } = frame;
  for (const [index, step] of steps.entries()) {
    if (isFull(emitter)) break;
    if (step.kind === "rest") {
      position = walkRest(step.rest, step.counted, position, emitter);
      continue;
    }
    const isLoose = !standsAlone(step);
    if (!(isLoose && loose)) beginSection?.();
    if (isLoose && !loose && !frame.inRound) beginRound(emitter, frame.inWindow, frame.passes.length === 0);
    loose = isLoose;
    if (step.kind === "effort") {
      position = walkEffort(step, position, accumulates?.step === index ? frame : plain, emitter);
    } else {
      position = walkBlock(step, position, isLoose ? { ...plain, inRound: true } : plain, emitter);
    }
  }
  return position;
}

function walkBlock(block: BlockStep, start: Position, around: Frame, emitter: Emitter): Position {
  const frame: Frame = {
    ...around,
    ...(block.anyOrder ? { freeGroup: (emitter.groups += 1) } : {}),
    unbroken: around.unbroken || block.unbroken,
  };
  const { window } = block;
  if (window === undefined) return walkPasses(block, start, frame, emitter);
  if (start.clock === undefined) throw new RangeError(`when "${block.written}" begins is not fixed`);
  const inside = withDeadline(frame, byDeadline(block, emitter));
  const clocked: Clocked = { block, start: start.clock, frame: inside, emitter };
  if (window.kind === "lasts") return walkLasting(clocked, window.time);
  if (window.kind === "every") return walkIntervals(clocked, window.time, 0);
  return window.carriesOn
    ? walkInterrupted(clocked, window.on, window.off)
    : walkIntervals(clocked, window.on, window.off);
}

/** A block under a clock of its own, with the clock of the part at which it begins. */
type Clocked = {
  readonly block: BlockStep;
  readonly start: number;
  readonly frame: Frame;
  readonly emitter: Emitter;
};

/**
 * The passes of a block; without an end of their own, until nobody can get further. `clocked`: the clock of the block,
 * its deadline too, is in the frame already.
 */
function walkPasses(
  block: BlockStep,
  start: Position,
  frame: Frame,
  emitter: Emitter,
  clocked = false,
): Position {
  const count = passCount(block);
  const end = endOf(frame, emitter);
  const fixed = !clocked && block.by?.kind === "clock" ? byDeadline(block, emitter) : undefined;
  let position = start;
  for (let pass = 0; count === undefined || pass < count; pass++) {
    // As much as possible has filled the window: nothing is left of it for another pass.
    if (count === undefined && position.clock !== undefined && position.clock >= end) break;
    if (isFull(emitter) || (count === undefined && position.soonest > end)) {
      emitter.cut = true;
      break;
    }
    if (pass > 0 && block.restBetween !== undefined) {
      position = walkRest(block.restBetween, true, position, emitter);
    }
    const since = emitter.items.length;
    const by = clocked ? undefined : (fixed ?? byDeadline(block, emitter));
    const inside = withDeadline(withCap(block, position, frame), by);
    position = walkSteps(block.steps, position, frameOfPass(block, pass, inside, emitter), emitter);
    if (block.tieBreak) markTieBreak(emitter, since);
    if (count === undefined && !frame.inWindow && frame.passes.length === 0) {
      emitter.perPass.push(scoredSince(emitter, since));
    }
  }
  return position;
}

/** Begins a pass. A pass of an innermost repeated block is a round. */
function frameOfPass(block: BlockStep, pass: number, frame: Frame, emitter: Emitter): Frame {
  const repeated = isRepeated(block);
  const isRound = repeated && !frame.inRound && !holdsRepeated(block.steps, frame.inWindow);
  if (isRound) beginRound(emitter, frame.inWindow || holdsWindow(block.steps));
  const number = ladderNumber(block, pass);
  return {
    ...frame,
    ...(repeated ? { passes: [pass, ...frame.passes] } : {}),
    ...(number === undefined ? {} : { ladder: number }),
    inRound: frame.inRound || isRound,
  };
}

/** Clock past which nothing is done. */
const endOf = (frame: Frame, emitter: Emitter): number =>
  frame.windowEnd ?? emitter.ends ?? unrollConstants.longestOpenPart.value;

const at = (clock: number): Position => ({ soonest: clock, clock });

/** A window of fixed length, whatever is done in it. */
function walkLasting({ block, start, frame, emitter }: Clocked, time: number): Position {
  const end = start + time;
  if (!frame.inWindow) beginInterval(emitter);
  if (!frame.inRound) beginRound(emitter, true);
  const inside = { ...insideWindow(frame, end, "work-is-left"), inRound: true };
  walkPasses(block, at(start), inside, emitter, true);
  waitUntil(end, emitter);
  return at(end);
}

/**
 * Passes of `every` (no `off`), or of work and rest in turn; each entry has an interval of its own where the block
 * says so.
 */
function walkIntervals({ block, start, frame, emitter }: Clocked, on: number, off: number): Position {
  const entries = block.inTurn ? block.steps.map((step) => [step]) : [block.steps];
  const count = block.untilDone?.amount ?? passCount(block) ?? Infinity;
  const end = endOf(frame, emitter);
  const work = Math.min(on, block.cap ?? on);
  const adding = accumulationIn(block, emitter);
  let clock = start;
  for (let pass = 0; pass < count && clock < end; pass++) {
    if (isFull(emitter)) break;
    const since = emitter.items.length;
    const inPass = frameOfPass(block, pass, { ...frame, ...adding, inWindow: true }, emitter);
    let possible = true;
    for (const steps of entries) {
      if (!frame.inWindow) beginInterval(emitter);
      const inside = insideWindow(inPass, clock + work, block.elimination ? "part-ends" : "work-is-left");
      possible &&= walkSteps(steps, at(clock), inside, emitter).soonest <= clock + work;
      clock += on + off;
      waitUntil(clock, emitter);
    }
    if (block.tieBreak) markTieBreak(emitter, since);
    // Intervals that only grow are listed up to the first that nobody can do.
    if (!possible && block.elimination && count === Infinity) break;
  }
  // Without any end the list stops where nobody gets.
  emitter.cut ||= count === Infinity && end === unrollConstants.longestOpenPart.value;
  return at(clock);
}

function accumulationIn(block: BlockStep, emitter: Emitter): Pick<Frame, "accumulates"> {
  const { untilDone } = block;
  if (untilDone === undefined) return {};
  emitter.groups += 1;
  return { accumulates: { step: untilDone.step, group: emitter.groups, total: untilDone.amount } };
}

/** Work that is broken off for each rest and goes on after it: one endless list with pauses. */
function walkInterrupted({ block, start, frame, emitter }: Clocked, on: number, off: number): Position {
  const count = passCount(block) ?? Math.ceil((endOf(frame, emitter) - start) / (on + off));
  const end = start + count * (on + off) - off;
  for (let pass = 1; pass < count; pass++) {
    const to = start + pass * (on + off);
    emitter.pauses.push({ from: to - off, to });
  }
  if (!frame.inWindow) beginInterval(emitter);
  const endless: BlockStep = { ...block, passes: { kind: "open-rounds" } };
  walkPasses(endless, at(start), insideWindow(frame, end, "work-is-left"), emitter, true);
  waitUntil(end, emitter);
  return at(end);
}
