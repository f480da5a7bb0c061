import type { LoggedResult } from "../models/athlete.ts";
import type { EarlyPerformance } from "../models/workout.ts";
import { sayTime } from "../reading/quantities/time.ts";

/** What of a logged result becomes an early performance: whose, of which part, and what its clocks stand for. */
export type EarlyEntry = {
  readonly athlete: string;
  /** Absent where the workout has one part. */
  readonly part?: string;
  readonly after: EarlyPerformance["after"];
  readonly result: Pick<LoggedResult, "splits" | "time" | "reps">;
};

/** The lines of an entry of `early:`, without indentation. A time that is the last clock already is not said twice. */
export function earlyLines({ athlete, part, after, result }: EarlyEntry): readonly string[] {
  const { time, reps } = result;
  const splits = read(result.splits.slice(0, firstUnread(result)));
  return [
    `- athlete: ${athlete}`,
    ...(part === undefined ? [] : [`  part: ${part}`]),
    ...(splits.length > 0
      ? [`  after: ${after}`, `  splits: [${splits.map((clock) => `"${sayTime(clock)}"`).join(", ")}]`]
      : []),
    ...(time !== undefined && time !== splits.at(-1) ? [`  time: "${sayTime(time)}"`] : []),
    ...(reps === undefined ? [] : [`  reps: ${reps}`]),
  ];
}

/** Clocks of a result that an early performance cannot take, in order: those behind the first that was not read have no place. */
export const clocksLeftOut = (result: Pick<LoggedResult, "splits">): readonly string[] =>
  read(result.splits.slice(firstUnread(result))).map((clock) => sayTime(clock));

function firstUnread({ splits }: Pick<LoggedResult, "splits">): number {
  const missing = splits.findIndex((clock) => clock === undefined);
  return missing === -1 ? splits.length : missing;
}

const read = <T>(clocks: readonly (T | undefined)[]): readonly T[] =>
  clocks.flatMap((clock) => (clock === undefined ? [] : [clock]));

/**
 * The text of a workout's file with one more entry of `early:`, everything that stands there left as it is. Undefined where the
 * entries stand in brackets on one line, or the front matter has no end, so that it has to be added by hand.
 */
export function withEarlyEntry(text: string, entry: readonly string[]): string | undefined {
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const lines = text.split(newline);
  const end = lines.findIndex((line, at) => at > 0 && /^---\s*$/.test(line));
  if (!/^---\s*$/.test(lines[0] ?? "") || end === -1) return undefined;
  const at = lines.findIndex((line, index) => index < end && /^early:/.test(line));
  if (at === -1) {
    const added = ["early:", ...entry.map((line) => `  ${line}`)];
    return [...lines.slice(0, end), ...added, ...lines.slice(end)].join(newline);
  }
  if (!/^early:\s*(?:#.*)?$/.test(lines[at] ?? "")) return undefined;
  const first = lines.slice(at + 1, end).find((line) => /^\s*-\s/.test(line));
  const indent = /^\s*/.exec(first ?? "  ")?.[0] ?? "  ";
  return [...lines.slice(0, at + 1), ...entry.map((line) => indent + line), ...lines.slice(at + 1)].join(
    newline,
  );
}
