import type { Feeling } from "../models/vocabulary.ts";
import type { BodyFeeling, DayEvent, TappedLift } from "./day-event.ts";

/** What is known of a part while it is done. Moments in milliseconds since 1970. */
export type PartState = {
  readonly go?: number;
  /** Rows of the plan at whose end somebody tapped, in the order of the taps. */
  readonly passes: readonly { readonly row: number; readonly at: number }[];
  readonly ended?: number;
  /** Score units done, where somebody counted them. */
  readonly done?: number;
  readonly body?: BodyFeeling;
  readonly lifts: readonly (TappedLift & { readonly at: number })[];
  readonly felt?: Feeling;
  readonly version?: "prescribed" | "scaled";
};

export type DayState = {
  /** Starts told so far, the last of which holds. */
  readonly starts: readonly { readonly at: number; readonly start: number }[];
  readonly parts: Readonly<Record<string, PartState>>;
  readonly note?: string;
  /** When a stop sign ended the day. */
  readonly stopped?: number;
};

/** Nobody stops, rests and begins again within so many hours: before that a day is not over. Judgement. */
const HOURS_APART = 6;

/** Whether what is kept may be of an earlier day, so that another can begin. Moments in milliseconds since 1970. */
export function mayBeginAnew(events: readonly DayEvent[], now: number): boolean {
  const last = standing(events).at(-1);
  return last !== undefined && last.kind !== "new-day" && now - last.at >= HOURS_APART * 3_600_000;
}

const NOTHING: PartState = { passes: [], lifts: [] };

const EMPTY: DayState = { starts: [], parts: {} };

export const partState = ({ parts }: DayState, name: string): PartState => parts[name] ?? NOTHING;

/**
 * The log of a day folded into how it stands. An undo takes back the last tap before it that was not taken back already; what
 * comes twice counts as it was tapped last. A new day leaves all before it behind.
 */
export function foldDay(events: readonly DayEvent[]): DayState {
  return standing(events).reduce(after, EMPTY);
}

/** The events that were not taken back. */
export function standing(events: readonly DayEvent[]): readonly DayEvent[] {
  const kept: DayEvent[] = [];
  for (const event of events) {
    if (event.kind === "undo") kept.pop();
    else kept.push(event);
  }
  return kept;
}

function after(state: DayState, event: DayEvent): DayState {
  if (event.kind === "start-at")
    return { ...state, starts: [...state.starts, { at: event.at, start: event.start }] };
  if (event.kind === "note") return { ...state, note: event.text };
  if (event.kind === "stopped") return { ...state, stopped: event.at };
  if (event.kind === "new-day") return EMPTY;
  if (event.kind === "undo") return state;
  const part = partAfter(partState(state, event.part), event);
  return { ...state, parts: { ...state.parts, [event.part]: part } };
}

type PartEvent = Extract<DayEvent, { readonly part: string }>;

function partAfter(part: PartState, event: PartEvent): PartState {
  switch (event.kind) {
    case "go":
      return { ...part, go: event.at };
    case "passed":
      return { ...part, passes: [...part.passes, { row: event.row, at: event.at }] };
    case "ended":
      return { ...part, ended: event.at };
    case "score":
      return { ...part, done: event.done };
    case "body":
      return { ...part, body: event.felt };
    case "lift": {
      const { lift, load, made, at } = event;
      return { ...part, lifts: [...part.lifts, { lift, load, made, at }] };
    }
    case "felt":
      return { ...part, felt: event.felt };
    case "version":
      return { ...part, version: event.version };
  }
}
