import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { infoOf, textOf } from "../support/read-pdf.ts";
import { opened, serveSite, type ServedSite } from "../support/served-site.ts";

let site: ServedSite;
let board: Page;
beforeAll(async () => {
  site = await serveSite();
  board = await site.visit(site.linkOf("board"), {
    permissions: ["clipboard-read", "clipboard-write"],
    serviceWorkers: "block",
  });
  await opened(board);
}, 600_000);
afterAll(() => site.close());

/** Whose rows are shown, in their order, each with the first word of the workout. */
const shown = (): Promise<readonly string[]> =>
  board
    .locator("#board-rows > li:visible")
    .evaluateAll((rows) =>
      rows.map((row) =>
        [
          row.querySelector(".name")?.textContent.trim().split(" ")[0],
          row.getAttribute("data-workout")?.split("-")[0],
        ].join(" "),
      ),
    );
const set = (field: string, value: string): Promise<unknown> =>
  board.locator(`#board-tools [name=${field}]`).selectOption(value);
const find = (text: string): Promise<void> => board.getByLabel("Find").fill(text);
const status = (): Promise<string> => board.locator("#board-status").innerText();

describe("the board", { timeout: 60_000 }, () => {
  it("shows who starts first first, and by name on demand", async () => {
    // One start is known, of Ilvane's in Gravel Bell; all others come after it, by name.
    expect(await shown()).toEqual([
      "Ilvane gravel",
      "Ilvane slow",
      "Orsolo gravel",
      "Orsolo slow",
      "Tjøstolv gravel",
      "Tjøstolv slow",
    ]);
    await set("order", "name");
    expect((await shown())[0]).toMatch(/^Ilvane/);
    await set("order", "start");
    expect((await shown())[0]).toBe("Ilvane gravel");
  });

  it("finds names without capitals and marks, and several between commas", async () => {
    await find("tjostolv");
    expect(await shown()).toEqual(["Tjøstolv gravel", "Tjøstolv slow"]);
    expect(await status()).toBe("2 of 6 briefs");
    await find("quistgard, vennemark");
    expect(await shown()).toHaveLength(4);
    await find("nobody of this name");
    expect(await shown()).toEqual([]);
    expect(await status()).toBe("0 of 6 briefs");
    await find("");
    expect(await shown()).toHaveLength(6);
  });

  it("shows one workout, or what something is withheld of, or both", async () => {
    await set("workout", "slow-lighthouse");
    expect(await shown()).toEqual(["Ilvane slow", "Orsolo slow", "Tjøstolv slow"]);
    await set("flag", "withheld");
    // Orsolo's file states a limit.
    expect(await shown()).toEqual(["Orsolo slow"]);
    await set("workout", "");
    await set("flag", "");
  });

  it("copies the messages of the rows shown, each with its whole link", async () => {
    await find("vennemark");
    await board.getByRole("button", { name: "Copy the messages shown" }).click();
    await board.getByText("2 messages copied.").waitFor();
    const copied = await board.evaluate(() => navigator.clipboard.readText());
    for (const { link } of site.links.filter(({ athlete }) => athlete === "orsolo-venn"))
      expect(copied).toContain(link);
    await find("");
  });

  it("puts the sheets shown into one file, in start order", async () => {
    await set("workout", "gravel-bell");
    const coming = board.waitForEvent("download");
    await board.getByRole("button", { name: "Sheets shown in one file, A4" }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe("gravel-bell-sheets-a4.pdf");
    const pdf = readFileSync(await download.path());
    expect(infoOf(pdf)).toMatchObject({ pages: 3, size: [595, 842] });
    expect(textOf(pdf)).toContain("Ilvane Quistgård");
    expect(await status()).toBe("gravel-bell-sheets-a4.pdf is ready: 3 sheets, in the order shown.");
    await set("workout", "");
  });

  it("saves the sheet of one row, on the paper of its reader", async () => {
    const coming = board.waitForEvent("download");
    await board.getByRole("button", { name: "Sheet of Orsolo Vennemark" }).first().click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe("gravel-bell-sheet-a4.pdf");
    expect(infoOf(readFileSync(await download.path()))).toMatchObject({ pages: 1, size: [595, 842] });
    await board.getByText("gravel-bell-sheet-a4.pdf is ready: the sheet of Orsolo Vennemark.").waitFor();
  });

  it("shows one level or one gym, and what starts at no known time", async () => {
    for (const [field, value, wanted] of [
      ["flag", "no-start", 5],
      ["flag", "to-send", 6],
      ["flag", "not-planned", 0],
    ] as const) {
      await set(field, value);
      expect([value, (await shown()).length]).toEqual([value, wanted]);
      await set(field, "");
    }
    for (const field of ["level", "division", "start"]) {
      const options = await board
        .locator(`#board-tools [name=${field}] option`)
        .evaluateAll((all) => all.map((option) => (option as HTMLOptionElement).value));
      const counts: number[] = [];
      for (const value of options.filter((one) => one !== "")) {
        await set(field, value);
        counts.push((await shown()).length);
      }
      if (options.length > 0) await set(field, "");
      // Every brief has one level, one division and one start or none: the choices part them.
      if (field !== "start" && options.length > 0) expect(counts.reduce((a, b) => a + b, 0)).toBe(6);
      expect(counts.every((count) => count > 0)).toBe(true);
    }
  });

  it("names those whose sheets could not be fetched", async () => {
    await board.route(new RegExp(`${new URL(site.linkOf("orsolo-venn")).pathname}sheet-letter`), (route) =>
      route.abort(),
    );
    const coming = board.waitForEvent("download");
    await board.getByRole("button", { name: "Letter sheets shown in one file" }).click();
    expect(infoOf(readFileSync(await (await coming).path()))).toMatchObject({ pages: 5, size: [612, 792] });
    await board.getByText("5 sheets, in the order shown. Not in it: Orsolo Vennemark.").waitFor();
  });

  it("can be worked with the keyboard alone", async () => {
    await board.getByLabel("Find").focus();
    await board.keyboard.type("ilvane");
    expect(await shown()).toHaveLength(2);
    await board.keyboard.press("Tab");
    expect(await board.evaluate(() => (document.activeElement as HTMLSelectElement).name)).toBe("workout");
    await board.keyboard.press("ArrowDown");
    expect(await shown()).toHaveLength(1);
    const copy = board.getByRole("button", { name: "Copy link of Ilvane Quistgård" });
    for (
      let step = 0;
      step < 30 && !(await copy.evaluate((element) => element === document.activeElement));
      step++
    )
      await board.keyboard.press("Tab");
    await board.keyboard.press("Enter");
    await board.getByText("Copied.").waitFor();
    expect(site.links.map(({ link }) => link)).toContain(
      await board.evaluate(() => navigator.clipboard.readText()),
    );
  });
});
