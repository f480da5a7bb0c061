import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { LEVELS, type Level } from "../../src/models/vocabulary.ts";

/** What a coach of experience expects of athletes known by level only: m:ss, or reps where a clock ends the work. */
type Expected = Partial<Record<Level, string | number>>;

/** A workout of the trade table; `told-by-fields` where an open field says what is expected. */
export type TradeCase = {
  readonly name: string;
  readonly kind: string;
  readonly workout: string;
  readonly why: string;
  readonly men: Expected;
  readonly women?: Expected;
  readonly "told-by-fields"?: boolean;
};

/** One number of the table: all the work in so many seconds, or so many reps. */
export type TradeTime = {
  readonly of: TradeCase;
  readonly level: Level;
  readonly sex: "male" | "female";
  readonly result: { readonly kind: "finish" | "reps"; readonly value: number };
};

/** Every number of the trade table (tests/cases/trade-times.yaml). */
export function tradeTimes(): readonly TradeTime[] {
  const cases = parse(
    readFileSync(new URL("../cases/trade-times.yaml", import.meta.url), "utf8"),
  ) as readonly TradeCase[];
  return cases.flatMap((of) =>
    (["male", "female"] as const).flatMap((sex) =>
      LEVELS.flatMap((level): readonly TradeTime[] => {
        const expected = (sex === "male" ? of.men : of.women)?.[level];
        return expected === undefined ? [] : [{ of, level, sex, result: asResult(expected) }];
      }),
    ),
  );
}

function asResult(expected: string | number): TradeTime["result"] {
  if (typeof expected === "number") return { kind: "reps", value: expected };
  const [minutes = 0, seconds = 0] = expected.split(":").map(Number);
  return { kind: "finish", value: 60 * minutes + seconds };
}
