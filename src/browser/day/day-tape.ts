import { shape } from "./dom.ts";

/** What stands on the tape of the day: stretches of the plan, what was done, and now. Any one unit of time. */
type TapeOfDay = {
  readonly length: number;
  readonly pieces: readonly { readonly from: number; readonly to: number; readonly strong?: boolean }[];
  readonly half?: number;
  /** Clocks of taps, told below the strip. */
  readonly done: readonly number[];
};

/** The drawing with the hand that moves on it. */
export type LiveTape = { readonly element: SVGElement; readonly move: (now: number) => void };

const WIDTH = 1000;
const TOP = 26;
const BOTTOM = 74;
const GAP = 3;

/**
 * The tape to the scale of time: the plan cut at each place where one looks at the clock, the point of half the work, taps as
 * notches below, and a mark that moves along. What lies behind the mark is filled.
 */
export function liveTape(tape: TapeOfDay, label: string): LiveTape {
  const svg = shape("svg", {
    class: "day-tape",
    viewBox: `0 0 ${WIDTH} 100`,
    preserveAspectRatio: "none",
    role: "img",
    "aria-label": label,
  });
  const x = (time: number): number => (WIDTH * Math.min(Math.max(time, 0), tape.length)) / tape.length;
  const fills = tape.pieces.map(({ from, to, strong }) => {
    const left = x(from) + GAP;
    const width = Math.max(2, x(to) - x(from) - 2 * GAP);
    const box = { x: left, y: TOP, width, height: BOTTOM - TOP };
    const fill = shape("rect", { ...box, width: 0, class: strong ? "tape-strong" : "tape-done" });
    svg.append(shape("rect", { ...box, class: "tape-piece" }), fill);
    return { fill, left, width };
  });
  if (tape.half !== undefined)
    svg.append(shape("path", { d: `M${x(tape.half) - 9} 8h18l-9 16z`, class: "tape-half" }));
  for (const clock of tape.done)
    svg.append(shape("rect", { x: x(clock) - 2.5, y: BOTTOM + 3, width: 5, height: 18, class: "tape-tap" }));
  const hand = shape("path", { d: "M-9 100l9-14l9 14zM-2.5 18h5v70h-5z", class: "tape-hand" });
  svg.append(hand);
  return {
    element: svg,
    move: (now) => {
      const at = x(now);
      hand.setAttribute("transform", `translate(${at.toFixed(1)} 0)`);
      for (const { fill, left, width } of fills)
        fill.setAttribute("width", Math.max(0, Math.min(width, at - left)).toFixed(1));
    },
  };
}
