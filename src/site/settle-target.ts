import { existsSync, lstatSync, mkdirSync, readdirSync, readlinkSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve } from "node:path";
import { BuildFailure } from "./build-failure.ts";
import type { Surroundings } from "./surroundings.ts";
import { recoverSwap } from "./swap-folder.ts";

/** Everything that stands at the top of a finished site. */
const OF_A_SITE = [
  ".htaccess",
  ".nojekyll",
  "404.html",
  "_astro",
  "_headers",
  "b",
  "index.html",
  "robots.txt",
  "strategy",
];
/** What no other site has. */
const MARK = join("b", "sw.js");
/** What file managers leave in folders that somebody looked into. */
const LEFT_BY_LOOKING = [".DS_Store", "Thumbs.db", "desktop.ini"];

const SHOWN = 3;

/**
 * The folder a site may take the place of, with links on the disk followed: what is published through one stays published.
 * A folder that holds anything a build did not put there is never replaced. What a killed build left there is put right.
 *
 * @throws BuildFailure when the site cannot be put there.
 */
export function settleTarget(
  target: string,
  { root, dataFolder }: Pick<Surroundings, "root" | "dataFolder">,
): string {
  const real = follow(target);
  recoverSwap(real);
  if (!existsSync(real)) return real;
  if (!statSync(real).isDirectory()) {
    throw new BuildFailure(`${target} is a file. Name a folder for the site with --out.`);
  }
  for (const inside of [root, dataFolder]) {
    if (isWithin(inside, real) || isWithin(inside, target)) {
      throw new BuildFailure(
        `The site would take the place of ${real}, which holds ${inside}. Name a folder of its own with --out.`,
      );
    }
  }
  const names = readdirSync(real).filter((name) => !LEFT_BY_LOOKING.includes(name));
  const isSite = existsSync(join(real, MARK));
  const others = names.filter((name) => !isSite || !OF_A_SITE.includes(name));
  if (others.length > 0) throw new BuildFailure(sayOthers(real, others));
  return real;
}

/** Where a path leads, though there be nothing yet; the folder around it is made. */
function follow(target: string): string {
  if (existsSync(target)) return realpathSync.native(target);
  const isLink = lstatSync(target, { throwIfNoEntry: false })?.isSymbolicLink();
  const end = isLink ? resolve(dirname(target), readlinkSync(target)) : target;
  mkdirSync(dirname(end), { recursive: true });
  return join(realpathSync.native(dirname(end)), basename(end));
}

const isWithin = (path: string, folder: string): boolean => {
  const way = relative(folder, path);
  return !way.startsWith("..") && !isAbsolute(way);
};

function sayOthers(folder: string, others: readonly string[]): string {
  const shown = others.slice(0, SHOWN).join(", ");
  const more = others.length > SHOWN ? ` and ${others.length - SHOWN} more` : "";
  return (
    `${folder} holds what no build put there and what would be lost: ${shown}${more}. ` +
    `Move it elsewhere, or name another folder with --out.`
  );
}
