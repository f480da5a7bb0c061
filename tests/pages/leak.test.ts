import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findLeaks } from "../support/find-leaks.ts";
import { FIXTURE, fixtureLinks, fixtureSite } from "../support/fixture-site.ts";
import { personalWords } from "../support/personal-words.ts";
import { TEST_SECRET } from "../support/run-command.ts";

/** Words of a note that everybody uses stand on public pages too; only those of the fixture's canaries count. */
const COMMON = ["breathe", "cleared", "midwife", "canary"];
const words = personalWords(FIXTURE).filter((word) => !COMMON.includes(word.toLowerCase()));

describe("the words of the athletes", () => {
  it("are ids, names, parts of names, notes and loads", () => {
    for (const word of [
      "ilvane-quistgard",
      "Ilvane Quistgård",
      "Quistgård",
      "Ilvane Q.",
      "Zephyrine",
      "93.7 kg",
      "Marzipan",
      "Ñandúbay",
    ]) {
      expect(words).toContain(word);
    }
  });
});

describe("a built site", () => {
  let site = "";
  let planted = "";
  beforeAll(async () => {
    site = await fixtureSite();
    planted = mkdtempSync(join(tmpdir(), "rigsheet-"));
    cpSync(site, planted, { recursive: true });
  }, 600_000);
  afterAll(() => {
    rmSync(planted, { recursive: true, force: true });
  });

  it(
    "holds no word of any athlete in clear, in no file and no file's name",
    { timeout: 300_000 },
    async () => {
      expect(await findLeaks(site, words)).toEqual([]);
    },
  );

  it("holds neither the site secret nor the key of any link", { timeout: 300_000 }, async () => {
    const links = await fixtureLinks("http://localhost");
    const keys = links.map(({ link }) => link.split("#")[1] ?? "");
    expect(keys.every((key) => key.length === 55)).toBe(true);
    expect(await findLeaks(site, [TEST_SECRET, ...keys])).toEqual([]);
  });

  it.each([
    ["a file's name", "b/ilvane-quistgard.txt", Buffer.from("x")],
    ["plain text", "b/a.html", Buffer.from("<p>Vennemark</p>")],
    ["escaped HTML", "b/a.html", Buffer.from("<p>Quistg&#229;rd</p>")],
    ["an escaped script", "b/a.js", Buffer.from('"Tj\\u00f8stolv"')],
    ["a percent-encoded address", "b/a.html", Buffer.from('<a href="?q=Quistg%C3%A5rd">')],
    ["UTF-16", "b/a.bin", Buffer.from("Zephyrine", "utf16le")],
    [
      "base 64",
      "b/a.html",
      Buffer.from(Buffer.from("the note: Zephyrine canary and more").toString("base64")),
    ],
    [
      "a stream of a PDF",
      "b/a.pdf",
      Buffer.concat([Buffer.from("<< >>\nstream\n"), deflateSync("(Orsolo Vennemark) Tj")]),
    ],
    ["a source map", "_astro/a.js.map", Buffer.from('{"sources":["athletes/orsolo-venn.yaml"]}')],
    ["a load", "strategy/a.html", Buffer.from("best 93.7 kg")],
  ])("is searched so that one planted in %s is found", { timeout: 300_000 }, async (_where, file, bytes) => {
    const whole = join(planted, file);
    writeFileSync(whole, bytes);
    const leaks = await findLeaks(planted, words);
    rmSync(whole);
    expect([...new Set(leaks.map((leak) => leak.file))]).toEqual([file]);
  });

  it("is searched so that one planted in the text of a picture is found", { timeout: 300_000 }, async () => {
    const whole = join(planted, "b/a.png");
    await sharp({ create: { width: 4, height: 4, channels: 3, background: "#fff" } })
      .withExif({ IFD0: { ImageDescription: "Orsolo Vennemark" } })
      .png()
      .toFile(whole);
    const leaks = await findLeaks(planted, words);
    rmSync(whole);
    expect(leaks.map(({ file }) => file)).toContain("b/a.png");
  });
});
