import type { Plan } from "../models/plan/plan.ts";
import { sayMassFigure } from "./mass.ts";

type Grounds = Plan["basis"][number]["from"];
type Result = Extract<Grounds, { kind: "lift" }>["result"];
type Effort = Extract<Grounds, { kind: "efforts" }>["efforts"][number];

const plainLevel = (level: string): string => `level ${level}`;

/**
 * What something rests on, as a fragment in the words and numbers of the athlete's file.
 *
 * @param sayLevel how a level is called, where it stands first
 */
export function sayGrounds(from: Grounds, sayLevel: (level: string) => string = plainLevel): string {
  switch (from.kind) {
    case "efforts":
      return from.efforts.map(sayMaxEffort).join("; ");
    case "lift":
      return `${from.through.length > 0 ? `${from.through.join(", from ")}: ` : ""}${sayResult(from.result)}`;
    case "reps-at-load":
      return "repetitions at a load";
    case "own-results": {
      const own = `own results in ${from.in.join(", ")}`;
      return from.level === undefined ? own : `${sayLevel(from.level)}, moved by ${own}`;
    }
    case "level": {
      const mass = from.bodyMass && { stated: " and body mass", "not-stated": ", body mass not stated" }[from.bodyMass]; // prettier-ignore
      return `${sayLevel(from.level)}${mass ?? ""}`;
    }
    case "given-time":
      return "the time is given";
    case "division":
      return `planned as ${from.division}: ${sayDivisionReason(from)}`;
    case "usual-gym":
      return "no gym is given, so the plates are those of a usual gym";
  }
}

function sayDivisionReason({ by, stated }: Extract<Grounds, { kind: "division" }>): string {
  switch (by) {
    case "not-listed":
      return `this workout does not list ${stated ?? "the division"}; ask the organiser which one is yours`;
    case "sex":
      return "no division is given in the profile";
    case "last-listed":
      return "neither division nor sex is given in the profile, so the last one listed is taken";
  }
}

function sayResult({ load, added, reps, inReserve, date, approximate, effort }: Result): string {
  const mass = `${approximate ? "about " : ""}${added ? "body mass + " : ""}${sayMassFigure(load)} ${load.unit}`;
  const amount = `${reps} ${reps === 1 ? "rep" : "reps"} at ${mass}`;
  const left = inReserve > 0 ? ` with ${inReserve} left` : "";
  const dated = date === undefined ? ", without a date" : ` of ${date}`;
  const said = effort === undefined ? "" : { "true-max": ", a true max", easy: ", an easy one" }[effort];
  return `${amount}${left}${dated}${said}`;
}

/**
 * A max effort in the words and numbers of the athlete's file.
 *
 * @example sayMaxEffort({ amount: 104, unit: "reps", time: 420, approximate: false }) // => "104 reps in 7:00"
 */
export function sayMaxEffort({ amount, unit, time, load, date, approximate }: Effort): string {
  const about = approximate ? "about " : "";
  const loaded = load === undefined ? "" : ` at ${sayMassFigure(load)} ${load.unit}`;
  return `${about}${amount} ${unit}${loaded} in ${sayTenths(time)}${date === undefined ? "" : ` of ${date}`}`;
}

/** Minutes and seconds, tenths where there are some: a test over a short distance is known to the tenth. */
function sayTenths(time: number): string {
  const tenths = Math.round(time * 10);
  const minutes = Math.floor(tenths / 600);
  const rest = (tenths - minutes * 600) / 10;
  return `${minutes}:${rest < 10 ? "0" : ""}${Number.isInteger(rest) ? rest : rest.toFixed(1)}`;
}
