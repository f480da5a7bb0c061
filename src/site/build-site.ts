import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "astro";
import type { Data } from "../models/data.ts";
import { BuildFailure, explainFailure } from "./build-failure.ts";
import { isRunning, takeBuildLock } from "./build-lock.ts";
import { countSite, type SiteCount } from "./count-site.ts";
import { type FailedBrief, takeWord } from "./failed-briefs.ts";
import { evenOut } from "./even-out.ts";
import { hostingFiles } from "./hosting-files.ts";
import { takeOver, pagesWithFiles } from "./kept-briefs.ts";
import { readLinkVersions } from "./link-versions.ts";
import { allInside, readMade, writeMade } from "./made-files.ts";
import { readOrMakeSecret } from "./secret.ts";
import { settleTarget } from "./settle-target.ts";
import { SHOWN_OPENLY } from "./shown-openly.ts";
import type { Surroundings } from "./surroundings.ts";
import { swapFolder } from "./swap-folder.ts";

export type BuildRequest = {
  readonly surroundings: Surroundings;
  /** Everything people wrote, already checked; tells what must come out. */
  readonly data: Data;
  /** The folder the site is put into. */
  readonly target: string;
  /** Makes nothing where anything fails. */
  readonly strict?: boolean;
};

/** What was made, what could not be computed, and how many briefs were taken over from the site before. */
export type SiteMade = {
  readonly count: SiteCount;
  readonly failed: readonly FailedBrief[];
  readonly kept: number;
};

/**
 * Builds the site: into a fresh folder inside the project, which takes the place of the target only when everything that
 * must be there is there. A build that fails or is killed leaves the target as it was.
 *
 * @throws BuildFailure in plain words.
 */
export async function buildSite(request: BuildRequest): Promise<SiteMade> {
  const { root } = request.surroundings;
  const lockFile = join(root, ".rigsheet", "build.lock");
  const release = takeBuildLock(lockFile);
  if (!release) {
    throw new BuildFailure(
      "Another build is under way in this folder. Wait until it has ended, then start again. " +
        `If there is none, delete ${lockFile}.`,
    );
  }
  const fresh = join(root, ".rigsheet", `build-${process.pid}`);
  const stop = (signal: NodeJS.Signals): void => {
    clearAway(fresh);
    release();
    process.exit(signal === "SIGINT" ? 130 : 143);
  };
  process.once("SIGINT", stop).once("SIGTERM", stop);
  try {
    clearDeadBuilds(join(root, ".rigsheet"));
    const target = settleTarget(request.target, request.surroundings);
    return await buildInto(fresh, { ...request, target });
  } catch (error) {
    throw explainFailure(error, request.target);
  } finally {
    process.off("SIGINT", stop).off("SIGTERM", stop);
    clearAway(fresh);
    release();
  }
}

async function buildInto(
  fresh: string,
  { surroundings, data, target, strict = false }: BuildRequest,
): Promise<SiteMade> {
  mkdirSync(fresh, { recursive: true, mode: 0o700 });
  setEnvironment(surroundings, fresh);
  process.env["RIGSHEET_EARLIER"] = existsSync(target) ? target : "";
  process.env["RIGSHEET_STRICT"] = strict ? "yes" : "";
  // Its own lines would print every address; what has to be said is said by us.
  await build({ root: surroundings.root, logLevel: "silent" });
  rmSync(join(fresh, ".prerender"), { recursive: true, force: true });
  for (const { name, text } of hostingFiles(surroundings.base)) writeFileSync(join(fresh, name), text);
  const failed = takeWord(fresh);
  const kept = existsSync(target) ? await keepEarlier(fresh, target, surroundings, data) : 0;
  const count = countSite(fresh);
  expectCount(count, surroundings, data, kept - failed.filter(({ file }) => file === undefined).length);
  evenOut(fresh, new Date());
  const made = allInside(fresh);
  // Killed in between, the folder holds either all of one or all of the other.
  writeMade(surroundings.root, target, new Set([...made, ...(readMade(surroundings.root, target) ?? [])]));
  swapFolder(fresh, target);
  writeMade(surroundings.root, target, made);
  return { count, failed, kept };
}

/** Briefs that cannot be made now stay as they were, for those who have the link. */
async function keepEarlier(
  fresh: string,
  target: string,
  surroundings: Surroundings,
  data: Data,
): Promise<number> {
  if (surroundings.audience === "gym") return 0;
  const { bytes } = readOrMakeSecret(surroundings);
  const pages = await pagesWithFiles(data, bytes, readLinkVersions(surroundings.dataFolder), surroundings);
  return takeOver(pages, target, fresh, surroundings.base);
}

/** Astro reads its configuration from files and the environment; this is the way to hand it ours. */
function setEnvironment(
  { dataFolder, base, origin, audience, date, secret }: Surroundings,
  fresh: string,
): void {
  Object.assign(process.env, {
    RIGSHEET_OUT: fresh,
    RIGSHEET_DATA: dataFolder,
    RIGSHEET_BASE: base,
    RIGSHEET_SITE: origin ?? "",
    RIGSHEET_AUDIENCE: audience,
    RIGSHEET_DATE: date,
    [SHOWN_OPENLY]: "",
    NODE_ENV: "production",
    ASTRO_TELEMETRY_DISABLED: "1",
    ...(secret === undefined ? {} : { RIGSHEET_SECRET: secret }),
  });
}

/** A page that is missing without anyone having said so would be noticed by an athlete; it is noticed here. */
function expectCount(count: SiteCount, { audience }: Surroundings, data: Data, more: number): void {
  const expected = {
    locked: audience === "gym" ? 0 : 1 + data.athletes.length * data.workouts.length + more,
    strategies: data.workouts.length,
    bandPages: data.workouts.length * data.bands.length,
  };
  for (const [what, number] of Object.entries(expected)) {
    const made = count[what as keyof typeof expected];
    if (made !== number) throw new Error(`Of ${number} ${what} pages only ${made} were made.`);
  }
}

/** Folders of builds whose process is gone hold pages in clear; they go first. */
function clearDeadBuilds(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) {
    const pid = /^build-(\d+)$/.exec(name)?.[1];
    const isDead = Number(pid) === process.pid || !isRunning(Number(pid));
    if (pid !== undefined && isDead) clearAway(join(folder, name));
  }
}

const clearAway = (folder: string): void => {
  rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
};
