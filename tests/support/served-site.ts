import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { serveFolder, type Serving } from "../../src/site/serve-folder.ts";
import { type FixtureLink, fixtureLinks, fixtureSite, type Variant } from "./fixture-site.ts";
import { openBrowser } from "./open-browser.ts";

/** A built site, served, with a browser to look at it. */
export type ServedSite = {
  readonly folder: string;
  readonly origin: string;
  readonly browser: Browser;
  readonly links: readonly FixtureLink[];
  /** The link of an athlete's first workout, or of the board. */
  readonly linkOf: (athlete: string) => string;
  /** Opens an address in a browser that knows nothing yet. */
  readonly visit: (address: string, options?: BrowserContextOptions) => Promise<Page>;
  readonly close: () => Promise<void>;
};

/** Builds a site where it is not built, serves it on this computer and starts a browser. */
export async function serveSite(variant?: Variant): Promise<ServedSite> {
  const folder = await fixtureSite(variant);
  const base = variant?.environment?.["RIGSHEET_BASE"] ?? "/";
  const serving: Serving = await serveFolder(folder, base, 0);
  const links = await fixtureLinks(serving.address, variant?.environment, variant?.data);
  const browser = await openBrowser();
  return {
    folder,
    origin: serving.address,
    browser,
    links,
    linkOf: (athlete) => {
      const found = links.find((link) => link.athlete === athlete);
      if (!found) throw new Error(`no link for ${athlete}`);
      return found.link;
    },
    visit: async (address, options = {}) => {
      const context: BrowserContext = await browser.newContext({
        viewport: { width: 390, height: 844 },
        ...options,
      });
      const page = await context.newPage();
      await page.goto(address);
      return page;
    },
    close: async () => {
      await browser.close();
      serving.server.closeAllConnections();
      serving.server.close();
    },
  };
}

/** Waits until a page has opened its lock. */
export const opened = (page: Page): Promise<void> => page.locator("#opened main").waitFor();
