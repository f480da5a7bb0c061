import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { join } from "node:path";
import { filesBelow } from "./source-files.ts";
import { ROOT, runBuild, runCommand, TEST_SECRET } from "./run-command.ts";

/** The data folder of the tests' site. */
export const FIXTURE = join(ROOT, "tests/fixtures/site");
/** The day every test site is made for. */
export const DAY = "2026-11-25";

/** Copies the data folder of the tests, without what other tests noted there about whose links were made. */
export function copyFixture(to: string): void {
  cpSync(FIXTURE, to, { recursive: true, filter: (source) => !source.endsWith(".rigsheet") });
}

/** Every file of a site with its bytes, in base 64. */
export const bytesOfSite = (site: string): Readonly<Record<string, string>> =>
  Object.fromEntries(filesBelow(site).map((file) => [file, readFileSync(join(site, file), "base64")]));

/** Differences between the test sites. */
export type Variant = {
  readonly name: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly arguments?: readonly string[];
  readonly data?: string;
};

export type FixtureLink = {
  readonly athlete: string;
  readonly name: string;
  readonly workout: string;
  readonly link: string;
  readonly passcode?: string;
};

const FOLDER = join(ROOT, ".rigsheet/test-sites");

/**
 * A built site for tests, in a folder of its own. It is built once for a state of the sources, whoever asks first; every
 * other test, and every later run, takes the same.
 */
export async function fixtureSite(variant: Variant = { name: "usual" }): Promise<string> {
  const stamp = stampOfSources(JSON.stringify(variant), variant.data ?? FIXTURE);
  const finished = join(FOLDER, `${variant.name}-${stamp}`);
  if (existsSync(finished)) return finished;
  const mine = join(FOLDER, `${variant.name}-${stamp}.${process.pid}`);
  mkdirSync(FOLDER, { recursive: true });
  const args = [
    "--data",
    variant.data ?? FIXTURE,
    "--out",
    mine,
    "--date",
    DAY,
    ...(variant.arguments ?? []),
  ];
  const { err, code } = await runBuild(args, variant.environment, () => existsSync(finished));
  if (code !== 0) throw new Error(`The site of the tests could not be built:\n${err}`);
  if (existsSync(finished)) return finished;
  for (const name of readdirSync(FOLDER)) {
    if (name.startsWith(`${variant.name}-`) && join(FOLDER, name) !== mine)
      rmSync(join(FOLDER, name), { recursive: true, force: true });
  }
  renameSync(mine, finished);
  return finished;
}

/** Who gets which link, with the host it will be served from. */
export async function fixtureLinks(
  origin: string,
  environment: Readonly<Record<string, string>> = {},
  data: string = FIXTURE,
): Promise<readonly FixtureLink[]> {
  const { out } = await runCommand("links", ["--data", data, "--json"], {
    RIGSHEET_SECRET: TEST_SECRET,
    RIGSHEET_SITE: origin,
    ...environment,
  });
  return JSON.parse(out) as readonly FixtureLink[];
}

/** A mark of everything a site is made from; fonts and the like by size, texts by content. */
function stampOfSources(more: string, data: string): string {
  const hash = createHash("sha256").update(more);
  const folders = [
    "src",
    "content/movements",
    "content/warm-ups",
    "content/recovery",
    "content/cautions",
    "content/bands",
  ].map((folder) => join(ROOT, folder));
  for (const folder of [...folders, data]) {
    for (const path of filesBelow(folder, [".rigsheet"])) {
      const file = join(folder, path);
      hash
        .update(path)
        .update(/\.(ts|astro|css|mdx|yaml)$/.test(path) ? readFileSync(file) : String(statSync(file).size));
    }
  }
  for (const file of ["astro.config.mjs", "package-lock.json"]) hash.update(readFileSync(join(ROOT, file)));
  return hash.digest("hex").slice(0, 12);
}
