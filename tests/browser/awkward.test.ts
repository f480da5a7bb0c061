import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { infoOf, textOf } from "../support/read-pdf.ts";
import { ROOT } from "../support/run-command.ts";
import { opened, serveSite, type ServedSite } from "../support/served-site.ts";

// Somebody with a name of 65 letters in three scripts of whom nothing else is known, and twenty rounds of long movements.
let site: ServedSite;
let brief: Page;
beforeAll(async () => {
  site = await serveSite({ name: "awkward", data: join(ROOT, "tests/fixtures/awkward") });
  brief = await site.visit(site.linkOf("long-name"));
  await opened(brief);
}, 600_000);
afterAll(() => site.close());

/** Pixels by which a page is wider than the screen, by width. */
async function overAt(page: Page): Promise<Readonly<Record<number, number>>> {
  const over: Record<number, number> = {};
  for (const width of [320, 390, 768, 1440]) {
    await page.setViewportSize({ width, height: 800 });
    over[width] = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  }
  return over;
}

const NOWHERE = { 320: 0, 390: 0, 768: 0, 1440: 0 };

describe("a long name, twenty rounds and nothing known", () => {
  it("fit every screen, on the brief, the board and the strategy page", async () => {
    expect(await overAt(brief)).toEqual(NOWHERE);
    const board = await site.visit(site.linkOf("board"));
    await opened(board);
    expect(await overAt(board)).toEqual(NOWHERE);
    expect(await overAt(await site.visit(`${site.origin}/strategy/twenty-rounds/`))).toEqual(NOWHERE);
  });

  it("are told whole: the name, and a clock for every twentieth part of the work", async () => {
    const text = (await brief.locator("#opened main").innerText()).replace(/\s+/g, " ");
    expect(text).toContain("Αλεξάνδρα-Нгуен Wolkenschieberowska von und zu Đặng Thị Tháng-Bảy-Łódź");
    for (let round = 1; round <= 20; round += 1) expect(text).toMatch(new RegExp(`round ${round}\\b`, "i"));
  });

  it("break no clock over two lines, past the hour neither", async () => {
    const broken: string[] = [];
    for (const width of [320, 390, 1280]) {
      await brief.setViewportSize({ width, height: 800 });
      broken.push(
        ...(await brief.locator(".marks .clock").evaluateAll((clocks) =>
          clocks
            .filter((clock) => {
              const line = parseFloat(getComputedStyle(clock).lineHeight);
              return (
                clock.getBoundingClientRect().height > 1.5 * line || clock.scrollWidth > clock.clientWidth
              );
            })
            .map((clock) => clock.textContent),
        )),
      );
    }
    expect(broken).toEqual([]);
  });

  it("print with all that is needed during the work on the first page", async () => {
    const pdf = await brief.pdf({ format: "A4" });
    const first = textOf(pdf);
    const goal = (await brief.locator("#opened main").innerText()).match(/\d+:\d\d/)?.[0] ?? "none";
    expect(first).toContain(goal);
    expect(first).toMatch(/toes-to-bar/i);
    // The glance has a page of its own, and what explains it is not longer than a booklet.
    expect(first).not.toMatch(/take care/i);
    const pages = infoOf(pdf).pages;
    expect(pages).toBeGreaterThan(1);
    expect(pages).toBeLessThanOrEqual(12);
  });
});
