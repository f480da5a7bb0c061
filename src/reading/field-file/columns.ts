import { isKindName, measureOf, type Measure, plainHeading } from "./measure-of.ts";

export type Columns = {
  readonly score: { readonly index: number; readonly measure: Measure };
  /** Reps of those whom the cap stopped, where times and reps have a column each. */
  readonly reps?: number;
  readonly count?: number;
  /** What parts the athletes into divisions or lifts; several columns together make one name. */
  readonly groups: readonly number[];
  readonly version?: number;
  /** What kind of result each row is: finish, capped, reps... */
  readonly kind?: number;
  /** The unit of each row. */
  readonly unit?: number;
};

/**
 * Columns whose names do not say what they are; `percentiles` where they are those of a table of percentiles, `several` where each could be
 * the score.
 */
export type UnknownColumns = {
  readonly unknown: readonly string[];
  readonly percentiles: boolean;
  readonly several: boolean;
};

/** What a header may be called, for messages. */
export const HEADERS =
  "`seconds` or `time`, `reps`, `calories`, `metres`, `load kg`, `load lb`, or `score` for scores as published; with them `count`, `division`, `result` (finish or capped, beside `value`)";

const COUNT =
  /^(?:counts?|n|number|how many|(?:(?:number|no|nr|count) (?:of )?)?(?:athletes|people|results|entries)|(?:athlete|result)s? count|freq(?:uency)?|occurrences)$/;
const GROUP = /^(?:division|lift|movement|category|class|group|age group|sex|gender)$/;
const VERSION = /^(?:version|scaling|rx or scaled)$/;
const UNIT = /^units?$/;
/** Columns that say nothing more than the score does. */
const IGNORED = /^(?:rank|ranking|place|position|pos|#)$/;
const PERCENTILE = /^(?:p ?\d+|q\d+|\d+ ?%|median|mean|average|sd|percentiles?|quantiles?|pct|percent)$/;

/** Finds what each column of a header is; the unknown ones are named. */
export function findColumns(header: readonly string[]): Columns | UnknownColumns {
  const names = header.map(plainHeading);
  const found = (pattern: RegExp): readonly number[] =>
    names.flatMap((name, index) => (pattern.test(name) ? [index] : []));
  const [[count], groups, [version], [unit]] = [found(COUNT), found(GROUP), found(VERSION), found(UNIT)];
  const single = [count, version, unit].filter((index) => index !== undefined);
  const taken = new Set([...single, ...groups, ...found(IGNORED)]);
  const values = names.flatMap((name, index) => {
    const measure = taken.has(index) ? undefined : measureOf(name);
    return measure ? [{ index, measure }] : [];
  });
  const kind = values.length > 1 ? values.find(({ index }) => isKindName(names[index]))?.index : undefined;
  const scores = values.filter(({ index }) => index !== kind);
  const reps = repsBesideTimes(scores);
  const [score] = scores.filter(({ index }) => index !== reps);
  const unknown = header.filter(
    (_, index) => !taken.has(index) && !values.some((one) => one.index === index),
  );
  // A table of one column is one of scores, whatever the event is called.
  if (header.length === 1 && !score && taken.size === 0 && !PERCENTILE.test(names[0] ?? "")) {
    return { score: { index: 0, measure: { kind: "text" } }, groups: [] };
  }
  if (!score || scores.length > (reps === undefined ? 1 : 2) || unknown.length > 0) {
    const several = unknown.length === 0 && scores.length > 1;
    const told = several ? scores.map(({ index }) => header[index] ?? "") : header;
    return {
      unknown: unknown.length > 0 ? unknown : told,
      several,
      percentiles: names.some(
        (name, index) => PERCENTILE.test(name) && unknown.includes(header[index] ?? ""),
      ),
    };
  }
  return {
    score,
    groups,
    ...(reps !== undefined && { reps }),
    ...(count !== undefined && { count }),
    ...(version !== undefined && { version }),
    ...(kind !== undefined && { kind }),
    ...(unit !== undefined && { unit }),
  };
}

type Value = { readonly index: number; readonly measure: Measure };

/** Where times and reps have a column each, that of the reps: those whom the cap stopped. */
function repsBesideTimes(scores: readonly Value[]): number | undefined {
  const [one, other, third] = scores;
  if (!one || !other || third) return undefined;
  const kinds = [one.measure.kind, other.measure.kind];
  if (!kinds.includes("time") || !kinds.includes("reps")) return undefined;
  return one.measure.kind === "reps" ? one.index : other.index;
}
