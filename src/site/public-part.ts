import { cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import * as z from "zod";
import { makeStrategy } from "../compute/make-strategy.ts";
import type { Data } from "../models/data.ts";
import { placeFile } from "./brief-cache.ts";
import { digestOf, digestOfBytes } from "./digest.ts";
import { handData } from "./handed-data.ts";
import { inOwnProcess } from "./in-own-process.ts";
import { allInside } from "./made-files.ts";
import { SHELL_ADDRESS } from "./page-shell.ts";
import type { FrameworkRun } from "./run-framework.ts";
import { OWN_FOLDER } from "./secret.ts";
import type { Surroundings } from "./surroundings.ts";
import { writeSafely } from "./write-safely.ts";

const LIST = "list.json";
const SHELL = `b/${SHELL_ADDRESS}/index.html`;

const listField = z.strictObject({
  from: z.string().describe("mark of what it was made from, but for the day"),
  day: z.string().describe("the day it was last found to be as it would be made"),
  plans: z.string().describe("mark of the plans it shows, but for the day"),
  sums: z.record(z.string(), z.string()),
});

type PublicGiven = {
  readonly surroundings: Surroundings;
  readonly data: Data;
  /** Mark of the program. */
  readonly code: string;
  /** Where the public part is kept for the next build; nowhere where nobody says. */
  readonly kept: string | undefined;
};

/**
 * Makes everything in a site that is locked for nobody, and the shell of the locked pages, which is given back. No athlete
 * is told to the site's framework. Where nothing of it changed, what was made before is taken, and the framework does not
 * even start; a day that changes no plan changes nothing.
 */
export async function makePublicPart(fresh: string, given: PublicGiven): Promise<string> {
  const { surroundings, data, code, kept } = given;
  const handed = forEveryone(data);
  const { root, base, origin, date } = surroundings;
  const made: PublicMark = {
    from: digestOf([code, root, base, origin, handed]),
    day: date,
    plans: once(() => plansMark(handed, date)),
  };
  if (kept === undefined || !takeKept(kept, made, fresh)) {
    await renderInto(fresh, surroundings, handed);
    if (kept !== undefined) keep(kept, made, fresh);
  }
  const shell = readFileSync(join(fresh, SHELL), "utf8");
  rmSync(dirname(join(fresh, SHELL)), { recursive: true });
  return shell;
}

/** What the public part is made from. Its plans are worked out only where the day is another. */
type PublicMark = { readonly from: string; readonly day: string; readonly plans: () => string };

/** Mark of the plans of all bands, but for the day they were made. */
const plansMark = (data: Data, date: string): string =>
  digestOf(
    data.workouts.map((workout) =>
      makeStrategy({ workout, data, date }).plans.map(({ band, plan }) => [band, { ...plan, date: "" }]),
    ),
  );

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

/**
 * What public pages may be made from. The framework keeps what it is told in a file of its own, in clear; so it is told
 * neither of athletes nor what files of workouts say of them: words of the coach and who did it early.
 */
export const forEveryone = (data: Data): Data => ({
  ...data,
  workouts: data.workouts.map((workout) => ({
    ...workout,
    words: [],
    early: workout.early.filter(({ athlete }) => athlete === undefined),
  })),
  athletes: [],
  unmade: [],
  notices: [],
});

/** Takes the public part of an earlier build where it was made from the same, and every file is as it was. */
function takeKept(kept: string, made: PublicMark, fresh: string): boolean {
  try {
    const list = listField.parse(JSON.parse(readFileSync(join(kept, LIST), "utf8")));
    const files = Object.entries(list.sums);
    if (list.from !== made.from || (list.day !== made.day && list.plans !== made.plans())) return false;
    if (!files.every(([path, sum]) => digestOfBytes(readFileSync(join(kept, "site", path))) === sum))
      return false;
    for (const [path] of files) {
      mkdirSync(dirname(join(fresh, path)), { recursive: true });
      placeFile(join(kept, "site", path), join(fresh, path));
    }
    if (list.day !== made.day) writeSafely(join(kept, LIST), JSON.stringify({ ...list, day: made.day }));
    return true;
  } catch {
    // Whatever is wrong with it, it is made again.
    return false;
  }
}

/** Keeps the public part; where it cannot be written, the next build makes it again. */
function keep(kept: string, made: PublicMark, fresh: string): void {
  try {
    replace(kept, made, fresh);
  } catch {
    rmSync(kept, { recursive: true, force: true });
  }
}

function replace(kept: string, { from, day, plans }: PublicMark, fresh: string): void {
  const next = `${kept}.${process.pid}.new`;
  rmSync(next, { recursive: true, force: true });
  mkdirSync(next, { recursive: true, mode: 0o700 });
  cpSync(fresh, join(next, "site"), { recursive: true });
  const sums = allInside(fresh).map(
    (path) => [path, digestOfBytes(readFileSync(join(fresh, path)))] as const,
  );
  writeFileSync(
    join(next, LIST),
    JSON.stringify({ from, day, plans: plans(), sums: Object.fromEntries(sums) }),
  );
  rmSync(kept, { recursive: true, force: true });
  renameSync(next, kept);
}

async function renderInto(fresh: string, surroundings: Surroundings, data: Data): Promise<void> {
  const handed = join(fresh, ".handed.json");
  handData(handed, data);
  const { root, dataFolder, base, origin, date } = surroundings;
  const run: FrameworkRun = {
    root,
    dataFolder,
    base,
    date,
    fresh,
    handed,
    ...(origin === undefined ? {} : { origin }),
  };
  await inOwnProcess("framework-worker.ts", "render", run);
  rmSync(join(fresh, ".prerender"), { recursive: true, force: true });
  rmSync(handed, { force: true });
  if (!existsSync(join(fresh, SHELL)))
    throw new Error("The page from which locked pages are made is missing.");
}

/** Where the public part is kept, beside the secret. */
export const publicFolder = (dataFolder: string): string => join(dataFolder, OWN_FOLDER, "cache", "public");
