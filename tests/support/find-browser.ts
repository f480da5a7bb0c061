import { existsSync } from "node:fs";
import { bringBrowser } from "./bring-browser.ts";

/** Where a browser is, and what it needs around it to start. */
export type FoundBrowser = { readonly path: string; readonly environment: Readonly<Record<string, string>> };

const USUAL_PLACES: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  linux: ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium"],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
  ],
};

const REMEDY = "Install Chromium or Chrome, or say where it is: CHROMIUM=/path/to/chromium";

/**
 * The browser named by `CHROMIUM`, else one the system has; on Linux without one, a Chromium from the npm registry, fetched
 * once. `CHROMIUM=bundled` takes that one wherever it runs.
 */
export function findBrowser(environment: NodeJS.ProcessEnv = process.env): FoundBrowser {
  const named = environment["CHROMIUM"];
  if (named !== undefined && named !== "" && named !== "bundled") {
    if (existsSync(named)) return { path: named, environment: {} };
    throw new Error(`There is no browser at ${named}. ${REMEDY}`);
  }
  const usual = named === "bundled" ? [] : (USUAL_PLACES[process.platform] ?? []);
  const installed = usual.find((path) => existsSync(path));
  if (installed !== undefined) return { path: installed, environment: {} };
  if (process.platform === "linux" && process.arch === "x64") return bringBrowser();
  throw new Error(`There is no browser on this computer that the tests know of. ${REMEDY}`);
}
