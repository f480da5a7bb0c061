import { seconds, type Seconds } from "../../models/quantity.ts";
import { takeDoubtOff } from "./doubt.ts";
import { ask, reject, take, type NotTaken, type Reading } from "./reading.ts";
import { sayNumber } from "./written-number.ts";

const ALLOWED = "a time such as `7:32`, `7:05.4`, `1:04:10`, `59 s` or `12 min`";

const SECONDS_PER_MINUTE = 60;
const SECONDS_PER_HOUR = 3600;

/** `7:32`, `7:05.4`, `1:04:10`, `:59`. */
const COLONS = /^(?:(\d{1,2}):)?(\d{0,3}):(\d{1,2})(?:[.,](\d{1,3}))?$/;
/** `1 h 4 min 10 s` in any of its parts, written out or short; a last number without a word belongs to the next smaller. */
const WORDS =
  /^(?:(\d+)\s*(?:hours?|hrs?|h|std)\.?\s*(?:and )?)?(?:(\d+)\s*(?:minutes?|minuten|mins?|m|')\.?\s*(?:and )?)?(?:(\d+(?:[.,]\d+)?)\s*(?:seconds?|sekunden|secs?|sek|s|")?\.?)?$/i;

/** A time as people write it, to the tenth. @example sayTime(425.4) // => "7:05.4" */
export function sayTime(time: number): string {
  const tenths = Math.round(time * 10);
  const [minutes, rest] = [Math.floor(tenths / 600), tenths % 600];
  const [hours, minute] = [Math.floor(minutes / 60), minutes % 60];
  const second = sayNumber(rest / 10);
  const padded = rest < 100 ? `0${second}` : second;
  return hours > 0 ? `${hours}:${String(minute).padStart(2, "0")}:${padded}` : `${minute}:${padded}`;
}

/**
 * Reads a time in seconds: `7:32`, `7:05.4`, `1:04:10`, `7m32s`, `7'32"`, `59 s`, `12 min`, `1 h 4 min`, `~19:50`. Minutes
 * with decimals are asked about, since `7.32 min` may be 7:32; a bare number is asked about with both units.
 */
export function readTime(text: string): Reading<Seconds> {
  const { core, approximate, bound, range } = takeDoubtOff(text);
  if (core === "") return reject("the time is missing", ALLOWED);
  if (range && !/^\d{1,2}-\d\d$/.test(core)) return askAboutRange(range);
  const time =
    readFromSheet(core) ??
    readColons(core.replace(/(?<=:\d\d(?:[.,]\d+)?)\s*(?:min|mins|minutes|m|h|hrs?|uhr)\.?$/i, "")) ??
    readWords(core);
  if (!time.ok) return time;
  if (time.value === 0) return reject("a time is more than nothing", ALLOWED);
  if (bound)
    return ask("this is a bound, not a result", [sayTime(time.value), `~${sayTime(time.value)}`], ALLOWED);
  return { ...time, approximate };
}

/** Asks which clock is meant where words stand around it, or two beside one another: `7:32 last year`, `7:32 / 7:40`. */
export function clockAmongWords(text: string): NotTaken | undefined {
  const { core } = takeDoubtOff(text);
  const clocks = core.match(/\d{1,2}:\d\d(?::\d\d)?(?:[.,]\d+)?/g) ?? [];
  const isAlone = !/\d/.test(core.replace(/\d{1,2}:\d\d(?::\d\d)?(?:[.,]\d+)?/g, ""));
  if (clocks.length === 0 || clocks.length > 2 || !isAlone || clocks[0] === core) return undefined;
  const problem =
    clocks.length > 1 ? "this is more than one time" : "the words beside the time are not understood";
  return ask(problem, clocks, ALLOWED);
}

/** Reads a clock as it is seen: `7:32`, `7:05.4`, `1:04:10` only, from 0:00 on. */
export function readClock(text: string): Reading<Seconds> {
  const { core, approximate } = takeDoubtOff(text);
  const allowed = "a clock such as `7:32`, `7:05.4` or `1:04:10`";
  const clock = readColons(core);
  if (clock?.ok === true) return { ...clock, approximate };
  return clock ? { ...clock, allowed } : reject("this is not a clock", allowed);
}

function readColons(core: string): Reading<Seconds> | undefined {
  const semicolon = core.replace(/;/g, ":");
  if (semicolon !== core && COLONS.test(semicolon))
    return ask("a semicolon stands for a colon", [semicolon], ALLOWED);
  const points = /^(\d+):(\d\d)[:'](\d)$/.exec(core);
  if (points)
    return ask(
      "this may be tenths of a second",
      [`${points[1] ?? ""}:${points[2] ?? ""}.${points[3] ?? ""}`],
      ALLOWED,
    );
  const match = COLONS.exec(core);
  if (!match) return undefined;
  const [, hours, minutes = "", second = "", fraction] = match;
  if (second.length === 1) {
    const start = core.slice(0, core.lastIndexOf(":") + 1);
    return ask("seconds have two digits", [`${start}0${second}`, `${start}${second}0`], ALLOWED);
  }
  if (Number(second) >= SECONDS_PER_MINUTE) {
    const carried = Number(minutes) * SECONDS_PER_MINUTE + Number(second);
    return ask("a minute has sixty seconds", hours === undefined ? [sayTime(carried)] : [], ALLOWED);
  }
  if (hours !== undefined && (minutes.length === 0 || Number(minutes) >= SECONDS_PER_MINUTE)) {
    return reject("an hour has sixty minutes", ALLOWED);
  }
  const whole = Number(hours ?? 0) * SECONDS_PER_HOUR + Number(minutes) * SECONDS_PER_MINUTE + Number(second);
  return take(seconds(whole + Number(`0.${fraction ?? "0"}`)));
}

/** A spreadsheet's share of a day, or a time it took for a time of day. */
function readFromSheet(core: string): Reading<Seconds> | undefined {
  const share = /^0?[.,](\d{4,})$/.exec(core);
  if (share) {
    const said = sayTime(Number(`0.${share[1] ?? ""}`) * SECONDS_PER_DAY);
    return ask("a spreadsheet keeps times as shares of a day", [said], ALLOWED);
  }
  const clock = /^(\d{1,2}):(\d\d)(?::(\d\d))?\s*[ap]\.?m\.?$/i.exec(core);
  if (!clock) return undefined;
  const [, first = "", second = "", third] = clock;
  const said =
    third === undefined
      ? `${first}:${second}`
      : first === "12"
        ? `${Number(second)}:${third}`
        : `${first}:${second}:${third}`;
  return ask("a time of day is no time", [said], ALLOWED);
}

const SECONDS_PER_DAY = 86_400;

function readWords(core: string): Reading<Seconds> {
  if (/^\d+$/.test(core)) {
    return ask("the unit is missing", [`${core} s`, `${core} min`, ...shortClock(core)], ALLOWED);
  }
  const decimal = /^(\d+)[.,](\d+)\s*(min|mins|minutes?|m|')?$/i.exec(core);
  if (decimal) return askAboutDecimal(decimal[1] ?? "", decimal[2] ?? "", decimal[3] !== undefined);
  const hyphen = /^(\d{1,2})[-. /](\d\d)(?:[-. /](\d))?$/.exec(core);
  if (hyphen) {
    const tenths = hyphen[3] === undefined ? "" : `.${hyphen[3]}`;
    return ask(
      "this may be minutes and seconds",
      [`${hyphen[1] ?? ""}:${hyphen[2] ?? ""}${tenths}`],
      ALLOWED,
    );
  }
  if (/\/\s*(?:500|1000|km|mile|mi)/i.test(core)) return reject("this is a pace, not a time", ALLOWED);
  const match = WORDS.exec(core);
  if (!match || core === "" || !/[a-z'"]/i.test(core)) return reject("this is not a time", ALLOWED);
  const [, hours = "0", minutes = "0", last = "0"] = match;
  const [, , statedMinutes] = match;
  if (statedMinutes !== undefined && Number(last.replace(",", ".")) >= SECONDS_PER_MINUTE) {
    return reject("a minute has sixty seconds", ALLOWED);
  }
  const lastIsMinutes = match[1] !== undefined && match[2] === undefined && /\d$/.test(core);
  const rest = Number(last.replace(",", ".")) * (lastIsMinutes ? SECONDS_PER_MINUTE : 1);
  return take(seconds(Number(hours) * SECONDS_PER_HOUR + Number(minutes) * SECONDS_PER_MINUTE + rest));
}

/** `732` may be 7:32 typed without its colon. */
const shortClock = (digits: string): readonly string[] =>
  /^\d{1,2}[0-5]\d$/.test(digits) ? [`${digits.slice(0, -2)}:${digits.slice(-2)}`] : [];

function askAboutDecimal(whole: string, decimals: string, minutesStated: boolean): Reading<Seconds> {
  const asMinutes = sayTime(Number(`${whole}.${decimals}`) * SECONDS_PER_MINUTE);
  const asSeconds =
    decimals.length === 2 && Number(decimals) < SECONDS_PER_MINUTE ? [`${whole}:${decimals}`] : [];
  const bare = minutesStated ? [] : [`${whole}.${decimals} s`];
  const proposals = [...new Set([...asSeconds, asMinutes, ...bare])];
  return minutesStated && proposals.length === 1
    ? take(seconds(Number(`${whole}.${decimals}`) * SECONDS_PER_MINUTE), false, {
        problem: `minutes with a decimal; read as ${asMinutes}`,
        readAs: asMinutes,
      })
    : ask("this may be minutes and seconds, or minutes with a decimal", proposals, ALLOWED);
}

function askAboutRange([from, to]: readonly [string, string]): Reading<Seconds> {
  if (takeDoubtOff(from).range) return reject("this is neither one time nor a range of two", ALLOWED);
  const [fast, slow] = [readTime(from), readTime(to)];
  if (!slow.ok) return reject("this is neither one time nor a range of two", ALLOWED);
  const proposals = [
    ...(fast.ok ? [`~${sayTime(Math.max(fast.value, slow.value))}`] : []),
    `~${sayTime(slow.value)}`,
  ];
  return ask(
    "this is a range; a plan needs one time, and the slower one is the safer",
    [...new Set(proposals)],
    ALLOWED,
  );
}
