import type { BlockStep, EffortStep, RestLength, RestStep, Step } from "../../models/workout.ts";
import type { Trouble } from "./notation-fault.ts";
import {
  UNREACHABLE,
  UNREACHABLE_ROUND,
  BEHIND_CAP,
  MAX_IN_COMPLEX,
  MAX_OF_ANY_LOAD,
  NO_END,
  TO_FAILURE,
  REST_WITHOUT_LENGTH,
  CLOCK_OF_WORKOUT,
  UNKNOWN_START,
  CAP_UNKNOWN_START,
  BACKWARDS,
  BEFORE_START,
  NOT_FREE,
} from "./work-troubles.ts";

/**
 * What the clock of a part allows: whether anything ends work without end, and at which clock of the part
 * (undefined: not known before the day).
 */
export type ClockOfPart = {
  readonly hasEnd: boolean;
  readonly end: number | undefined;
  /** An interval whose end ends the rest in it too. */
  readonly isInterval?: true;
  /** Clock of the part at which a cap ends work for time; deadlines behind it mean nothing. */
  readonly cap?: number | undefined;
};

/** Clocks are seconds of the part; undefined where they depend on how fast the work is done. */
type Walked = {
  readonly clock: number | undefined;
  /** The window around is used up: nothing after it is ever reached. */
  readonly filled: boolean;
};

type Walk = {
  readonly tell: (step: Step, trouble: Trouble) => void;
  /** Clock of the workout at which the part starts; undefined where that depends on a part before. */
  readonly starts: number | undefined;
  /** Clock of the part at which its cap ends it. */
  readonly cap: number | undefined;
  lastDeadline: number;
  lastWork: number | undefined;
};

/** At which clock the work ends, where that is fixed, and whether it has an end at all. */
export type CheckedWork = Walked & { readonly lastWork: number | undefined };

/**
 * Walks through the work of a part as the clock would, and tells what cannot be done as written: work after work
 * without end, as many as possible without an end, intervals whose start nobody knows, deadlines that go backwards.
 */
export function checkWork(
  steps: readonly Step[],
  part: ClockOfPart,
  starts: number | undefined,
  tell: Walk["tell"],
): CheckedWork {
  const told: (readonly [Step, Trouble])[] = [];
  // What is done round after round is told once.
  const tellOnce: Walk["tell"] = (step, trouble) => {
    if (told.some(([other, known]) => other === step && known.problem === trouble.problem)) return;
    told.push([step, trouble]);
    tell(step, trouble);
  };
  const walk: Walk = { tell: tellOnce, starts, cap: part.cap, lastDeadline: 0, lastWork: 0 };
  const walked = walkSteps(steps, 0, part, walk);
  return { ...walked, lastWork: walk.lastWork };
}

function walkSteps(
  steps: readonly Step[],
  start: number | undefined,
  window: ClockOfPart,
  walk: Walk,
): Walked {
  let clock = start;
  let filled = false;
  for (const step of steps) {
    if (filled) {
      walk.tell(step, UNREACHABLE);
      break;
    }
    const walked = walkStep(step, clock, window, walk);
    ({ clock, filled } = walked);
  }
  return { clock, filled };
}

function walkStep(step: Step, clock: number | undefined, window: ClockOfPart, walk: Walk): Walked {
  if (step.kind === "rest") return walkRest(step, clock, window, walk);
  const walked =
    step.kind === "effort" ? walkEffort(step, clock, window, walk) : walkBlock(step, clock, window, walk);
  if (step.kind === "effort") walk.lastWork = walked.clock;
  return walked;
}

function walkEffort(step: EffortStep, clock: number | undefined, window: ClockOfPart, walk: Walk): Walked {
  const amounts = step.pieces.map((piece) => piece.amount);
  if (amounts.length > 1 && amounts.some(({ kind }) => kind === "max" || kind === "max-for")) {
    walk.tell(step, MAX_IN_COMPLEX);
  }
  const [amount] = amounts;
  const isMax = amount?.kind === "max" || amount?.kind === "max-for";
  const isChosen = step.load?.kind === "same" && step.load.value.kind === "athletes-choice";
  if (isMax && isChosen) walk.tell(step, MAX_OF_ANY_LOAD);
  if (amount?.kind === "max-for" && step.unbroken) walk.tell(step, TO_FAILURE);
  if (amount?.kind === "max-for")
    return { clock: clock === undefined ? undefined : clock + amount.time, filled: false };
  if (amount?.kind !== "max") return { clock: undefined, filled: false };
  if (step.unbroken) walk.tell(step, TO_FAILURE);
  else if (!window.hasEnd) walk.tell(step, NO_END);
  return { clock: window.end, filled: true };
}

function walkRest(step: RestStep, clock: number | undefined, window: ClockOfPart, walk: Walk): Walked {
  if (step.rest.kind === "until" && walk.starts === undefined) walk.tell(step, CLOCK_OF_WORKOUT);
  if (step.rest.kind !== "rest-of-interval")
    return { clock: afterRest(step.rest, clock, walk), filled: false };
  if (window.isInterval !== true) {
    walk.tell(step, REST_WITHOUT_LENGTH);
    return { clock: undefined, filled: false };
  }
  return { clock: window.end, filled: true };
}

function afterRest(rest: RestLength, clock: number | undefined, walk: Walk): number | undefined {
  switch (rest.kind) {
    case "exactly":
      return clock === undefined ? undefined : clock + rest.time;
    case "until":
      return walk.starts === undefined ? Number.NaN : rest.clock - walk.starts;
    default:
      return undefined;
  }
}

function walkBlock(block: BlockStep, clock: number | undefined, around: ClockOfPart, walk: Walk): Walked {
  if (block.anyOrder) checkFreeOrder(block, walk);
  checkDeadline(block, walk);
  const { window } = block;
  if ((window !== undefined || block.cap !== undefined) && clock === undefined) {
    walk.tell(block, window === undefined ? CAP_UNKNOWN_START : UNKNOWN_START);
    return { clock: undefined, filled: false };
  }
  if (window !== undefined && clock !== undefined) return walkWindow(block, clock, around, walk);
  return walkPasses(block, clock, around, walk);
}

function walkPasses(block: BlockStep, start: number | undefined, around: ClockOfPart, walk: Walk): Walked {
  const count = passCount(block);
  let walked: Walked = { clock: start, filled: false };
  for (let pass = 0; pass < (count ?? 1); pass++) {
    if (pass > 0 && block.restBetween !== undefined) {
      walked = { clock: afterRest(block.restBetween, walked.clock, walk), filled: false };
    }
    const { clock } = walked;
    const capped = block.cap === undefined || clock === undefined ? undefined : clock + block.cap;
    const window = capped === undefined ? around : { hasEnd: true, end: capped };
    walked = walkSteps(block.steps, clock, window, walk);
    if (capped !== undefined) walked = { clock: walked.filled ? capped : undefined, filled: false };
    const [first] = block.steps;
    if (walked.filled && count !== undefined && pass < count - 1 && first !== undefined) {
      walk.tell(first, UNREACHABLE_ROUND);
      break;
    }
  }
  if (count !== undefined) return walked;
  if (!around.hasEnd) walk.tell(block, NO_END);
  return { clock: around.end, filled: true };
}

function walkWindow(block: BlockStep, start: number, around: ClockOfPart, walk: Walk): Walked {
  const { window } = block;
  if (window === undefined) return { clock: start, filled: false };
  if (window.kind === "lasts") {
    walkSteps(block.steps, start, { hasEnd: true, end: start + window.time, isInterval: true }, walk);
    walk.lastWork = start + window.time;
    return { clock: start + window.time, filled: false };
  }
  const longest = window.kind === "every" ? window.time : window.on;
  const work = Math.min(longest, block.cap ?? longest);
  const length = window.kind === "every" ? window.time : window.on + window.off;
  const entries = block.inTurn ? block.steps.map((step) => [step]) : [block.steps];
  const passes = passCount(block);
  let clock = start;
  for (let pass = 0; pass < (passes ?? 1); pass++) {
    for (const entry of entries) {
      walkSteps(entry, clock, { hasEnd: true, end: clock + work, isInterval: true }, walk);
      walk.lastWork = clock + work;
      clock += length;
    }
  }
  if (block.untilDone !== undefined) return { clock: undefined, filled: false };
  if (passes !== undefined) return { clock, filled: false };
  if (!around.hasEnd && !block.elimination) walk.tell(block, NO_END);
  return { clock: around.end, filled: true };
}

/** Undefined where the passes have no end of their own. */
function passCount(block: BlockStep): number | undefined {
  switch (block.passes.kind) {
    case "once":
      return 1;
    case "rounds":
      return block.passes.count;
    case "ladder":
      return block.passes.amounts.length;
    default:
      return undefined;
  }
}

function checkDeadline(block: BlockStep, walk: Walk): void {
  const { by } = block;
  if (by === undefined) return;
  if (by.kind === "after-last-deadline") {
    walk.lastDeadline += by.time * (passCount(block) ?? 1);
    tellBehindCap(block, walk);
    return;
  }
  if (walk.starts === undefined) {
    walk.tell(block, CLOCK_OF_WORKOUT);
    return;
  }
  const deadline = by.time - walk.starts;
  if (deadline <= walk.lastDeadline) walk.tell(block, walk.lastDeadline === 0 ? BEFORE_START : BACKWARDS);
  walk.lastDeadline = Math.max(walk.lastDeadline, deadline);
  tellBehindCap(block, walk);
}

function tellBehindCap(block: BlockStep, { lastDeadline, cap, tell }: Walk): void {
  if (cap !== undefined && lastDeadline > cap) tell(block, BEHIND_CAP);
}

function checkFreeOrder(block: BlockStep, walk: Walk): void {
  const odd = block.steps.find(
    (step) => step.kind !== "effort" || step.pieces.length > 1 || step.pieces[0]?.amount.kind !== "counted",
  );
  if (odd !== undefined) walk.tell(odd, NOT_FREE);
}
