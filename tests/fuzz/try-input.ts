import { briefText } from "../../src/cli/brief-text.ts";
import { makePlan } from "../../src/compute/make-plan.ts";
import { makeStrategy } from "../../src/compute/make-strategy.ts";
import { SETTABLE } from "../../src/compute/model-tables.ts";
import type { Data } from "../../src/models/data.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { createRandom } from "../../src/numerics/random.ts";
import type { AthleteContext } from "../../src/reading/athlete-file/context.ts";
import type { SourceFile } from "../../src/reading/files/source-file.ts";
import { readFiles } from "../../src/reading/read-data.ts";
import { readTable } from "../../src/reading/read-table.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { openTextTable } from "../../src/reading/tables/open-text-table.ts";
import { sayQuestion } from "../../src/reading/tables/questions.ts";
import { usableSources } from "../../src/site/load-data.ts";
import { type Base, BASES, TABLES } from "./base-files.ts";
import { changed } from "./change.ts";

/** One input: a file somebody may have written, and what stands around it. A table has no path. */
export type Input = { readonly path?: string; readonly text: string; readonly around: readonly SourceFile[] };

/** How an input ended: in messages or in plans, as it should; or in what must never be. */
export type Ending = {
  readonly kind: "messages" | "plans" | "wrong";
  readonly problem?: string;
  readonly cpu: number;
};

/** Most CPU an input may take, seconds. */
export const MOST_CPU = 5;
const DAY = "2026-11-27";
/** Of every dozen inputs one is a table. */
const TABLES_EVERY = 12;
const ODD_NAMES = ["__proto__", "constructor", "toString", "a b", "ä", "..", "CON", "x".repeat(200)];

const CHOSEN: readonly Base[] = BASES.flatMap((base) => Array.from({ length: base.weight }, () => base));

/** The input of a number. Equal numbers give equal inputs. */
export function inputOf(number: number): Input {
  const random = createRandom(number);
  const pick = <T>(of: readonly T[]): T => {
    const one = of[Math.floor(random.uniform() * of.length)];
    if (one === undefined) throw new RangeError("nothing to choose from");
    return one;
  };
  const more = pick(CHOSEN).file.text;
  if (number % TABLES_EVERY === 0) return { text: changed(pick(TABLES), random, more), around: [] };
  const { file, around } = pick(CHOSEN);
  const isRenamed = random.uniform() < 0.03;
  const path = isRenamed ? file.path.replace(/[^/]+(?=\.\w+$)/, () => pick(ODD_NAMES)) : file.path;
  return { path, text: changed(file.text, random, more), around };
}

/** Reads and plans an input as the product does, and judges how it ended. */
export function tryInput(input: Input): Ending {
  const before = process.cpuUsage();
  const ending = ((): Omit<Ending, "cpu"> => {
    try {
      return input.path === undefined ? tryTable(input.text) : tryFolder(input.path, input);
    } catch (error) {
      return wrong(error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
  })();
  const { user, system } = process.cpuUsage(before);
  const cpu = (user + system) / 1e6;
  return cpu > MOST_CPU ? { ...wrong(`took ${cpu.toFixed(1)} s of CPU`), cpu } : { ...ending, cpu };
}

const wrong = (problem: string): Omit<Ending, "cpu"> => ({ kind: "wrong", problem });

function tryFolder(path: string, { text, around }: Input): Omit<Ending, "cpu"> {
  const own = [...around, { path, text }];
  const { value, faults, notices } = usableSources({ builtIn: [], own, faults: [] });
  const said = sayFaults([...faults, ...notices]);
  if (steers(said)) return wrong(`a message steers the terminal: ${JSON.stringify(said)}`);
  if (faults.length > 0) return { kind: "messages" };
  if (!value) return wrong("nothing can be used, and no fault says why");
  const problem = planAll(value, text);
  return problem === undefined ? { kind: "plans" } : wrong(problem);
}

function planAll(data: Data, written: string): string | undefined {
  const texts = textsIn(
    [data.workouts, data.athletes, ...data.gyms.values(), ...data.competitions.values()],
    written,
  );
  for (const workout of data.workouts) {
    const plans = [
      ...data.athletes.map((athlete) => makePlan({ athlete, workout, data, date: DAY })),
      ...makeStrategy({ workout, data, date: DAY }).plans.map(({ plan }) => plan),
    ];
    for (const plan of plans) {
      const problem = judge(plan, texts);
      if (problem !== undefined) return problem;
    }
  }
  return undefined;
}

/** What the plan says to its reader: no number that is none, nothing that steers a terminal. */
function judge(plan: Plan, texts: readonly string[]): string | undefined {
  const said = briefText(plan, (text) => text);
  const nothing = NO_NUMBER.exec(withoutTexts(said, texts));
  if (nothing !== null)
    return `the brief says "${nothing[0]}": ${said.slice(Math.max(0, nothing.index - 60), nothing.index + 60)}`;
  return steers(said)
    ? `the brief steers the terminal: ${JSON.stringify(/.{0,40}[\p{Cc}\u202E\u2028]/u.exec(said.replace(/\n/g, " "))?.[0])}`
    : undefined;
}

const NO_NUMBER = /\b(?:NaN|undefined|Infinity|\[object \w+\])\b|∞/;

/** Texts that a person wrote may hold such words: whoever is called Infinity is called so. A brief folds them at spaces. */
const withoutTexts = (said: string, texts: readonly string[]): string =>
  texts.reduce((rest, text) => rest.replaceAll(text, ""), said.replace(/\s+/g, " "));

/** The texts in what was read that look like a number that is none, as they stand in the file. */
const textsIn = (read: unknown, written: string): readonly string[] => {
  if (typeof read === "string") return NO_NUMBER.test(read) && written.includes(read) ? [read] : [];
  return typeof read === "object" && read !== null
    ? Object.values(read).flatMap((one) => textsIn(one, written))
    : [];
};

const steers = (said: string): boolean =>
  /[\p{Cc}\u202A-\u202E\u2066-\u2069\u2028\u2029]/u.test(said.replace(/[\n\t]/g, ""));

let context: AthleteContext | undefined;

function tryTable(text: string): Omit<Ending, "cpu"> {
  context ??= readFiles(
    [],
    [...(BASES[0]?.around ?? []), ...(BASES[0] ? [BASES[0].file] : [])],
    SETTABLE,
  ).context;
  const read = readTable(openTextTable("t.csv", text), context, new Map());
  if (!read) return { kind: "messages" };
  const said = [
    ...read.questions.map(sayQuestion),
    ...read.refused.map(({ problem, remedy }) => `${problem} ${remedy}`),
  ];
  if (said.some((one) => one.trim() === "")) return wrong("a question says nothing");
  return { kind: read.questions.length + read.refused.length > 0 ? "messages" : "plans" };
}
