import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MESSAGES } from "../../src/browser/messages.ts";
import { opened, serveSite, type ServedSite } from "../support/served-site.ts";

let site: ServedSite;
beforeAll(async () => {
  site = await serveSite();
}, 600_000);
afterAll(() => site.close());

describe("a brief that was opened once", { timeout: 60_000 }, () => {
  it("opens without network, with its letters, and so do files that were saved", async () => {
    const link = site.linkOf("ilvane-quistgard");
    const page = await site.visit(link);
    await opened(page);
    await page.getByText("This page is kept on this device, still locked").waitFor();
    const saved = page.waitForEvent("download");
    await page.getByRole("button", { name: "Sheet for the rig, A4" }).click();
    await saved;
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.context().setOffline(true);
    const again = await page.context().newPage();
    await again.goto(link);
    await opened(again);
    expect(await again.locator("h1").innerText()).toBe("Gravel Bell");
    // A check of fonts is content where no style names any, so the style comes first.
    expect(await again.evaluate(() => document.styleSheets.length)).toBeGreaterThan(0);
    const letters = () => [...document.fonts].filter(({ status }) => status === "loaded").length;
    await again.evaluate(() => document.fonts.ready.then(() => undefined));
    expect(await again.evaluate(letters)).toBeGreaterThanOrEqual(2);
    const fromStore = again.waitForEvent("download");
    await again.getByRole("button", { name: "Sheet for the rig, A4" }).click();
    await fromStore;
    await again.getByText("Other paper, images to share").click();
    await again.getByRole("button", { name: "Sheet for the rig, Letter" }).click();
    await again.getByText(MESSAGES["no-network"].title).waitFor();
    await again.goto(site.linkOf("orsolo-venn"));
    expect(await again.locator("body").innerText()).toBe(
      "There is no network\n\nThis page is not kept on this device, because it was not opened here before. Your link is fine: open it again once you have a network.",
    );
    await page.context().close();
  });

  it("keeps only what the host sent", async () => {
    const page = await site.visit(site.linkOf("ilvane-quistgard"));
    await opened(page);
    await page.getByText("This page is kept on this device, still locked").waitFor();
    const kept = await page.evaluate(async () => {
      const store = await caches.open("rigsheet-locked-1");
      return (await store.keys()).map(({ url }) => new URL(url).pathname + new URL(url).hash);
    });
    expect(
      kept.every((path) => /^\/(b\/[0-9A-Z]{16}\/(day\.bin)?|_astro\/[^/]+\.(css|js|woff2))$/.test(path)),
    ).toBe(true);
    // The page, and what its day is run from.
    expect(kept.filter((path) => path.startsWith("/b/"))).toHaveLength(2);
    await page.context().close();
  });
});
