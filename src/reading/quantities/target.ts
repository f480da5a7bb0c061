import type { TargetWord } from "../../models/coach-word.ts";
import type { Seconds } from "../../models/quantity.ts";
import { readMass } from "./mass.ts";
import { reject, take, type Reading } from "./reading.ts";
import { readTime } from "./time.ts";

const ALLOWED =
  "a time such as `8:00`, an amount such as `190 reps`, `7 rounds 12 reps`, a load such as `100 kg`; `in part a` behind it where there are several";
const IN_PART = /^(.*?)\s+in\s+part\s+(\S+)$/i;
const ROUNDS = /^(\d{1,3})\s*(?:rounds?|rds?)(?:\s*(?:[+,&]|and)?\s*(\d{1,4})\s*(?:reps?)?)?$/i;
const AMOUNT = /^(\d{1,5})\s*(?:reps?|cals?|calories|m|metres)$/i;

/** A time of one part, where one is named behind it: `1:35 in part a`. */
export function inPart(
  text: string,
  read: (text: string) => Reading<Seconds>,
): Reading<{ readonly time: Seconds; readonly part?: string }> {
  const [, before = text, part] = IN_PART.exec(text.trim()) ?? [];
  const time = read(before);
  return time.ok ? { ...time, value: { time: time.value, ...(part === undefined ? {} : { part }) } } : time;
}

/** Reads what a coach aims at: `8:00`, `190 reps`, `7 rounds 12 reps`, `100 kg`, each with `in part a` behind it. */
export function readTarget(text: string): Reading<TargetWord> {
  const [, before = text.trim(), part] = IN_PART.exec(text.trim()) ?? [];
  const named = part === undefined ? {} : { part };
  const rounds = ROUNDS.exec(before);
  if (rounds)
    return take({ kind: "rounds", rounds: Number(rounds[1]), reps: Number(rounds[2] ?? 0), ...named });
  const amount = AMOUNT.exec(before);
  if (amount) return take({ kind: "amount", amount: Number(amount[1]), ...named });
  if (/[a-z#]\.?$/i.test(before) && !/(?:min|s|sec|h)\.?$/i.test(before)) {
    const load = readMass(before);
    return load.ok
      ? { ...load, value: { kind: "load", load: load.value, ...named } }
      : { ...load, allowed: ALLOWED };
  }
  if (/^\d+$/.test(before)) return reject("a bare number can be minutes, reps or a load", ALLOWED);
  const time = readTime(before);
  return time.ok
    ? { ...time, value: { kind: "time", time: time.value, ...named } }
    : { ...time, allowed: ALLOWED };
}
