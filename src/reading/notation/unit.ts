import { lengthUnit } from "../quantities/length.ts";
import type { LengthUnit, MassUnit } from "../../models/quantity.ts";
import { peek, skip, skipOneOf, type Cursor } from "./cursor.ts";

/** What a number in a workout can be measured in. */
export type Unit =
  | { readonly kind: "reps" }
  | { readonly kind: "calories" }
  /** Lengths not in `LengthUnit` are written in one that is: a yard is 3 ft. */
  | { readonly kind: "length"; readonly unit: LengthUnit; readonly times: number }
  | { readonly kind: "time"; readonly seconds: number }
  | { readonly kind: "mass"; readonly unit: MassUnit }
  | { readonly kind: "share" }
  /** `per` 100 where it is written in per cent. */
  | { readonly kind: "body-mass"; readonly per: 1 | 100 };

const UNITS: Readonly<Record<string, Unit>> = {
  rep: { kind: "reps" },
  reps: { kind: "reps" },
  repetitions: { kind: "reps" },
  cal: { kind: "calories" },
  cals: { kind: "calories" },
  calorie: { kind: "calories" },
  calories: { kind: "calories" },
  kcal: { kind: "calories" },
  s: { kind: "time", seconds: 1 },
  sec: { kind: "time", seconds: 1 },
  secs: { kind: "time", seconds: 1 },
  second: { kind: "time", seconds: 1 },
  seconds: { kind: "time", seconds: 1 },
  min: { kind: "time", seconds: 60 },
  mins: { kind: "time", seconds: 60 },
  minute: { kind: "time", seconds: 60 },
  minutes: { kind: "time", seconds: 60 },
  h: { kind: "time", seconds: 3600 },
  hour: { kind: "time", seconds: 3600 },
  hours: { kind: "time", seconds: 3600 },
  kg: { kind: "mass", unit: "kg" },
  kgs: { kind: "mass", unit: "kg" },
  kilo: { kind: "mass", unit: "kg" },
  kilos: { kind: "mass", unit: "kg" },
  kilogram: { kind: "mass", unit: "kg" },
  kilograms: { kind: "mass", unit: "kg" },
  lb: { kind: "mass", unit: "lb" },
  lbs: { kind: "mass", unit: "lb" },
  "#": { kind: "mass", unit: "lb" },
  pound: { kind: "mass", unit: "lb" },
  pounds: { kind: "mass", unit: "lb" },
  "%": { kind: "share" },
  percent: { kind: "share" },
  bodyweight: { kind: "body-mass", per: 1 },
  bw: { kind: "body-mass", per: 1 },
  xbw: { kind: "body-mass", per: 1 },
};

function unitOf(word: string): Unit | undefined {
  if (Object.hasOwn(UNITS, word)) return UNITS[word];
  const length = lengthUnit(word);
  return length && { kind: "length", unit: length[0], times: length[1] };
}

const BODY_MASS = [
  "body mass",
  "body weight",
  "of body mass",
  "of body weight",
  "of bodyweight",
  "x body mass",
  "x bodyweight",
  "x bw",
  "times bw",
  "times body mass",
  "times bodyweight",
] as const;

/** Takes the unit that comes next, if one does. */
export function takeUnit(cursor: Cursor): Unit | undefined {
  if (skipOneOf(cursor, BODY_MASS) !== undefined) return { kind: "body-mass", per: 1 };
  const text = peek(cursor)?.text;
  const unit = text === undefined ? undefined : unitOf(text);
  if (unit === undefined || text === undefined) return undefined;
  cursor.index += 1;
  if (unit.kind === "share" && skipOneOf(cursor, [...BODY_MASS, "bodyweight"]) !== undefined) {
    return { kind: "body-mass", per: 100 };
  }
  // lb. and cal. with a point
  if (unit.kind !== "share") skip(cursor, ".");
  return unit;
}
