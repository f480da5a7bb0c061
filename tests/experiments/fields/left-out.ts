import { readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Data } from "../../../src/models/data.ts";
import { LEVELS, type Level } from "../../../src/models/vocabulary.ts";
import { gaussianEvidence } from "../../../src/numerics/gaussian-evidence.ts";

type Family = { readonly family: string };
type Before = {
  readonly paces: Readonly<Record<string, Family & Readonly<Record<Level, number>>>>;
  readonly constants: Readonly<Record<string, { readonly value: number; readonly doubt: number }>>;
};

/**
 * One number of the model that the fields may move: the logarithm of a steady pace of a level, or a constant. `now` is what the model has,
 * `before` what was believed before any field was looked at.
 */
export type Parameter = {
  readonly name: string;
  readonly now: number;
  readonly before: number;
  /** What it shares its doubt with: the name of each doubt, and which size it has or how large it is (standard deviation). */
  readonly doubts: ReadonlyMap<string, keyof Sizes | number>;
};

/**
 * How far paces may have been off before: all of them together, those of a family, of a movement at all levels, of a level in all movements,
 * and each by itself; logarithms. Which of the sizes tried hold is for the fields to say that are fitted to.
 */
type Sizes = Readonly<Record<"all" | "family" | "movement" | "level" | "own" | "noise", number>>;

const TRIED: readonly Sizes[] = [0.05, 0.1, 0.2].flatMap((all) =>
  [0.05, 0.1, 0.2].flatMap((family) =>
    [0.05, 0.1, 0.2].flatMap((movement) =>
      // What a true model would still be off by in one field at one level.
      [0.03, 0.06].map((noise) => ({ all, family, movement, level: 0.06, own: 0.05, noise })),
    ),
  ),
);

/** The numbers the fields may move, with what was believed of them before. */
export function parametersOf({ library, settings }: Data, constants: Readonly<Record<string, number>>) {
  const before = parse(readFileSync(new URL("before-fitting.yaml", import.meta.url), "utf8")) as Before;
  const paces = Object.entries(before.paces).flatMap(([id, { family, ...steady }]) =>
    LEVELS.map((level): Parameter => {
      const now = library.movements.get(id)?.pace.steady[level];
      if (now === undefined) throw new Error(`no movement ${id}`);
      return {
        name: `${id} ${level}`,
        now: Math.log(now),
        before: Math.log(steady[level]),
        doubts: new Map<string, keyof Sizes>([
          ...(family === "checked"
            ? []
            : ([
                ["all", "all"],
                [family, "family"],
                [id, "movement"],
                [level, "level"],
              ] as const)),
          [`${id} ${level}`, "own"],
        ]),
      };
    }),
  );
  const others = Object.entries(before.constants).map(([name, { value, doubt }]): Parameter => {
    const now = settings.overrides[name] ?? constants[name];
    if (now === undefined) throw new Error(`no constant ${name}`);
    return { name, now, before: value, doubts: new Map([[name, doubt]]) };
  });
  return [...paces, ...others];
}

/** The data with the numbers at these values. */
export function withValues(data: Data, parameters: readonly Parameter[], values: readonly number[]): Data {
  const overrides: Record<string, number> = { ...data.settings.overrides };
  const movements = new Map(data.library.movements);
  parameters.forEach(({ name }, i) => {
    const value = values[i] as number;
    const [id = "", level] = name.split(" ");
    const movement = movements.get(id);
    if (level === undefined || !movement) overrides[name] = value;
    else {
      const steady = { ...movement.pace.steady, [level]: Math.exp(value) };
      movements.set(id, { ...movement, pace: { ...movement.pace, steady } });
    }
  });
  return { ...data, settings: { ...data.settings, overrides }, library: { ...data.library, movements } };
}

/**
 * One comparison: the logarithm of its error with the model as it is, how it goes with each number, and how far what it is compared with may
 * itself be off, where that is more than a field is.
 */
export type Slope = { readonly error: number; readonly by: readonly number[]; readonly noise?: number };

/**
 * The numbers that comparisons ask for, starting from what was believed before: the mean of a normal posterior, with the model taken as
 * linear between where it stands and there, and the sizes of doubts under which these comparisons are likeliest (empirical Bayes).
 */
export function fittedTo(slopes: readonly Slope[], parameters: readonly Parameter[]): readonly number[] {
  const doubts = [...new Set(parameters.flatMap(({ doubts: own }) => [...own.keys()]))];
  const rows = slopes.map(({ by }) =>
    doubts.map((doubt) =>
      parameters.reduce((sum, one, i) => (one.doubts.has(doubt) ? sum + (by[i] as number) : sum), 0),
    ),
  );
  const values = slopes.map(
    ({ error, by }) =>
      -error - parameters.reduce((sum, one, i) => sum + (by[i] as number) * (one.before - one.now), 0),
  );
  const sizeOf = (doubt: string, sizes: Sizes): number => {
    const size = parameters.find(({ doubts: own }) => own.has(doubt))?.doubts.get(doubt) ?? 1;
    return typeof size === "number" ? size : sizes[size];
  };
  const found = TRIED.map((sizes) =>
    gaussianEvidence({
      rows,
      values,
      noise: slopes.map(({ noise }) => noise ?? sizes.noise),
      prior: doubts.map((doubt) => sizeOf(doubt, sizes)),
    }),
  );
  const best = found.reduce((one, other) => (other.logEvidence > one.logEvidence ? other : one));
  const of = new Map(doubts.map((doubt, i) => [doubt, best.mean[i] as number]));
  return parameters.map(({ before, doubts: own }) =>
    [...own.keys()].reduce((sum, doubt) => sum + (of.get(doubt) as number), before),
  );
}
