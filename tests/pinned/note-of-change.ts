import type { Difference } from "./agree.ts";

/** The lines of one workout's plans that moved. */
export type Moved = { readonly name: string; readonly lines: readonly Difference[] };

/** Lines that say most, in the order in which one of them is chosen to stand for all. */
const TELLING = ["target", "total", "expected", "first load", "attempt", "place", "round"];

/** The note of a change for CHANGES.md: the cause, and for each workout how many plans moved and one line, old and new. */
export function noteOfChange(cause: string, moved: readonly Moved[]): string {
  const lines = moved.map(({ name, lines: all }) => {
    const plans = new Set(all.map(({ plan }) => plan)).size;
    const { plan, old, now } = mostTelling(all);
    return `- ${name}: ${plans} plans, ${all.length} lines. ${plan.split(" ")[0] ?? ""}: \`${old || "nothing"}\` → \`${now || "nothing"}\``;
  });
  return `## ${cause}\n\n${lines.join("\n")}\n`;
}

function mostTelling(lines: readonly Difference[]): Difference {
  const ranked = TELLING.flatMap((start) =>
    lines
      .filter(({ old, now }) => old.startsWith(start) && now.startsWith(start))
      .toSorted((a, b) => firstChange(b) - firstChange(a)),
  );
  return ranked[0] ?? lines[0] ?? { plan: "", old: "", now: "" };
}

/** Relative change of the first number of a line. */
function firstChange({ old, now }: Difference): number {
  const [before = 0, after = 0] = [old, now].map((line) => Number(/\d+(?:\.\d+)?/.exec(line)?.[0] ?? 0));
  return Math.abs(after - before) / Math.max(Math.abs(before), 1e-9);
}
