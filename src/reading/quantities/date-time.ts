import { Temporal } from "temporal-polyfill";
import { readDate, type DateOrder } from "./date.ts";
import { plainText } from "./plain-text.ts";
import { ask, askFor, reject, take, type Reading, type Told } from "./reading.ts";

/** Local date and time as `2026-11-28T18:40`, with its time zone where one was written. */
type LocalDateTime = { readonly at: string; readonly zone?: string };

const ALLOWED = "a date with a time of day, such as `2026-11-28 18:40`";
const HOURS = 24;
const MINUTES = 60;

/** Reads a local date and time: `2026-11-28 18:40`, `28 Nov 2026, 6:40 pm`, `2026-11-28T18:40 Europe/Berlin`. */
export function readDateTime(text: string, order?: DateOrder): Reading<LocalDateTime> {
  const plain = plainText(text);
  const match =
    /^(.*?)(?:,|\bat\b|T|\s)\s*(\d{1,2})(?:[:h.](\d\d)(?::\d\d)?)?\s*(?:(a\.?m\.?|p\.?m\.?|h|uhr|o'clock)(?![a-z]))?\s*(?:\[?([A-Z][A-Za-z_]+(?:\/[A-Za-z_+\-0-9]+)+|UTC)\]?)?$/i.exec(
      plain,
    );
  const hasTime = match !== null && (match[3] !== undefined || match[4] !== undefined);
  const offset = OFFSET.exec(plain);
  if (offset && !match) return offsetIsNoZone(offset);
  if (!match || !hasTime) {
    if (/\d[:h]\d\d.*\d[:h]\d\d/.test(plain)) return severalTimes();
    const date = readDate(plain, order);
    if (date.ok) return ask("the time of day is missing", [`${date.value} 18:00`], ALLOWED);
    return /^\d{1,2}[:h.]\d\d/.test(plain)
      ? reject("the date is missing", ALLOWED)
      : reject("this is not a date with a time", ALLOWED);
  }
  const before = (match[1] ?? "").trim().replace(/,$/, "");
  const open = unsettled(before);
  if (open) return open;
  const date = readDate(before, order);
  const time = timeOfDay(
    Number(match[2]),
    Number(match[3] ?? "0"),
    match[4]?.toLowerCase().replace(/\./g, ""),
  );
  if (time === undefined) return reject("there is no such time of day", ALLOWED);
  if (!date.ok)
    return {
      ...date,
      remedy: date.remedy.replace(/`(\d{4}-\d\d-\d\d)`/g, `\`$1 ${time}\``),
      allowed: ALLOWED,
    };
  const zone = match[5];
  if (zone !== undefined && !isZone(zone))
    return reject(`"${zone}" is no time zone`, "a time zone such as `Europe/Berlin`");
  const at = `${date.value}T${time}`;
  if (match[4] === undefined && /^[1-9]$/.test(match[2] ?? "")) {
    const inTheEvening = timeOfDay(Number(match[2]), Number(match[3] ?? "0"), "pm") ?? time;
    return ask(
      "this may be in the morning or in the evening",
      [time, inTheEvening].map((each) => [date.value, each, match[5]].filter(Boolean).join(" ")),
      ALLOWED,
    );
  }
  const readAs = zone === undefined ? `${date.value} ${time}` : `${date.value} ${time} ${zone}`;
  const told: Told | undefined = date.told && { problem: date.told.problem, readAs };
  return take({ at, ...(zone === undefined ? {} : { zone }) }, false, told);
}

/** `+01:00` or `Z` behind a time. */
const OFFSET = /^(.*\d)(?:\s*([+-](?:0\d|1[0-4]):?\d\d)|Z)$/;

const offsetIsNoZone = ([, time = "", offset = "Z"]: RegExpExecArray): Reading<never> =>
  reject(
    `${offset} is an offset, and no time zone`,
    "a time zone such as `Europe/Berlin`",
    `Write \`${time.replace("T", " ")}\` with the name of the zone behind it.`,
  );

/** Words before a time that leave open when it is, or another time there. */
function unsettled(before: string): Reading<never> | undefined {
  if (
    /^(?:from|since|after|before|by|until|about|around|not|between|either)\b|\b(?:from|after|before|by|until|about|around|not|between|or|and|to)$/i.test(
      before,
    ) ||
    /[~<>≈]/.test(before)
  ) {
    return askFor("this does not say one time at which to start", ALLOWED, "Write the one time to plan for.");
  }
  return /\d[:h]\d\d/.test(before) ? severalTimes() : undefined;
}

const severalTimes = (): Reading<never> =>
  askFor(
    "more than one time stands here",
    ALLOWED,
    "Write the one time to plan for; several tries go into a list: `[..., ...]`.",
  );

function timeOfDay(hour: number, minute: number, half: string | undefined): string | undefined {
  const twelve = half === "am" || half === "pm";
  if (minute >= MINUTES || (twelve && (hour < 1 || hour > 12))) return undefined;
  const hours = twelve ? (hour % 12) + (half === "pm" ? 12 : 0) : hour;
  return hours < HOURS ? `${String(hours).padStart(2, "0")}:${String(minute).padStart(2, "0")}` : undefined;
}

/** Whether a name is a time zone of the public tz database. */
export function isZone(name: string): boolean {
  try {
    Temporal.PlainDateTime.from("2026-01-01T12:00").toZonedDateTime(name);
    return /^[A-Z]/i.test(name);
  } catch {
    return false;
  }
}

/** What the change of clocks makes of a local time in a zone: left out when they go forward, there twice when they go back. */
function clockChange(at: string, zone: string): "left-out" | "twice" | undefined {
  const zoned = (disambiguation: "earlier" | "later") =>
    Temporal.PlainDateTime.from(at).toZonedDateTime(zone, { disambiguation });
  const [earlier, later] = [zoned("earlier"), zoned("later")];
  if (earlier.epochMilliseconds === later.epochMilliseconds) return undefined;
  return earlier.toPlainDateTime().equals(later.toPlainDateTime()) ? "twice" : "left-out";
}

/** What to say of a time that the change of clocks leaves out or makes twice; nothing of any other. */
export function clockChangeRefusal(
  at: string,
  zone: string,
): { readonly problem: string; readonly remedy: string } | undefined {
  const change = clockChange(at, zone);
  if (change === undefined) return undefined;
  return change === "twice"
    ? {
        problem: `clocks in ${zone} go back that night, and this time is there twice`,
        remedy: "Write a time an hour earlier or later.",
      }
    : {
        problem: `clocks in ${zone} go forward that night, and this time is left out`,
        remedy: "Write a time an hour later.",
      };
}
