import { execFileSync } from "node:child_process";
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { FoundBrowser } from "./find-browser.ts";

const PACKAGE = fileURLToPath(new URL("bundled-browser/", import.meta.url));
const CACHE = fileURLToPath(new URL("../../node_modules/.cache/", import.meta.url));

/** The package's own list of fonts names folders of the machines it is made for; a browser without any font ends at a text field. */
const FONTS = "fonts.conf";
const listOfFonts = (home: string): string => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(home, "unpacked", "fonts")}</dir>
  <cachedir>${join(home, "font-cache")}</cachedir>
</fontconfig>
`;

/** Unpacks the browser and, as for a bare Amazon Linux, the libraries it needs; both go below the temporary folder. */
const UNPACK = `
const { default: chromium } = await import("@sparticuz/chromium");
chromium.setGraphicsMode = false;
await chromium.executablePath();`;

/**
 * A Chromium for Linux on x64 out of the npm registry, with its libraries, for a system that has neither: fetched at the
 * first call (60 MB, pinned by a lock file of its own), kept in the cache of node_modules.
 */
export function bringBrowser(): FoundBrowser {
  const lock = JSON.parse(readFileSync(join(PACKAGE, "package-lock.json"), "utf8")) as Lock;
  const version = lock.packages["node_modules/@sparticuz/chromium"].version;
  const home = join(CACHE, `bundled-browser-${version}`);
  if (!existsSync(home)) fetchInto(home);
  const unpacked = join(home, "unpacked");
  return {
    path: join(unpacked, "chromium"),
    environment: {
      LD_LIBRARY_PATH: join(unpacked, "al2023", "lib"),
      FONTCONFIG_FILE: join(home, FONTS),
      HOME: home,
    },
  };
}

type Lock = {
  readonly packages: { readonly "node_modules/@sparticuz/chromium": { readonly version: string } };
};

/** Makes the folder whole beside its place and moves it there, so that two tests at once do not meet a half of it. */
function fetchInto(home: string): void {
  mkdirSync(CACHE, { recursive: true });
  const folder = mkdtempSync(join(CACHE, "bundled-browser-"));
  try {
    for (const file of ["package.json", "package-lock.json"])
      copyFileSync(join(PACKAGE, file), join(folder, file));
    execFileSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel", "error"], {
      cwd: folder,
      stdio: ["ignore", "ignore", "inherit"],
    });
    mkdirSync(join(folder, "unpacked"));
    execFileSync(process.execPath, ["--input-type=module", "--eval", UNPACK], {
      cwd: folder,
      env: { ...process.env, TMPDIR: join(folder, "unpacked"), AWS_EXECUTION_ENV: "AWS_Lambda_nodejs24.x" },
      stdio: ["ignore", "ignore", "inherit"],
    });
    rmSync(join(folder, "node_modules"), { recursive: true });
    writeFileSync(join(folder, FONTS), listOfFonts(home));
    if (!existsSync(home)) renameSync(folder, home);
  } catch (error) {
    if (existsSync(home)) return;
    const message =
      "No browser is installed, and none could be fetched from the npm registry. Install chromium, or say where it is: CHROMIUM=/path/to/chromium";
    throw new Error(message, { cause: error });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
