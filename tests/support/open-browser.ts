import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const PATH = process.env["CHROMIUM"] ?? "/usr/bin/chromium";
const ARGUMENTS =
  "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync".split(
    " ",
  );

/** Starts Chromium. Where there is none the test fails: what it shows can be shown no other way. */
export async function openBrowser(): Promise<Browser> {
  if (!existsSync(PATH)) {
    throw new Error(
      `There is no browser at ${PATH}. Install chromium, or say where it is: CHROMIUM=/path/to/chromium`,
    );
  }
  return chromium.launch({ executablePath: PATH, args: ARGUMENTS });
}
