import type { PartPlan } from "../models/plan/plan.ts";
import { sayAmount } from "./amount.ts";
import { sayHeight } from "./height.ts";
import { sayPieces } from "./mass.ts";
import { NO_BREAK_SPACE } from "./number.ts";
import { sayPace } from "./pace.ts";
import { sayRestsAlone } from "./sets.ts";
import { sayDuration } from "./time.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type Row = Pacing["rows"][number];

/** A station as it is glanced at: what is done there, and what to set, load or see. */
export type Station = { readonly work: string; readonly details: readonly string[] };

/** More values than this are told as the first and the last. */
const MOST_VALUES = 5;

/** Values over the rounds: one where all are alike, else all, or the first and the last. */
function overRounds(values: readonly string[], sign: string): string {
  if (new Set(values).size === 1) return values[0] ?? "";
  return values.length <= MOST_VALUES ? values.join(sign) : `${values[0] ?? ""}…${values.at(-1) ?? ""}`;
}

const SIDES: Readonly<Record<NonNullable<Row["sides"]>, string>> = {
  each: "half each side",
  one: "one side",
  alternating: "alternating",
};

/** A pace as short as the display of the machine: `1:52/500 m`, `940 cal/h`. */
const sayShortPace = ({ displayed }: Row): readonly string[] =>
  displayed ? [sayPace(displayed).replace(`${NO_BREAK_SPACE}per${NO_BREAK_SPACE}`, "/")] : [];

const loadOf = ({ load }: Row): readonly string[] => (load ? [sayPieces(load)] : []);
const heightOf = ({ heightMetres }: Row): readonly string[] =>
  heightMetres === undefined ? [] : [sayHeight(heightMetres)];

/** Waits that begin visits, each kind once with its time, or its shortest and longest. Reads `first stand 12 s to 15 s`. */
function sayWaits(waits: readonly Wait[]): readonly string[] {
  return [...Map.groupBy(waits, ({ kind }) => kind)].map(([kind, own]) => {
    const times = own.map(({ lasts }) => lasts);
    const ends = new Set([Math.min(...times), Math.max(...times)].map(sayDuration));
    return `first ${kind}${kind === "plates" ? "," : ""} ${[...ends].join(" to ")}`;
  });
}

type Wait = { readonly kind: "plates" | "stand" | "rest"; readonly lasts: number };

/** The wait before a visit, which begins it: planned, prescribed, or to change plates. */
function waitBefore(row: Row, rows: readonly Row[]): readonly Wait[] {
  const before = rows.find(({ index }) => index === row.index - 1);
  if (before?.kind !== "rest" || before.why === "begun") return [];
  const kind = before.why === "plates" || before.why === "stand" ? before.why : "rest";
  return [{ kind, lasts: before.end - before.start }];
}

/** The rest before the first row of an interval is what the interval before it left, and told with that one. */
const isToldByInterval = (row: Row, { intervals, rows }: Pacing): boolean =>
  intervals !== undefined &&
  rows.find(({ kind, round }) => kind === "work" && round === row.round)?.index === row.index;

/** One visit on its own: amount, movement, own load, height and pace; with `rests` the rest between its sets and the wait before it. */
export const sayStation = (row: Row, rows: readonly Row[], rests: boolean): Station => ({
  work: `${sayAmount({ ...row, amount: row.prescribed ?? row.amount })} ${row.short}`,
  details: [
    ...loadOf(row),
    ...heightOf(row),
    ...sayShortPace(row),
    ...(row.sides ? [SIDES[row.sides]] : []),
    ...(rests ? [...toList(sayRestsAlone([row.sets])), ...sayWaits(waitBefore(row, rows))] : []),
  ],
});

const toList = (text: string | undefined): readonly string[] => (text === undefined ? [] : [text]);

/**
 * What one round is made of, each movement once in the order done; what changes from round to round is told for all rounds.
 * Amounts that are the name of the round (`15s`) go unsaid.
 */
export function sayStations(pacing: Pacing): readonly Station[] {
  const work = pacing.rows.filter((row) => row.kind === "work");
  return [...Map.groupBy(work, ({ short }) => short).values()].map((rows): Station => {
    const [first] = rows;
    if (!first) return { work: "", details: [] };
    const named = rows.every((row) => row.ladder !== undefined && row.ladder === row.amount);
    const amounts = overRounds(
      rows.map((row) => sayAmount({ ...row, amount: row.prescribed ?? row.amount })),
      "-",
    );
    const over = (say: (row: Row) => readonly string[]): readonly string[] => {
      const said = rows.map((row) => say(row)[0]).filter((text) => text !== undefined);
      return said.length === 0 ? [] : [overRounds(said, " → ")];
    };
    // A machine's pace hardly changes from round to round: that of the first round is the one to settle on.
    const paces = sayShortPace(first);
    return {
      work: named ? first.short : `${amounts} ${first.short}`,
      details: [
        ...over(loadOf),
        ...over(heightOf),
        ...paces,
        ...(first.sides ? [SIDES[first.sides]] : []),
        ...toList(sayRestsAlone(rows.map(({ sets }) => sets))),
        ...sayWaits(
          rows.flatMap((row) => (isToldByInterval(row, pacing) ? [] : waitBefore(row, pacing.rows))),
        ),
      ],
    };
  });
}
