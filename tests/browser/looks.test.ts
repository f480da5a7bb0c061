import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveSite, type ServedSite } from "../support/served-site.ts";

const WIDTHS = [320, 360, 390, 768, 1024, 1280, 1440];
/** Widths at which a page is laid out differently: a checker of barriers reads each once in each theme. */
const LAYOUTS = [360, 1280];
const THEMES = ["light", "dark"] as const;
/** The rules of the checker that look at colours. */
const COLOUR_RULES = ["color-contrast", "link-in-text-block"];
let site: ServedSite;
beforeAll(async () => {
  site = await serveSite();
}, 600_000);
afterAll(() => site.close());

const PAGES: Readonly<Record<string, () => string>> = {
  "a brief": () => site.linkOf("ilvane-quistgard"),
  "a brief of somebody hardly known": () => site.linkOf("tjostolv-nandubay"),
  "a brief with something withheld": () => site.linkOf("orsolo-venn"),
  "the board": () => site.linkOf("board"),
  "a strategy page": () => `${site.origin}/strategy/gravel-bell/`,
  "a page of a band": () => `${site.origin}/strategy/gravel-bell/new-men/`,
  "the list of workouts": () => `${site.origin}/`,
  "a door that stays shut": () => site.linkOf("ilvane-quistgard").split("#")[0] ?? "",
  "a page that is not there": () => `${site.origin}/nowhere/`,
};

/**
 * What a checker finds that is serious or worse. Pages hold no frames, so it need not gather from several, which takes
 * most of its time; nor does it need to say where in the page each thing stands that is right.
 */
const barriersOf = async (page: Page, theme: (typeof THEMES)[number]): Promise<readonly unknown[]> => {
  const checker = new AxeBuilder({ page })
    .setLegacyMode(true)
    .options({ resultTypes: ["violations"], selectors: false });
  // The themes differ in colours alone, so what looks at no colour is asked once.
  const { violations } = await (theme === "dark" ? checker.withRules(COLOUR_RULES) : checker).analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => [id, nodes[0]?.html]);
};

async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const door = document.getElementById("door");
    return !door || door.dataset["trouble"] !== undefined;
  });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** Everything a page says against its policy, throws, or asks of others, from its first byte on. */
function complaintsOf(page: Page): readonly string[] {
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
  return complaints;
}

// Each page is opened once, in a context that knows nothing yet, and then looked at in every width and theme.
describe.each(Object.entries(PAGES))("%s", (_what, addressOf) => {
  let page: Page;
  let complaints: readonly string[];
  beforeAll(async () => {
    const context = await site.browser.newContext({ viewport: { width: 390, height: 844 } });
    page = await context.newPage();
    complaints = complaintsOf(page);
    await page.goto(addressOf());
    await settled(page);
    // What is folded away is read as much as what is not.
    await page.locator("details").evaluateAll((folds) => {
      for (const fold of folds) fold.setAttribute("open", "");
    });
  }, 60_000);
  afterAll(() => page.context().close());

  it("breaks no rule of its content policy, throws nothing, and asks no other host", () => {
    expect(complaints).toEqual([]);
  });

  it("is never wider than the screen, from 320 to 1440 pixels", { timeout: 60_000 }, async () => {
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect([width, over]).toEqual([width, 0]);
    }
  });

  it.each(THEMES)(
    "has no barrier that a checker finds, in the %s theme",
    { timeout: 60_000 },
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      for (const width of LAYOUTS) {
        await page.setViewportSize({ width, height: 800 });
        expect([width, ...(await barriersOf(page, colorScheme))]).toEqual([width]);
      }
    },
  );
});

describe("a brief", () => {
  let page: Page;
  beforeAll(async () => {
    page = await site.visit(site.linkOf("ilvane-quistgard"), { colorScheme: "dark" });
    await settled(page);
  }, 60_000);
  afterAll(() => page.context().close());

  it("can be read and used with the keyboard alone", { timeout: 60_000 }, async () => {
    const wanted = await page.evaluate(
      () =>
        [...document.querySelectorAll<HTMLElement>("a[href], button, input, summary, [tabindex='0']")].filter(
          (element) => element.checkVisibility(),
        ).length,
    );
    const reached = new Set<string>();
    const outlines = new Set<string>();
    for (let step = 0; step < wanted; step++) {
      await page.keyboard.press("Tab");
      const [what, outline] = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const at = element.getBoundingClientRect();
        const style = getComputedStyle(element);
        return [
          `${element.tagName} ${element.textContent.trim().slice(0, 30)} ${Math.round(at.left)} ${Math.round(at.top + scrollY)}`,
          `${style.outlineStyle} ${Number.parseFloat(style.outlineWidth) >= 2 ? "wide" : "thin"}`,
        ] as const;
      });
      reached.add(what);
      outlines.add(outline);
    }
    // One stop for each thing that can be used, each with an outline around it that can be seen.
    expect(reached.size).toBe(wanted);
    expect([...outlines]).toEqual(["solid wide"]);
    for (const start of [
      "A Slow Lighthouse",
      "BUTTON Sheet for the rig, A4",
      "A Warm-up",
      "SUMMARY Pacing in detail",
    ])
      expect([...reached].some((what) => what.startsWith(start))).toBe(true);
  });

  it("goes to a section without losing the key from its address", { timeout: 60_000 }, async () => {
    const link = site.linkOf("ilvane-quistgard");
    await page.getByRole("link", { name: "Warm-up", exact: true }).focus();
    await page.keyboard.press("Enter");
    expect(page.url()).toBe(link);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("warm-up");
  });

  it("opens a folded section for who goes to it", { timeout: 60_000 }, async () => {
    const fold = page.locator("details:has(> #set-up)");
    expect(await fold.evaluate((element: HTMLDetailsElement) => element.open)).toBe(false);
    await page.getByRole("link", { name: "Set up", exact: true }).click();
    expect(await fold.evaluate((element: HTMLDetailsElement) => element.open)).toBe(true);
  });

  it("keeps its contents on the screen, with a way back up", { timeout: 60_000 }, async () => {
    await page.evaluate(() => {
      scrollTo(0, document.body.scrollHeight);
    });
    const top = page.getByRole("link", { name: "Top" });
    expect((await top.boundingBox())?.y).toBeLessThan(60);
    await top.click();
    await page.waitForFunction(() => scrollY < 100);
  });

  it("is at most ten screens of a phone long while folded", { timeout: 60_000 }, async () => {
    const fresh = await site.visit(site.linkOf("ilvane-quistgard"));
    await settled(fresh);
    await fresh.setViewportSize({ width: 390, height: 844 });
    expect(await fresh.evaluate(() => document.documentElement.scrollHeight / 844)).toBeLessThan(10);
    await fresh.context().close();
  });

  it("says masses in the other unit beside, and takes that back", { timeout: 60_000 }, async () => {
    const button = page.getByRole("button", { name: /beside/ });
    await button.click();
    expect(await page.locator(".other-unit").count()).toBeGreaterThan(3);
    expect(await button.getAttribute("aria-pressed")).toBe("true");
    await button.click();
    expect(await page.locator(".other-unit").count()).toBe(0);
  });

  it("shows the plan within the first two screens of a phone", { timeout: 60_000 }, async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.evaluate(() => {
      scrollTo(0, 0);
    });
    const top = async (selector: string) =>
      (await page.locator(selector).first().boundingBox())?.y ?? Infinity;
    expect(await top(".figure .big")).toBeLessThan(740);
    expect(await top(".drawing.only-narrow")).toBeLessThan(740);
    expect(await top(".marks")).toBeLessThan(2 * 740);
  });

  it("prints as it reads: every section, no buttons, black on white", { timeout: 60_000 }, async () => {
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
  });
});
