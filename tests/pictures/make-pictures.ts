// Makes the pictures of README.md from the demonstration: `npm run pictures`.
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { serveFolder } from "../../src/site/serve-folder.ts";
import { openBrowser } from "../support/open-browser.ts";
import { pictureOf } from "../support/read-pdf.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const HERE = fileURLToPath(new URL(".", import.meta.url));
const OUT = ".rigsheet/pictures";
const DATE = "2026-11-26";

type Link = { readonly athlete: string; readonly workout: string; readonly link: string };

const command = (name: string, ...options: readonly string[]): string =>
  execFileSync("npm", ["run", "--silent", name, "--", "--date", DATE, ...options], {
    cwd: ROOT,
    encoding: "utf8",
  });

/** Few colours, so that a picture is small; the drawings are flat. */
const save = async (name: string, bytes: Uint8Array, width: number): Promise<void> => {
  const small = sharp(bytes).resize({ width, withoutEnlargement: true }).flatten({ background: "#fff" });
  writeFileSync(join(HERE, name), await small.png({ palette: true, colours: 32, effort: 10 }).toBuffer());
  console.log(`tests/pictures/${name}`);
};

async function shoot(browser: Browser, url: string, width: number, height: number): Promise<Uint8Array> {
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: 2 });
  await page.goto(url);
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  const bytes = await page.screenshot();
  await page.close();
  return bytes;
}

/** What a button of an opened brief saves. */
async function download(browser: Browser, url: string, label: RegExp): Promise<Uint8Array> {
  const page = await browser.newPage();
  await page.goto(url);
  await page.getByRole("heading", { level: 1 }).waitFor();
  // The other paper and the images stand in a fold.
  await page.locator("details").evaluateAll((folds) => {
    for (const fold of folds) fold.setAttribute("open", "");
  });
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page
      .getByRole("button", { name: label })
      .or(page.getByRole("link", { name: label }))
      .first()
      .click(),
  ]);
  const bytes = readFileSync(await file.path());
  await page.close();
  return bytes;
}

mkdirSync(join(ROOT, OUT), { recursive: true });
command("build", "--out", `${OUT}/site`);
const links = JSON.parse(command("links", "--json")) as readonly Link[];
const pathOf = (athlete: string, workout: string): string =>
  links.find((each) => each.athlete === athlete && each.workout === workout)?.link ?? "";
const { address, server } = await serveFolder(join(ROOT, OUT, "site"), "/", 0);
const browser = await openBrowser();
try {
  const brief = address + pathOf("zoe-quellmalz", "Lamp Oil");
  await save("brief-phone.png", await shoot(browser, brief, 390, 844), 390);
  await save("brief-desktop.png", await shoot(browser, brief, 1280, 900), 960);
  await save("board.png", await shoot(browser, address + pathOf("board", ""), 1280, 900), 960);
  await save("strategy.png", await shoot(browser, `${address}/strategy/lamp-oil/`, 1280, 900), 960);
  await save("sheet.png", await pictureOf(await download(browser, brief, /sheet.*A4/i), 80), 640);
  await save("card.png", await download(browser, brief, /card|image/i), 540);
} finally {
  await browser.close();
  server.close();
  rmSync(join(ROOT, OUT), { recursive: true, force: true });
}
