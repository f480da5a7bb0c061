import { type Browser, chromium } from "playwright-core";
import { findBrowser } from "./find-browser.ts";

const ARGUMENTS =
  "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync".split(
    " ",
  );

/** Starts Chromium. Where there is none the test fails: what it shows can be shown no other way. */
export async function openBrowser(): Promise<Browser> {
  const { path, environment } = findBrowser();
  return chromium.launch({
    executablePath: path,
    args: ARGUMENTS,
    env: { ...process.env, ...environment },
  });
}
