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
import { addResults } from "../../src/reading/add-results.ts";
import { readLog } from "../../src/reading/read-log.ts";
import { readTable } from "../../src/reading/read-table.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { openTextTable } from "../../src/reading/tables/open-text-table.ts";
import {
  type Answers,
  readAnswers,
  sayQuestion,
  writeQuestions,
} from "../../src/reading/tables/questions.ts";
import { importTables } from "../../src/cli/import-tables.ts";
import { sayIntake } from "../../src/cli/say-intake.ts";
import { readerOf } from "../../src/site/reader-of.ts";
import { writeMessage } from "../../src/site/write-message.ts";
import { usableSources } from "../../src/site/load-data.ts";
import { type Base, BASES, LOGS, MESSAGE_PATH, MESSAGES, TABLES, WHOLE_FOLDER } from "./base-files.ts";
import { changed } from "./change.ts";

/** One input: a file of the folder with what stands around it, or another text that people give in. */
export type Input =
  | {
      readonly kind: "file";
      readonly path: string;
      readonly text: string;
      readonly around: readonly SourceFile[];
    }
  | { readonly kind: "table" | "answers" | "log"; readonly text: string };

/** How an input ended: in messages or in plans, as it should; or in what must never be. */
export type Ending = {
  readonly kind: "messages" | "plans" | "wrong";
  readonly problem?: string;
  readonly cpu: number;
};

/** Most CPU an input may take, seconds. */
export const MOST_CPU = 5;
const DAY = "2026-11-27";
/** Of so many inputs one is a table, one the answers to its questions, one a log and one a text of messages. */
const OTHERS_EVERY = 18;
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
  const asChanged = (text: string): string => changed(text, random, more);
  switch (number % OTHERS_EVERY) {
    case 0:
      return { kind: "table", text: asChanged(pick(TABLES)) };
    case 1:
      return { kind: "answers", text: asChanged(ANSWERED) };
    case 2:
      return { kind: "log", text: asChanged(pick(LOGS)) };
    case 3:
      return { kind: "file", path: MESSAGE_PATH, text: asChanged(pick(MESSAGES)), around: WHOLE_FOLDER };
  }
  const { file, around } = pick(CHOSEN);
  const isRenamed = random.uniform() < 0.03;
  const path = isRenamed ? file.path.replace(/[^/]+(?=\.\w+$)/, () => pick(ODD_NAMES)) : file.path;
  return { kind: "file", path, text: asChanged(file.text), around };
}

/** Reads and plans an input as the product does, and judges how it ended. */
export function tryInput(input: Input): Ending {
  const before = process.cpuUsage();
  const ending = ((): Omit<Ending, "cpu"> => {
    try {
      if (input.kind === "file") return tryFolder(input);
      return TRY_OTHER[input.kind](input.text);
    } catch (error) {
      return wrong(error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
  })();
  const { user, system } = process.cpuUsage(before);
  const cpu = (user + system) / 1e6;
  return cpu > MOST_CPU ? { ...wrong(`took ${cpu.toFixed(1)} s of CPU`), cpu } : { ...ending, cpu };
}

const wrong = (problem: string): Omit<Ending, "cpu"> => ({ kind: "wrong", problem });

function tryFolder({ path, text, around }: Input & { readonly kind: "file" }): Omit<Ending, "cpu"> {
  const own = [...around, { path, text }];
  const { value, faults, notices } = usableSources({ builtIn: [], own, faults: [] });
  const said = sayFaults([...faults, ...notices]);
  if (steers(said)) return wrong(`a message steers the terminal: ${JSON.stringify(said)}`);
  if (faults.length > 0) return { kind: "messages" };
  if (!value) return wrong("nothing can be used, and no fault says why");
  const problem = path === MESSAGE_PATH ? writeAll(value, text) : planAll(value, text);
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

/** The messages of a checked template, to everybody. */
function writeAll(data: Data, template: string): string | undefined {
  for (const workout of data.workouts)
    for (const athlete of data.athletes) {
      const plan = makePlan({ athlete, workout, data, date: DAY });
      const said = writeMessage(template, readerOf(athlete, plan, data), "https://x.example/#k");
      const nothing = NO_NUMBER.exec(withoutTexts(said, textsIn(template, template)));
      if (nothing !== null && !NO_NUMBER.test(template)) return `a message says "${nothing[0]}": ${said}`;
    }
  return undefined;
}

let context: AthleteContext | undefined;
const contextOf = (): AthleteContext => (context ??= readFiles([], WHOLE_FOLDER, SETTABLE).context);

const TRY_OTHER: Readonly<Record<"table" | "answers" | "log", (text: string) => Omit<Ending, "cpu">>> = {
  table: (text) => tryTable(text, new Map()),
  answers: (text) => tryTable(TABLES[0] ?? "", readAnswers(text)),
  log: tryLog,
};

/** The questions of a table with something behind every arrow. */
const ANSWERED = (() => {
  const read = readTable(openTextTable("t.csv", TABLES[0] ?? ""), contextOf(), new Map());
  const answers = ["kg", "yes", "day first", "12:30", "84 kg", "?", "regular", "none", "Ana: 3"];
  let next = 0;
  return writeQuestions(read?.questions ?? [], new Map(), "npm run intake -- t.csv").replace(
    /=> $/gm,
    () => `=> ${answers[next++ % answers.length] ?? ""}`,
  );
})();

/** Reads a table into athlete files and holds them against the reader of such files. */
function tryTable(text: string, answers: Answers): Omit<Ending, "cpu"> {
  const folder = { folder: "intake", answers, earlier: {}, files: new Map(), ids: new Set<string>() };
  const made = importTables([openTextTable("t.csv", text)], contextOf(), folder, "npm run intake -- t.csv");
  const said = sayIntake(made, "intake", "npm run intake -- t.csv", undefined);
  if (made.tables.length === 0) return { kind: "messages" };
  const blank = made.questions.find((one) => sayQuestion(one).trim() === "");
  if (blank) return wrong("a question says nothing");
  if (NO_NUMBER.test(said) && !NO_NUMBER.test(text)) return wrong(`the import says ${said}`);
  for (const { id, text: file } of made.output.athletes) {
    const files = [{ path: `athletes/${id}.yaml`, text: `${file}\n` }];
    const { value, faults } = usableSources({ builtIn: [], own: [...WHOLE_FOLDER, ...files], faults: [] });
    const problem = value && faults.length === 0 ? planAll(value, text) : undefined;
    if (problem !== undefined) return wrong(problem);
  }
  const refused = made.tables.some(({ read }) => read.refused.length > 0);
  return { kind: made.questions.length > 0 || refused ? "messages" : "plans" };
}

/** Reads a log and, where it is taken, plans the athlete with it in the file. */
function tryLog(text: string): Omit<Ending, "cpu"> {
  const { entries, faults } = readLog({ path: "log.txt", text }, contextOf(), ["ana"]);
  const said = sayFaults(faults);
  if (steers(said)) return wrong(`a message steers the terminal: ${JSON.stringify(said)}`);
  if (faults.length > 0) return { kind: "messages" };
  const own = WHOLE_FOLDER.map(({ path, text: before }) => {
    if (path !== "athletes/ana.yaml") return { path, text: before };
    return {
      path,
      text:
        addResults(
          before,
          text,
          entries.map(({ index }) => index),
        ) ?? before,
    };
  });
  const read = usableSources({ builtIn: [], own, faults: [] });
  if (!read.value) return wrong("a log that was taken makes the folder useless");
  if (read.faults.length > 0) return { kind: "messages" };
  const problem = planAll(read.value, text);
  return problem === undefined ? { kind: "plans" } : wrong(problem);
}
