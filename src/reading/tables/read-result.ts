import { asked, type CellReading, refused } from "./cell-reading.ts";
import type { ResultMeaning } from "./meaning.ts";
import { readSplits } from "./read-splits.ts";

type Entry = Readonly<Record<string, unknown>>;

const NO_SCORE = /^(?:0|-+|\?|n\/?a|dns|dnf|dnc|wd|none|no score)$/i;
const SCALED = /\s*(?:-|–|,|\()\s*(?:s|sc|scaled)\)?$/i;
const CAPPED = /^(?:c(?:ap(?:ped)?)?|\d{1,2}:\d\d)\s*\+\s*(\d+)$/i;

/**
 * Reads the score of a workout done, or the attempts of a lift: `9:41`, `203 reps - s`, `100 kg`, `85, 90, 95x`. `0` and the
 * like are no score. What a number behind the cap counts is asked once for a table, because the two readings turn a
 * ranking around.
 */
export function readResult(
  meaning: ResultMeaning,
  text: string,
  unit: string | undefined,
  { capped, total }: { readonly capped?: "left" | "done"; readonly total?: number },
  take: (entry: Entry) => CellReading,
): CellReading {
  if (NO_SCORE.test(text)) return { kind: "nothing" };
  const { workout, part } = meaning;
  const base = { workout, ...(part === undefined ? {} : { part }) };
  if (meaning.kind === "splits") return splitsOf(text, total, base, take);
  if (meaning.kind === "attempts") return take({ ...base, attempts: attemptsIn(text, unit) });
  const version = SCALED.test(text) ? { version: "scaled" } : {};
  const score = text.replace(SCALED, "").trim();
  const more = CAPPED.exec(score);
  if (more) {
    if (capped === undefined)
      return asked("the number behind the cap can be reps left or reps done", ["left", "done"]);
    if (capped === "done") return take({ ...base, reps: more[1] ?? "", ...version });
    return refused(
      "how many reps were done does not follow from those left",
      "Write the reps done, such as `128 reps`.",
    );
  }
  const reps = /^(\d+)\s*(?:reps?|cals?|calories|m|metres)?$/i.exec(score);
  if (reps) return take({ ...base, reps: reps[1] ?? "", ...version });
  if (/\d:\d\d/.test(score)) return take({ ...base, time: score, ...version });
  return take({ ...base, load: score, ...version });
}

/** Clocks as they run on; times of rounds are asked about, and an answer is read as clocks again. */
function splitsOf(
  text: string,
  total: number | undefined,
  base: Entry,
  take: (entry: Entry) => CellReading,
): CellReading {
  const read = readSplits(text, total);
  if (read.kind === "clocks") return take({ ...base, splits: read.splits });
  if (read.kind === "either")
    return asked("these can be the times of single rounds, which add up to other clocks", read.proposals);
  return refused("these are no clocks", "Write the running clocks with commas, such as `1:32, 3:01, 4:12`.");
}

/** `85, -90, 90x` as attempts: made, missed, missed. */
const attemptsIn = (text: string, unit: string | undefined): readonly string[] =>
  text.split(/\s*[,;]\s+|\s*\/\s*|\s*;\s*/).map((one) => {
    const missed = /^[-−(]\s*\d|x$|✗$|\b(?:miss|missed|fail|failed|no)\b/i.test(one);
    const [, load = one, own] = /(\d[\d.,]*)\s*(kg|lb|lbs|#)?/i.exec(one) ?? [];
    const clock = /\d{0,2}:\d\d/.exec(one)?.[0];
    const mass = `${load} ${own ?? unit ?? ""}`.trim();
    return `${mass} ${missed ? "missed" : "made"}${clock === undefined ? "" : ` ${clock}`}`;
  });
