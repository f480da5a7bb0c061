import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Track } from "../motion/track.ts";

type Counted = NonNullable<Pacing["ifThen"][number]["counted"]>;

type CountedRow = Pick<PacingRow, "index" | "movement" | "amount" | "scoreDone">;

/** What is counted at the end of a row: the score, or of work that goes on until reps of one movement add up, these alone. */
export type Counting = { readonly doneAt: (row: number) => number; readonly counted?: Counted };

/** How what is done is counted in a part. */
export function countingOf({ items }: Pick<Track, "items">, rows: readonly CountedRow[]): Counting {
  const adding = items.find((item) => item.kind === "effort" && item.accumulates !== undefined);
  if (adding?.kind !== "effort") return { doneAt: (row) => rows[row]?.scoreDone ?? 0 };
  const { id, name, plural } = adding.movement;
  return {
    doneAt: (row) =>
      rows.reduce(
        (sum, { index, movement, amount }) => sum + (index <= row && movement === id ? amount : 0),
        0,
      ),
    counted: { name, plural },
  };
}
