import { existsSync, lstatSync, mkdirSync, readdirSync, readlinkSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve } from "node:path";
import { BuildFailure } from "./build-failure.ts";
import { allInside, readMade } from "./made-files.ts";
import type { Surroundings } from "./surroundings.ts";
import { recoverSwap } from "./swap-folder.ts";

/** What files of a site look like, for one that was made before lists of them were kept, or on another computer. */
const OF_A_SITE =
  /^(?:\.htaccess|\.nojekyll|404\.html|_headers|index\.html|robots\.txt|b\/sw\.js|_astro\/[^/]+[.-][\w-]{8}\.(?:css|js|woff2)|b\/[0-9A-Z]{16}\/(?:index\.html|[a-z0-9-]+\.bin)|strategy\/[^/]+\/(?:[^/]+\/)?(?:index\.html|(?:card|sheet)-[a-z0-9]+\.(?:png|pdf)))$/;
/** What no other site has. */
const MARK = join("b", "sw.js");
/** What file managers leave in folders that somebody looked into. */
const LEFT_BY_LOOKING = [".DS_Store", "Thumbs.db", "desktop.ini"];

const SHOWN = 3;

/**
 * The folder a site may take the place of, with links on the disk followed: what is published through one stays published.
 * A folder that holds anything a build did not put there, at any depth, is never replaced. What a killed build left there is put right.
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
  const others = foreignIn(real, readMade(root, real)).filter(
    (path) => !LEFT_BY_LOOKING.includes(basename(path)),
  );
  if (others.length > 0) throw new BuildFailure(sayOthers(real, others));
  return real;
}

/** What no build put into a folder, at any depth; of a folder that is no site all that stands at its top. */
function foreignIn(folder: string, made: ReadonlySet<string> | undefined): readonly string[] {
  if (!existsSync(join(folder, MARK))) return readdirSync(folder);
  return allInside(folder).filter((path) => (made ? !made.has(path) : !OF_A_SITE.test(path)));
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
