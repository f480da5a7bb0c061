import { formatWait } from "./format-wait.ts";

/** Where lines go that are written over: a terminal, or something that keeps everything. */
type Out = { readonly isTTY?: boolean; readonly write: (text: string) => unknown };

/** A line that is written over while work goes on, and taken away at its end. */
type ProgressLine = { readonly show: (done: number, all: number) => void; readonly clear: () => void };

const AT_MOST_EVERY = 200;
const TAKE_AWAY = "\r\u001b[K";

/**
 * Shows how many briefs of how many are ready and about how long the others will take. Only where somebody looks: what
 * keeps its lines, a file or another program, is told nothing. `now` gives milliseconds.
 */
export function progressLine(out: Out, now: () => number = () => performance.now()): ProgressLine {
  if (out.isTTY !== true) return { show: () => undefined, clear: () => undefined };
  let first: { readonly at: number; readonly done: number } | undefined;
  let last = -Infinity;
  return {
    show: (done, all) => {
      const at = now();
      first ??= { at, done };
      if (at - last < AT_MOST_EVERY && done < all) return;
      last = at;
      const each = done > first.done ? (at - first.at) / (done - first.done) : undefined;
      const left =
        each === undefined || done === all ? "" : `, ${formatWait((each * (all - done)) / 1000)} left`;
      out.write(`${TAKE_AWAY}Briefs: ${done} of ${all}${left}`);
    },
    clear: () => {
      if (first) out.write(TAKE_AWAY);
    },
  };
}
