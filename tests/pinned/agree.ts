/** How far a number may lie from the one kept, as a share of it: 0.1 %. */
const SHARE = 0.001;

/** How far it may lie besides, in the number's own unit: one in its last printed place. */
const LAST_PLACE = 0.001;

const NUMBER = /-?\d+(?:\.\d+)?/g;

/** Whether two lines say the same: equal words, and numbers equal to 0.1 %. */
export function agree(kept: string, now: string): boolean {
  if (kept === now) return true;
  if (kept.replace(NUMBER, "#") !== now.replace(NUMBER, "#")) return false;
  const [before, after] = [kept, now].map((line) => (line.match(NUMBER) ?? []).map(Number));
  return (before ?? []).every((value, index) => {
    const other = after?.[index] ?? NaN;
    return Math.abs(value - other) <= SHARE * Math.max(Math.abs(value), Math.abs(other)) + LAST_PLACE;
  });
}

/** One line that is told otherwise than it was kept. */
export type Difference = { readonly plan: string; readonly old: string; readonly now: string };

const plansOf = (text: string): ReadonlyMap<string, readonly string[]> =>
  new Map(
    text
      .split(/^(?=== )/m)
      .filter((plan) => plan.startsWith("== "))
      .map((plan) => {
        const [head = "", ...lines] = plan.trimEnd().split("\n");
        return [head, lines];
      }),
  );

/** Every line of the plans of two texts that does not agree; a line only one of them has stands against nothing. */
export function differences(kept: string, now: string): readonly Difference[] {
  const [old, made] = [plansOf(kept), plansOf(now)];
  return [...new Set([...old.keys(), ...made.keys()])].flatMap((head) => {
    const plan = head.replaceAll("=", "").trim();
    const [before, after] = [old.get(head) ?? [], made.get(head) ?? []];
    const length = Math.max(before.length, after.length);
    return Array.from({ length }, (_, index) => ({
      plan,
      old: before[index] ?? "",
      now: after[index] ?? "",
    })).filter((line) => !agree(line.old, line.now));
  });
}

/** The new text, with the kept line wherever it still agrees, so that only what moved is seen to change. */
export function keepWhatAgrees(kept: string, now: string): string {
  const old = plansOf(kept);
  return [...plansOf(now)]
    .map(([head, lines]) => {
      const before = old.get(head);
      const same = before?.length === lines.length ? before : undefined;
      const chosen = lines.map((line, index) => {
        const was = same?.[index];
        return was !== undefined && agree(was, line) ? was : line;
      });
      return `${[head, ...chosen].join("\n")}\n`;
    })
    .join("\n");
}
