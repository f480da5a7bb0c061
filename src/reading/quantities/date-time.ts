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
  if (!match || !hasTime) {
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
  const readAs = zone === undefined ? `${date.value} ${time}` : `${date.value} ${time} ${zone}`;
  const told: Told | undefined = date.told && { problem: date.told.problem, readAs };
  return take({ at, ...(zone === undefined ? {} : { zone }) }, false, told);
}

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
  return /\d[:h]\d\d/.test(before)
    ? askFor(
        "more than one time stands here",
        ALLOWED,
        "Write the one time to plan for; several tries go into a list: `[..., ...]`.",
      )
    : undefined;
}

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

/** Whether a local time exists in a zone; in the night when clocks go forward an hour does not. */
export function exists(at: string, zone: string): boolean {
  try {
    Temporal.PlainDateTime.from(at).toZonedDateTime(zone, { disambiguation: "reject" });
    return true;
  } catch {
    return false;
  }
}
