import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveSite, type ServedSite } from "../support/served-site.ts";

const WIDTHS = [320, 360, 390, 768, 1024, 1280, 1440];
let site: ServedSite;
beforeAll(async () => {
  site = await serveSite();
}, 600_000);
afterAll(() => site.close());

const PAGES = [
  "a brief",
  "a brief of somebody hardly known",
  "a brief with something withheld",
  "the board",
  "a strategy page",
  "a page of a band",
  "the list of workouts",
  "a door that stays shut",
  "a page that is not there",
] as const;

const addressOf = (page: (typeof PAGES)[number]): string => {
  switch (page) {
    case "a brief":
      return site.linkOf("ilvane-quistgard");
    case "a brief of somebody hardly known":
      return site.linkOf("tjostolv-nandubay");
    case "a brief with something withheld":
      return site.linkOf("orsolo-venn");
    case "the board":
      return site.linkOf("board");
    case "a strategy page":
      return `${site.origin}/strategy/gravel-bell/`;
    case "a page of a band":
      return `${site.origin}/strategy/gravel-bell/new-men/`;
    case "the list of workouts":
      return `${site.origin}/`;
    case "a door that stays shut":
      return site.linkOf("ilvane-quistgard").split("#")[0] ?? "";
    case "a page that is not there":
      return `${site.origin}/nowhere/`;
  }
};

async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const door = document.getElementById("door");
    return !door || door.dataset["trouble"] !== undefined;
  });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

describe.each(PAGES)("%s", (what) => {
  it("is never wider than the screen, from 320 to 1440 pixels", { timeout: 60_000 }, async () => {
    const page = await site.visit(addressOf(what));
    await settled(page);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect([width, over]).toEqual([width, 0]);
    }
    await page.context().close();
  });

  it.each(["light", "dark"] as const)(
    "has no barrier that a checker finds, in the %s theme",
    { timeout: 60_000 },
    async (colorScheme) => {
      for (const width of [360, 1280]) {
        const page = await site.visit(addressOf(what), { colorScheme, viewport: { width, height: 800 } });
        await settled(page);
        const { violations } = await new AxeBuilder({ page }).analyze();
        const serious = violations.filter(({ impact }) => impact === "serious" || impact === "critical");
        expect(serious.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
        await page.context().close();
      }
    },
  );

  it(
    "breaks no rule of its content policy, throws nothing, and asks no other host",
    { timeout: 60_000 },
    async () => {
      const context = await site.browser.newContext();
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("console", (message) => {
        // The page that is not there is meant to be missing.
        if (message.type() === "error" && !message.text().includes("404")) complaints.push(message.text());
      });
      page.on("pageerror", (error) => complaints.push(error.message));
      page.on("request", (request) => {
        if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(site.origin))
          complaints.push(request.url());
      });
      await page.goto(addressOf(what));
      await settled(page);
      expect(complaints).toEqual([]);
      await context.close();
    },
  );
});

describe("a brief", () => {
  it("can be read and used with the keyboard alone", { timeout: 60_000 }, async () => {
    const page = await site.visit(site.linkOf("ilvane-quistgard"));
    await settled(page);
    const reached: string[] = [];
    for (let step = 0; step < 30; step++) {
      await page.keyboard.press("Tab");
      const what = await page.evaluate(() => {
        const element = document.activeElement;
        const outline = element ? getComputedStyle(element).outlineStyle : "none";
        return `${element?.tagName ?? ""} ${element?.textContent.trim().slice(0, 30) ?? ""} ${outline}`;
      });
      reached.push(what);
    }
    // Other workouts, files, contents, each with an outline around it.
    expect(reached.some((what) => /^A Slow Lighthouse solid$/.test(what))).toBe(true);
    expect(reached.some((what) => /^BUTTON Sheet for the rig, A4 solid$/.test(what))).toBe(true);
    expect(reached.some((what) => /^A Warm-up solid$/.test(what))).toBe(true);
    await page.context().close();
  });

  it("goes to a section without losing the key from its address", { timeout: 60_000 }, async () => {
    const link = site.linkOf("ilvane-quistgard");
    const page = await site.visit(link);
    await settled(page);
    await page.getByRole("link", { name: "Warm-up", exact: true }).click();
    expect(page.url()).toBe(link);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("warm-up");
    await page.context().close();
  });

  it("shows the plan within the first two screens of a phone", { timeout: 60_000 }, async () => {
    const page = await site.visit(site.linkOf("ilvane-quistgard"), { viewport: { width: 360, height: 740 } });
    await settled(page);
    const bottom = async (selector: string) =>
      (await page.locator(selector).first().boundingBox())?.y ?? Infinity;
    expect(await bottom(".figure .big")).toBeLessThan(740);
    expect(await bottom(".drawing.only-narrow")).toBeLessThan(740);
    expect(await bottom(".marks")).toBeLessThan(2 * 740);
    await page.context().close();
  });

  it("prints as it reads: every section, no buttons, black on white", { timeout: 60_000 }, async () => {
    const page = await site.visit(site.linkOf("ilvane-quistgard"), { colorScheme: "dark" });
    await settled(page);
    await page.emulateMedia({ media: "print" });
    const shown = (selector: string) => page.locator(selector).first().isVisible();
    expect(await Promise.all([".files", ".contents", ".siblings", "#device"].map(shown))).toEqual([
      false,
      false,
      false,
      false,
    ]);
    expect(await Promise.all(["#pacing-a", "#lifts-b", "#warm-up", "#care"].map(shown))).toEqual([
      true,
      true,
      true,
      true,
    ]);
    const colours = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.body);
      return [color, backgroundColor];
    });
    expect(colours).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
    await page.context().close();
  });
});
