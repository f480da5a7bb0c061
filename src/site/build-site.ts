import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Data } from "../models/data.ts";
import { BuildFailure, explainFailure } from "./build-failure.ts";
import { isRunning, takeBuildLock } from "./build-lock.ts";
import { countSite, type SiteCount } from "./count-site.ts";
import { codeStamp } from "./code-stamp.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import { evenOut } from "./even-out.ts";
import { hostingFiles } from "./hosting-files.ts";
import { takeOver, pagesWithFiles } from "./kept-briefs.ts";
import { readLinkVersions } from "./link-versions.ts";
import { makeBriefs } from "./make-briefs.ts";
import { allInside, readMade, writeMade } from "./made-files.ts";
import { makePublicPart, publicFolder } from "./public-part.ts";
import { readOrMakeSecret } from "./secret.ts";
import { settleTarget } from "./settle-target.ts";
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
  /** Threads to work in; as many as there are cores and are worth it where nobody says. */
  readonly threads?: number | undefined;
  /** Told how many briefs of how many are ready. */
  readonly progress?: (done: number, all: number) => void;
};

/** What was made, what could not be computed, and how many briefs were taken over from the site before. */
export type SiteMade = {
  readonly count: SiteCount;
  readonly failed: readonly FailedBrief[];
  readonly kept: number;
  /** How many briefs were made anew; the others were as they had been. */
  readonly made: number;
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
    clearAway(`${fresh}-cache`);
    clearAway(fresh);
    release();
  }
}

async function buildInto(
  fresh: string,
  request: BuildRequest & { readonly target: string },
): Promise<SiteMade> {
  const { surroundings, data, target } = request;
  mkdirSync(fresh, { recursive: true, mode: 0o700 });
  const code = codeStamp(surroundings.root);
  // For the gym nothing of the data folder is touched but its content.
  const kept = surroundings.audience === "gym" ? undefined : publicFolder(surroundings.dataFolder);
  const shell = await makePublicPart(fresh, { surroundings, data, code, kept });
  for (const { name, text } of hostingFiles(surroundings.base)) writeFileSync(join(fresh, name), text);
  const { failed, left, made } = await makeLocked(fresh, request, { shell, code });
  const count = countSite(fresh);
  expectCount(count, surroundings, data, left - failed.filter(({ file }) => file === undefined).length);
  evenOut(fresh, new Date());
  const written = allInside(fresh);
  // Killed in between, the folder holds either all of one or all of the other.
  writeMade(surroundings.root, target, new Set([...written, ...(readMade(surroundings.root, target) ?? [])]));
  swapFolder(fresh, target);
  writeMade(surroundings.root, target, written);
  return { count, failed, kept: left, made };
}

/** Everything that is locked: briefs, the board, and briefs that cannot be made now and stay as they were. */
async function makeLocked(
  fresh: string,
  { surroundings, data, target, strict = false, threads, progress = () => undefined }: BuildRequest,
  { shell, code }: { readonly shell: string; readonly code: string },
): Promise<{ readonly failed: readonly FailedBrief[]; readonly left: number; readonly made: number }> {
  if (surroundings.audience === "gym") return { failed: [], left: 0, made: 0 };
  const { bytes: secret } = readOrMakeSecret(surroundings);
  const versions = readLinkVersions(surroundings.dataFolder);
  const earlier = existsSync(target) ? target : undefined;
  const given = { surroundings, data, secret, versions, shell, code, earlier, strict, threads, progress };
  const { failed, made } = await makeBriefs(fresh, given);
  if (earlier === undefined) return { failed, left: 0, made };
  const pages = await pagesWithFiles(data, secret, versions, surroundings);
  return { failed, left: takeOver(pages, earlier, fresh, surroundings.base), made };
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
    const pid = /^build-(\d+)(?:-cache)?$/.exec(name)?.[1];
    const isDead = Number(pid) === process.pid || !isRunning(Number(pid));
    if (pid !== undefined && isDead) clearAway(join(folder, name));
  }
}

const clearAway = (folder: string): void => {
  rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
};
