import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MESSAGES } from "../../src/browser/messages.ts";
import { copyFixture, FIXTURE } from "../support/fixture-site.ts";
import { infoOf } from "../support/read-pdf.ts";
import { ROOT } from "../support/run-command.ts";
import { opened, serveSite, type ServedSite } from "../support/served-site.ts";

let site: ServedSite;
beforeAll(async () => {
  // The same data, with a passcode asked for, below a path of its host.
  const data = join(ROOT, ".rigsheet/test-passcode-data");
  if (!existsSync(data)) mkdirSync(data, { recursive: true });
  copyFixture(data);
  const settings = join(data, "content/settings.yaml");
  writeFileSync(settings, `${readFileSync(join(FIXTURE, "content/settings.yaml"), "utf8")}passcode: true\n`);
  // Two of the three are looked after together.
  for (const id of ["ilvane-quistgard", "orsolo-venn"]) {
    const file = join(data, `athletes/${id}.yaml`);
    writeFileSync(file, `${readFileSync(file, "utf8").trimEnd()}\ngroup: Early Birds\n`);
  }
  site = await serveSite({ name: "passcode", data, environment: { RIGSHEET_BASE: "/gym/briefs/" } });
}, 600_000);
afterAll(() => site.close());

const entry = () => {
  const found = site.links.find(({ athlete }) => athlete === "ilvane-quistgard");
  return { link: found?.link ?? "", passcode: found?.passcode ?? "" };
};

describe("a site with passcodes, below a path of its host", { timeout: 120_000 }, () => {
  it("stands below that path", () => {
    expect(new URL(entry().link).pathname).toMatch(/^\/gym\/briefs\/b\/[0-9A-Z]{16}\/$/);
    expect(entry().passcode).toMatch(/^[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}$/);
  });

  it("asks for the passcode, says when it is wrong, and opens with the right one", async () => {
    const page = await site.visit(entry().link);
    const field = page.getByLabel("Passcode");
    await field.waitFor();
    expect(await page.locator("#door-title").innerText()).toBe("Your passcode, please");
    expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
    await field.fill("AAAA-AAAA-AAAA");
    await page.keyboard.press("Enter");
    await page.locator('#door[data-trouble="wrong-passcode"]').waitFor();
    expect(await page.locator("#door-text").innerText()).toBe(MESSAGES["wrong-passcode"].text);
    await field.fill(entry().passcode.toLowerCase().replaceAll("-", " "));
    await page.getByRole("button", { name: "Open", exact: true }).click();
    await opened(page);
    expect(await page.locator("h1").innerText()).toBe("Gravel Bell");
  });

  it("gives the files as well, below the path", async () => {
    const page = await site.visit(entry().link);
    await page.getByLabel("Passcode").fill(entry().passcode);
    await page.keyboard.press("Enter");
    await opened(page);
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: "Sheet for the rig, A4" }).click();
    expect(
      readFileSync(await (await coming).path())
        .subarray(0, 5)
        .toString(),
    ).toBe("%PDF-");
  });

  it("does not ask for a passcode where the key is another page's", async () => {
    const other = site.links.find(({ athlete }) => athlete === "orsolo-venn")?.link.split("#")[1] ?? "";
    const page = await site.visit(`${entry().link.split("#")[0] ?? ""}#${other}`);
    await page.locator('#door[data-trouble="wrong-key"]').waitFor();
    expect(await page.getByLabel("Passcode").isVisible()).toBe(false);
  });

  it("asks no more on a device that was told to remember", async () => {
    const page = await site.visit(entry().link);
    await page.getByLabel("Passcode").fill(entry().passcode);
    await page.keyboard.press("Enter");
    await opened(page);
    await page.getByRole("button", { name: "Open without the key on this device" }).click();
    await page.getByText("For 45 days").waitFor();
    const again = await page.context().newPage();
    await again.goto(entry().link);
    await opened(again);
  });

  it("has another passcode for each reader, and one for each board", () => {
    const passcodes = new Map(site.links.map(({ athlete, passcode }) => [athlete, passcode]));
    // Three athletes, the board of everybody, and that of the group.
    expect(passcodes.size).toBe(5);
    expect(new Set(passcodes.values()).size).toBe(5);
  });

  it("has a board for a group, of its athletes alone, which opens their sheets with its own passcode", async () => {
    const own = site.links.find(({ athlete }) => athlete === "board of Early Birds");
    const page = await site.visit(own?.link ?? "");
    await page.getByLabel("Passcode").fill(own?.passcode ?? "");
    await page.keyboard.press("Enter");
    await opened(page);
    expect(await page.locator("h1").innerText()).toBe("The board of Early Birds");
    const names = await page.locator("#board-rows .name").allInnerTexts();
    expect(new Set(names)).toEqual(new Set(["Ilvane Quistgård", "Orsolo Vennemark"]));
    expect(await page.locator("#opened").innerHTML()).not.toContain("Tjøstolv");
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: "Sheets shown in one file, A4" }).click();
    expect(infoOf(readFileSync(await (await coming).path())).pages).toBe(4);
  });

  it("leads from the board of everybody to that of the group", async () => {
    const all = site.links.find(({ athlete }) => athlete === "board");
    const page = await site.visit(all?.link ?? "");
    await page.getByLabel("Passcode").fill(all?.passcode ?? "");
    await page.keyboard.press("Enter");
    await opened(page);
    await page.getByLabel("Group").selectOption("Early Birds");
    expect(await page.locator("#board-rows > li:visible").count()).toBe(4);
    const group = site.links.find(({ athlete }) => athlete === "board of Early Birds")?.link;
    await page.getByText("Boards of groups").click();
    expect(
      await page.getByRole("link", { name: "Early Birds" }).evaluate((link: HTMLAnchorElement) => link.href),
    ).toBe(group);
  });

  it("leads from its list of workouts to the strategy pages, below the path", async () => {
    const page = await site.visit(`${site.origin}/gym/briefs/`);
    await page.getByRole("link", { name: "Gravel Bell" }).click();
    const link = page.locator('a[href^="new-"]').first();
    await page.locator("details", { has: link }).first().locator("summary").first().click();
    await link.click();
    await page.locator("article.brief").waitFor();
    expect(new URL(page.url()).pathname).toMatch(/^\/gym\/briefs\/strategy\/gravel-bell\/new-/);
  });
});
