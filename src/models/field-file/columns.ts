import type { MassUnit } from "../quantity.ts";

/** What the numbers of a column are. */
export type Measure =
  | { readonly kind: "time" | "reps" | "calories" | "metres" }
  | { readonly kind: "load"; readonly unit?: MassUnit }
  /** Scores as published, each with its own unit. */
  | { readonly kind: "text" }
  /** `value`: what it is stands in the column of kinds or in a remark. */
  | { readonly kind: "stated-elsewhere" };

export type Columns = {
  readonly score: { readonly index: number; readonly measure: Measure };
  readonly count?: number;
  readonly group?: number;
  readonly version?: number;
  /** What kind of result each row is: finish, capped, reps... */
  readonly kind?: number;
};

/** What a header may be called, for messages. */
export const HEADERS =
  "`seconds` or `time`, `reps`, `calories`, `metres`, `load kg`, `load lb`, or `score` for scores as published; with them `count`, `division`, `result` (finish or capped, beside `value`)";

const COUNT = /^(?:count|counts|n|number|how many|athletes|frequency)$/;
const GROUP = /^(?:division|lift|category|class|group|sex|gender)$/;
const VERSION = /^(?:version|scaling|rx or scaled)$/;

/** Finds what each column of a header is; the unknown ones are named. */
export function findColumns(header: readonly string[]): Columns | { readonly unknown: readonly string[] } {
  const [only, another] = header;
  const names = header.map((name) =>
    name
      .toLowerCase()
      .replace(/[_\s]+/g, " ")
      .replace(/[()[\]]/g, " ")
      .replace(/\s+/g, " ")
      .trim(),
  );
  const at = (pattern: RegExp): number | undefined => {
    const index = names.findIndex((name) => pattern.test(name));
    return index === -1 ? undefined : index;
  };
  const [count, group, version] = [at(COUNT), at(GROUP), at(VERSION)];
  const taken = new Set([count, group, version].filter((index) => index !== undefined));
  const values = names.flatMap((name, index) => {
    const measure = taken.has(index) ? undefined : measureOf(name);
    return measure ? [{ index, measure }] : [];
  });
  const kind =
    values.length > 1
      ? values.find(({ index }) => /^(?:result|kind)$/.test(names[index] ?? ""))?.index
      : undefined;
  const scores = values.filter(({ index }) => index !== kind);
  const [score] = scores;
  const unknown = header.filter(
    (_name, index) => !taken.has(index) && !values.some((value) => value.index === index),
  );
  // A table of one column is one of scores, whatever the event is called.
  if (only !== undefined && another === undefined && !score && taken.size === 0) {
    return { score: { index: 0, measure: { kind: "text" } } };
  }
  if (!score || scores.length > 1 || unknown.length > 0) {
    return {
      unknown:
        unknown.length > 0
          ? unknown
          : scores.length > 1
            ? scores.map(({ index }) => header[index] ?? "")
            : header,
    };
  }
  return {
    score,
    ...(count === undefined ? {} : { count }),
    ...(group === undefined ? {} : { group }),
    ...(version === undefined ? {} : { version }),
    ...(kind === undefined ? {} : { kind }),
  };
}

/** The measure a heading, or a remark `# unit: ...`, speaks of. */
export function measureOf(name: string): Measure | undefined {
  const load = /^(?:(?:load|weight|lift|total|score|value|max) ?)?(kgs?|lbs?|kilos?|pounds?)$/.exec(name);
  if (load) return { kind: "load", unit: (load[1] ?? "").startsWith("k") ? "kg" : "lb" };
  if (/^(?:load|weight|1rm|max)$/.test(name)) return { kind: "load" };
  if (/^(?:seconds|secs?|s|time|times|finish|finish time|time s|time seconds|time in seconds)$/.test(name))
    return { kind: "time" };
  if (/^(?:reps?|repetitions|total reps|score reps)$/.test(name)) return { kind: "reps" };
  if (/^(?:calories|cals?|score calories)$/.test(name)) return { kind: "calories" };
  if (/^(?:metres|meters|m|distance m|distance metres)$/.test(name)) return { kind: "metres" };
  if (/^value$/.test(name)) return { kind: "stated-elsewhere" };
  if (/^(?:scores?|score as published|results?|as published|published|kind)$/.test(name))
    return { kind: "text" };
  return undefined;
}
