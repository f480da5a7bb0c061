import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import { type BarDay, barNow, type BarNow } from "../../src/live/bar-now.ts";
import type { LiftAgain } from "../../src/models/plan/lift-again.ts";
import { loadData } from "../../src/site/load-data.ts";
import { DAY, FIXTURE } from "../support/fixture-site.ts";
import { ROOT } from "../support/run-command.ts";
import { opened, serveSite, type ServedSite } from "../support/served-site.ts";

let site: ServedSite;
let page: Page;
let complaints: string[];
beforeAll(async () => {
  site = await serveSite();
}, 600_000);
afterAll(() => site.close());
afterEach(() => page.context().close());

/** When the athlete of these tests starts: 18:40 in Oslo. */
const START = Date.parse("2026-11-27T17:40:00Z");
const MINUTE = 60_000;

const shown = (selector = ".day-room"): Promise<string> => page.locator(selector).first().innerText();
const tap = (name: string | RegExp, exact = true): Promise<void> =>
  page.locator("dialog.day").getByRole("button", { name, exact }).click();
const wait = (seconds: number): Promise<void> => page.clock.runFor(seconds * 1000);

/** The brief opened and the day begun, so many minutes before the start. */
async function beginDay(minutesBefore: number): Promise<void> {
  page = await site.visit("about:blank", { viewport: { width: 360, height: 740 } });
  complaints = [];
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    if (!/^(data|blob|about):/.test(request.url()) && !request.url().startsWith(site.origin))
      complaints.push(request.url());
  });
  await page.clock.install({ time: START - minutesBefore * MINUTE });
  await page.goto(site.linkOf("ilvane-quistgard"));
  await opened(page);
  await page.getByText("This page is kept on this device, still locked").waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.locator("[data-day]").click();
  await page.locator("dialog.day .day-screen").waitFor();
}

/** Closes the page and opens it again, as after an empty battery. */
async function reload(): Promise<void> {
  await page.reload();
  await opened(page);
  await page.locator("[data-day]").click();
  await page.locator("dialog.day .day-screen").waitFor();
}

/** Bytes of the day as this device keeps it, sealed. */
const keptLength = (): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("rigsheet");
        opening.onerror = () => {
          reject(opening.error ?? new Error("no store"));
        };
        opening.onsuccess = () => {
          const reading = opening.result.transaction("days").objectStore("days").getAll();
          reading.onerror = () => {
            reject(reading.error ?? new Error("no answer"));
          };
          reading.onsuccess = () => {
            opening.result.close();
            const days = reading.result as { readonly bytes: ArrayBuffer }[];
            resolve(days.reduce((sum, { bytes }) => sum + bytes.byteLength, 0));
          };
        };
      }),
  );

/** A tap takes more bytes than any other reading of the clock. */
const A_TAP = 20;

/** Taps, and waits until that stands on the device: on a busy one a page closed at once would not have it yet. */
async function tapAndKeep(name: string): Promise<void> {
  const before = await keptLength();
  await tap(name);
  await expect.poll(keptLength, { timeout: 20_000 }).toBeGreaterThan(before + A_TAP);
}

/** What the bundle planned in the browser, planned again here from the same day: equal to the digit. */
async function sameAsInNode(): Promise<void> {
  const text = await page.locator("[data-at-bar]").getAttribute("data-at-bar");
  const { day, next } = JSON.parse(text ?? "{}") as { day: BarDay; next: BarNow };
  expect(inDigits(barNow(againInNode(), day))).toEqual(inDigits(next));
}

/** Numbers to twelve digits: the sixteenth of a power or a logarithm is not the same in every engine. */
const inDigits = (value: BarNow): unknown =>
  JSON.parse(JSON.stringify(value), (_, each: unknown) =>
    typeof each === "number" ? Number(each.toPrecision(12)) : each,
  );

/** What the attempts of the athlete of these tests are planned again from. */
function againInNode(): LiftAgain {
  const data = loadData({ root: ROOT, dataFolder: FIXTURE, audience: "everyone" });
  if (!data.ok) throw new Error("the data of the tests cannot be read");
  const athlete = data.value.athletes.find(({ id }) => id === "ilvane-quistgard");
  const workout = data.value.workouts.find(({ id }) => id === "gravel-bell");
  if (!athlete || !workout) throw new Error("nobody to plan for");
  const { parts } = makePlan({ athlete, workout, data: data.value, date: DAY });
  const again = parts.find(({ name }) => name === "b")?.lifting?.lifts[0]?.again;
  if (!again) throw new Error("nothing to plan again from");
  return again;
}

/** Seconds that a clock such as `1:05` shows. */
const secondsOf = (clock: string): number =>
  clock.split(":").reduce((sum, part) => 60 * sum + Number(part), 0);

describe("the day itself", { timeout: 120_000 }, () => {
  it("runs without network from the warm-up to the log, through reloads, a clock set back and a turned screen", async () => {
    await beginDay(21);
    await page.context().setOffline(true);
    await reload();
    await wait(1);
    expect(await shown(".day-before")).toMatch(/start in/);
    // The heat moves: two taps.
    await tap("Start 10 minutes later");
    await tap("Start 1 minute sooner");
    await wait(1);
    expect(secondsOf(await shown(".day-figure"))).toBeGreaterThan(29 * 60);
    expect(secondsOf(await shown(".day-figure"))).toBeLessThan(30 * 60);
    await tap("Go");
    await wait(60);
    await tap("round 1 done");
    await wait(30);
    const clock = secondsOf(await shown(".day-figure"));
    expect(clock).toBeGreaterThanOrEqual(89);
    await reload();
    await wait(5);
    expect(secondsOf(await shown(".day-figure")) - clock).toBeGreaterThanOrEqual(4);
    expect(secondsOf(await shown(".day-figure")) - clock).toBeLessThan(25);
    // Somebody sets the clock of the device back by an hour.
    const before = secondsOf(await shown(".day-figure"));
    await page.clock.setSystemTime(START - 90 * MINUTE);
    await wait(10);
    expect(secondsOf(await shown(".day-figure")) - before).toBeGreaterThanOrEqual(9);
    expect(secondsOf(await shown(".day-figure")) - before).toBeLessThan(20);
    await page.setViewportSize({ width: 740, height: 360 });
    await wait(5);
    expect(await shown()).toMatch(/round\s2 by/);
    for (const round of [2, 3]) {
      await wait(75);
      await tapAndKeep(`round ${round} done`);
    }
    await reload();
    await wait(75);
    await tap("Done");
    await wait(1);
    expect(await shown()).toMatch(/How was part A\?/);
    // The finger comes down twice: nothing was lifted yet, and nothing has ended.
    await page.locator("dialog.day").getByRole("button", { name: "harder than planned" }).dblclick();
    await wait(1);
    expect(await shown()).toMatch(/kg/);
    expect(await shown(".day-bar")).toMatch(/Undo answer/);
    await sameAsInNode();
    await wait(3);
    await tap("Made");
    await wait(1);
    await sameAsInNode();
    await wait(60);
    await tap("Missed");
    await wait(1);
    await sameAsInNode();
    await wait(60);
    await tap("Missed");
    await wait(6);
    expect(await shown()).toMatch(/Two misses: you are done/);
    expect(await page.locator("dialog.day .day-big:visible").count()).toBe(0);
    await tap("End part B");
    await wait(1);
    const log = await shown(".day-log pre");
    expect(log).toMatch(/workout: gravel-bell\n {4}part: a\n {4}date: 2026-11-2\d\n {4}time: /);
    expect(log).toMatch(/splits: \[1:0\d, /);
    expect(log).toMatch(/attempts: \[.*made.*missed.*missed/);
    expect(complaints.filter((text) => !text.startsWith("Failed to load resource: net::ERR_"))).toEqual([]);
  });

  it("ends with a stop sign, and nothing on that screen leads back into the work", async () => {
    await beginDay(1);
    await tap("Go");
    await wait(20);
    await tap("Stop sign");
    expect(await shown()).toMatch(/Stop\. The plan ends here\./);
    expect(await shown()).not.toMatch(/round|push|pace/i);
    expect(await page.locator("dialog.day .day-big").count()).toBe(0);
  });

  it("breaks nothing where taps are late, double or missed, and takes them back", async () => {
    await beginDay(1);
    await tap("Go");
    await wait(80);
    await tap("round 1 done");
    await tap("round 2 done");
    expect(await shown()).toMatch(/round\s2 by/);
    await tap("Undo round");
    expect(await shown()).toMatch(/round\s1 by/);
    // Nobody taps at the end of round 1; at the end of round 2 somebody does.
    await wait(100);
    await tap("round 1 done");
    expect(await shown()).toMatch(/round\s3 by/);
    await tap("Log");
    expect(await shown(".day-log pre")).toMatch(/splits: \["\?", 3:0\d\]/);
  });

  it("forgets what was tapped on demand", async () => {
    await beginDay(1);
    await tap("Go");
    await wait(20);
    await tap("Close");
    await page.getByRole("button", { name: "Forget this page on this device" }).click();
    await page.getByText("Forgotten").waitFor();
    await page.locator("[data-day]").click();
    await page.locator("dialog.day .day-before").waitFor();
  });

  it.each(["light", "dark"] as const)("has no barrier that a checker finds, %s", async (colorScheme) => {
    await beginDay(12);
    await page.emulateMedia({ colorScheme });
    const barriers = async (): Promise<readonly unknown[]> => {
      const { violations } = await new AxeBuilder({ page })
        .setLegacyMode(true)
        .include("dialog.day")
        .analyze();
      return violations.map(({ id, nodes }) => [id, nodes[0]?.html]);
    };
    await wait(1);
    expect(await barriers()).toEqual([]);
    await tap("Go");
    await wait(30);
    expect(await barriers()).toEqual([]);
    await tap("Log");
    expect(await barriers()).toEqual([]);
    for (const width of [320, 360, 740]) {
      await page.setViewportSize({ width, height: width === 740 ? 360 : 700 });
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
      ).toBeLessThanOrEqual(0);
    }
  });
});
