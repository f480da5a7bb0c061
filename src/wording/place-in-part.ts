import type { Plan } from "../models/plan/plan.ts";
import { sayAmount } from "./amount.ts";
import { sayPieces } from "./mass.ts";
import { nameFor } from "./movement-words.ts";
import { sayNumber } from "./number.ts";

type Row = NonNullable<Plan["parts"][number]["pacing"]>["rows"][number];

/**
 * A visit among others, so that nobody takes it for another one of the same movement: by the load where it comes at several, else by its amount,
 * else by which time it is. `rows`: those among which it is told apart, of one round where that is said beside it.
 *
 * @example sayVisit(row, rows) // => "clean and jerks at 80 kg", "30 burpees", "second 30 burpees"
 */
export function sayVisit(row: Row, rows: readonly Row[]): string {
  const same = visitsLike(row, rows);
  const plural = nameFor(row, 2);
  if (same.length < 2) return plural;
  if (row.load && same.filter((other) => isSameLoad(other, row)).length === 1) return sayLoaded(row);
  const asked = sayAmount({ ...row, amount: askedOf(row) });
  if (same.filter((other) => askedOf(other) === askedOf(row)).length === 1)
    return `${asked} ${nameFor(row, askedOf(row))}`;
  return `${ordinal(same.findIndex(({ index }) => index === row.index))} ${plural}`;
}

/** The load behind what is said of a row, where the movement comes at several in the part. Reads ` at 45 kg`. */
export const sayWhichLoad = (row: Row, rows: readonly Row[]): string =>
  row.load && rows.some((other) => other.name === row.name && other.load && !isSameLoad(other, row))
    ? ` at ${sayPieces(row.load)}`
    : "";

const sayLoaded = (row: Row): string => `${nameFor(row, 2)}${row.load ? ` at ${sayPieces(row.load)}` : ""}`;

const askedOf = ({ amount, prescribed }: Row): number => prescribed ?? amount;

const isSameLoad = ({ load: one }: Row, { load: other }: Row): boolean =>
  one?.kilograms === other?.kilograms && one?.pieces === other?.pieces;

/** Visits to the movement of a row, each once: what the clock parts in two is one. */
const visitsLike = ({ name }: Row, rows: readonly Row[]): readonly Row[] =>
  rows.filter((other) => other.kind === "work" && other.name === name);

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth"];
const ordinal = (at: number): string => ORDINALS[at] ?? `${sayNumber(at + 1, 0)}th`;
