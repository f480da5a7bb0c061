import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { typicalBands } from "../compute/typical-bands.ts";
import type { Data } from "../models/data.ts";
import { BuildFailure, explainFailure } from "./build-failure.ts";
import { isRunning, takeBuildLock } from "./build-lock.ts";
import { countSite, type SiteCount } from "./count-site.ts";
import { codeStamp } from "./code-stamp.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import { evenOut } from "./even-out.ts";
import { groupsOf } from "./groups.ts";
import { hostingFiles } from "./hosting-files.ts";
import { endOwnProcesses } from "./in-own-process.ts";
import { takeOver, pagesWithFiles } from "./kept-briefs.ts";
import { readLinkVersions } from "./link-versions.ts";
import type { BriefsGiven } from "./briefs-given.ts";
import { type BriefsMade, makeBriefs, makeShard } from "./make-briefs.ts";
import { allInside, readMade, writeMade } from "./made-files.ts";
import { makePublicPart, publicFolder } from "./public-part.ts";
import { readOrMakeSecret } from "./secret.ts";
import { placeShard, settleShardTarget, type Shard } from "./shard.ts";
import { settleTarget } from "./settle-target.ts";
import type { Surroundings } from "./surroundings.ts";
import { swapFolder } from "./swap-folder.ts";

type BuildRequest = {
  readonly surroundings: Surroundings;
  /** Everything people wrote, already checked; tells what must come out. */
  readonly data: Data;
  /** The folder the site is put into. */
  readonly target: string;
  /** Makes nothing where anything fails. */
  readonly strict?: boolean;
  /** Threads to work in; as many as there are cores and are worth it where nobody says. */
  readonly threads?: number | undefined;
  /** Folders of shards whose briefs are put together instead of being made. */
  readonly shards?: readonly string[] | undefined;
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
export const buildSite = (request: BuildRequest): Promise<SiteMade> =>
  alone(request, (fresh) => {
    const target = settleTarget(request.target, request.surroundings);
    return buildInto(fresh, { ...request, target });
  });

/**
 * Makes one shard of the site: its briefs alone, in a folder from which the merge takes them.
 *
 * @throws BuildFailure in plain words.
 */
export const buildShard = (request: BuildRequest, shard: Shard): Promise<BriefsMade> =>
  alone(request, async (fresh) => {
    if (request.surroundings.audience === "gym") {
      throw new BuildFailure(
        "For the audience gym there are no briefs, so nothing is made in shards. Leave --shard out.",
      );
    }
    settleShardTarget(request.target);
    const made = join(fresh, "site");
    const given = await givenFor(made, { ...request, target: "" });
    rmSync(made, { recursive: true });
    mkdirSync(made);
    const done = await makeShard(made, given, shard);
    placeShard(made, request.target);
    return done;
  });

/** Does something with a fresh folder while no other build may, and clears up whatever becomes of it. */
async function alone<T>(
  { surroundings: { root }, target }: BuildRequest,
  act: (fresh: string) => Promise<T>,
): Promise<T> {
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
    endOwnProcesses();
    clearAway(`${fresh}-cache`);
    clearAway(fresh);
    release();
    process.exit(signal === "SIGINT" ? 130 : 143);
  };
  process.once("SIGINT", stop).once("SIGTERM", stop);
  try {
    clearDeadBuilds(join(root, ".rigsheet"));
    return await act(fresh);
  } catch (error) {
    throw explainFailure(error, target);
  } finally {
    process.off("SIGINT", stop).off("SIGTERM", stop);
    clearAway(`${fresh}-cache`);
    clearAway(fresh);
    release();
  }
}

async function buildInto(fresh: string, request: BuildRequest): Promise<SiteMade> {
  const { surroundings, data, target } = request;
  const { failed, left, made } = await makePages(fresh, request);
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

/** Everything that stands in a site: public pages, briefs, the board, and briefs that cannot be made now and stay. */
async function makePages(
  fresh: string,
  request: BuildRequest,
): Promise<BriefsMade & { readonly left: number }> {
  const { surroundings, target } = request;
  if (surroundings.audience === "gym") {
    // For the gym nothing of the data folder is touched but its content.
    await makePublic(fresh, request, codeStamp(surroundings.root), undefined);
    return { failed: [], left: 0, made: 0 };
  }
  const given = await givenFor(fresh, request);
  const done = await makeBriefs(fresh, given);
  if (given.earlier === undefined) return { ...done, left: 0 };
  return { ...done, left: takeOver(given.withFiles, target, fresh, surroundings.base) };
}

/** What briefs are made from; the public part is made on the way, since their pages stand in its shell. */
async function givenFor(fresh: string, request: BuildRequest): Promise<BriefsGiven> {
  const { surroundings, data, target, strict = false, threads, shards, progress = () => undefined } = request;
  const code = codeStamp(surroundings.root);
  const { bytes: secret } = readOrMakeSecret(surroundings);
  const versions = readLinkVersions(surroundings.dataFolder);
  const shell = await makePublic(fresh, request, code, publicFolder(surroundings.dataFolder));
  const withFiles = await pagesWithFiles(data, secret, versions, surroundings);
  const earlier = existsSync(target) ? target : undefined;
  return {
    surroundings,
    data,
    secret,
    versions,
    withFiles,
    shell,
    code,
    earlier,
    strict,
    threads,
    shards,
    progress,
  };
}

async function makePublic(
  fresh: string,
  { surroundings, data }: BuildRequest,
  code: string,
  kept: string | undefined,
): Promise<string> {
  mkdirSync(fresh, { recursive: true, mode: 0o700 });
  const shell = await makePublicPart(fresh, { surroundings, data, code, kept });
  for (const { name, text } of hostingFiles(surroundings.base)) writeFileSync(join(fresh, name), text);
  return shell;
}

/** A page that is missing without anyone having said so would be noticed by an athlete; it is noticed here. */
function expectCount(count: SiteCount, { audience }: Surroundings, data: Data, more: number): void {
  const waiting = data.unmade.filter(({ kind }) => kind === "brief").length;
  const briefs = data.athletes.length * data.workouts.length - waiting + more;
  const expected = {
    locked: audience === "gym" ? 0 : 1 + groupsOf(data).length + briefs,
    strategies: data.workouts.length,
    bandPages: data.workouts.reduce((sum, workout) => sum + typicalBands(workout, data.bands).length, 0),
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
