import { type Browser, chromium } from "playwright-core";
import { findBrowser } from "../support/find-browser.ts";
import { cpuOfTree } from "./measure.ts";

const ARGUMENTS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
];
const SIZES = [
  { width: 1080, height: 1350 },
  { width: 1200, height: 630 },
] as const;

/** A browser that is measured while it makes of a page what a build makes: two sheets and two pictures. */
export type BrowserAtWork = {
  /** CPU seconds for one page; nothing where the system does not tell. */
  readonly make: (link: string) => Promise<number | undefined>;
  readonly close: () => Promise<void>;
};

/** Starts a browser; its start is not counted. */
export async function browserAtWork(): Promise<BrowserAtWork> {
  const { path, environment } = findBrowser();
  const server = await chromium.launchServer({
    executablePath: path,
    args: ARGUMENTS,
    env: { ...process.env, ...environment },
  });
  const browser: Browser = await chromium.connect(server.wsEndpoint());
  const pid = server.process().pid ?? 0;
  return {
    make: async (link) => {
      const before = cpuOfTree(pid);
      const context = await browser.newContext({ deviceScaleFactor: 1 });
      const page = await context.newPage();
      await page.goto(link);
      await page.locator("#opened main").waitFor();
      await page.pdf({ format: "A4" });
      await page.pdf({ format: "Letter" });
      for (const size of SIZES) {
        await page.setViewportSize(size);
        await page.screenshot();
      }
      await context.close();
      const after = cpuOfTree(pid);
      return before === undefined || after === undefined ? undefined : after - before;
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
