import type { KnownScore } from "../athlete-file/context.ts";
import { plainText } from "../quantities/plain-text.ts";
import { sayTime } from "../quantities/time.ts";
import { asked, type CellReading, refused } from "./cell-reading.ts";
import type { ResultMeaning } from "./meaning.ts";
import { readSplits } from "./read-splits.ts";

type Entry = Readonly<Record<string, unknown>>;

const NO_SCORE = /^(?:0|-+|\?|n\/?a|dns|dnf|dnc|wd|dq|none|no (?:score|lift|mark)|nm|nl)$/i;
const SCALED = /\s*(?:(?:-|,|\()\s*|(?<=\d|reps?)\s+)(?:s|sc|scaled)\)?$/i;
const PRESCRIBED = /\s*(?:-|,|\(|\s)\s*(?:rx'?d?|prescribed)\)?$/i;
const CAPPED =
  /^(?:(?:c(?:ap(?:ped)?)?|tc|\d{1,2}:\d\d)\s*\+\s*(\d+)|(?:cap(?:ped)?|tc|time ?cap)\s*[(:,-]?\s*(\d+)\)?)$/i;
/** Reps behind the cap that say so themselves. */
const REPS_AT_CAP = /^(?:cap(?:ped)?|tc|time ?cap)\s*[(:,@-]?\s*(\d+ reps?)\)?$/i;
const CAP_ALONE = /^(?:cap(?:ped)?|time ?cap|tc|time)$/i;
const CLOCK = /^~?\d{0,3}[:'](\d\d)(?:[:.,"]\d*)?"?$/;
const ROUNDS = /^(\d+)\s*(?:rounds?|rds?|r)?\s*(?:\+|,|and|&|(?<=[a-z])\s?)\s*(\d+)\s*(?:reps?)?$/i;
const WHOLE_ROUNDS = /^(\d+)\s*(?:rounds?|rds?)$/i;
/** Nobody does more rounds than this: a bare number over it counts reps (judgement). */
const MOST_ROUNDS = 60;

type Beside = {
  readonly capped?: "left" | "done";
  readonly total?: number;
  readonly score?: KnownScore | undefined;
};

/**
 * Reads the score of a workout done, or the attempts of a lift, as that workout is scored: `9:41`, `203 reps - s`, `7 + 12`,
 * `100 kg`, `85, 90, 95x`. `0` and the like are no score. What a number behind the cap counts is asked once for a table,
 * because the two readings turn a ranking around; a bare number that two scores could be is asked about.
 */
export function readResult(
  meaning: ResultMeaning,
  written: string,
  unit: string | undefined,
  { capped, total, score }: Beside,
  take: (entry: Entry) => CellReading,
): CellReading {
  const text = plainText(written);
  if (NO_SCORE.test(text)) return { kind: "nothing" };
  const { workout, part } = meaning;
  const base = { workout, ...(part === undefined ? {} : { part }) };
  if (meaning.kind === "splits") return splitsOf(text, total, base, take);
  if (meaning.kind === "attempts") return take({ ...base, attempts: attemptsIn(text, unit) });
  const version = SCALED.test(text) ? { version: "scaled" } : {};
  const bare = text.replace(SCALED, "").replace(PRESCRIBED, "").trim().replace(REPS_AT_CAP, "$1");
  const doubt = doubtOf(bare, score);
  if (doubt) return doubt;
  const more = CAPPED.exec(bare);
  if (more) {
    if (capped === undefined)
      return asked("the number behind the cap can be reps left or reps done", ["left", "done"]);
    if (capped === "done") return take({ ...base, reps: more[1] ?? more[2] ?? "", ...version });
    return refused(
      "how many reps were done does not follow from those left",
      "Write the reps done, such as `128 reps`.",
    );
  }
  return take({ ...base, ...scoreIn(bare, unit, score), ...version });
}

/** A score that stands for two, or for none. */
function doubtOf(text: string, score: KnownScore | undefined): CellReading | undefined {
  if (CAP_ALONE.test(text) || (score?.cap !== undefined && text === sayTime(score.cap)))
    return asked("this is the cap, and how many reps were done by then is not said", []);
  const number = /^\d+$/.test(text) ? Number(text) : undefined;
  if (number === undefined) return undefined;
  if (score?.kind === "rounds-and-reps" && number <= MOST_ROUNDS)
    return asked("this can be whole rounds, or reps", [`${number} rounds`, `${number} reps`]);
  if (score?.kind === "time")
    return asked("this can be reps by the cap, or seconds", [`${number} reps`, sayTime(number)]);
  return undefined;
}

/** The score as an entry of a result: `reps`, `rounds`, `time` or `load`. */
function scoreIn(text: string, unit: string | undefined, score: KnownScore | undefined): Entry {
  const rounds = score?.kind === "rounds-and-reps" ? ROUNDS.exec(text) : null;
  if (rounds) return { rounds: `${rounds[1] ?? ""} + ${rounds[2] ?? ""}` };
  const whole = WHOLE_ROUNDS.exec(text)?.[1];
  if (whole !== undefined) return { rounds: whole };
  const isLoad = score !== undefined && ["load", "sum-of-loads"].includes(score.kind);
  const number = /^~?\d+(?:[.,]\d+)?$/.test(text);
  if (isLoad)
    return {
      load: number && unit !== undefined ? `${text} ${unit}` : text.replace(/\s*\(?\b(?:PR|PB)\b!?\)?$/i, ""),
    };
  const reps = /^(\d+)\s*(?:reps?|cals?|calories|m|metres)?$/i.exec(text)?.[1];
  if (reps !== undefined) return { reps };
  if (CLOCK.test(text) || /\d:\d\d/.test(text) || score?.kind === "time") return { time: text };
  return { load: text };
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
