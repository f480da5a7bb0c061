import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { afterAll, describe, expect, test } from "vitest";
import { findLeaks } from "../support/find-leaks.ts";
import { fixtureSite } from "../support/fixture-site.ts";

// Names, ids, lifts nobody else has, and words of the notes, from tests/fixtures/site/athletes.
const PRIVATE = [
  "Ilvane",
  "Quistg",
  "ilvane-quistgard",
  "Orsolo",
  "Vennemark",
  "Tjøstolv",
  "tjostolv",
  "Ñandúbay",
  "Щерба",
  "Zephyrine",
  "Marzipan",
  // With the unit, plain or held by a no-break space: the figures alone are also places on a drawing.
  ...["78.9", "93.7", "63.9", "52.9"].flatMap((figure) => [`${figure} kg`, `${figure}\u00a0kg`]),
];

describe("a built site", { timeout: 300_000 }, () => {
  const copies: string[] = [];
  afterAll(() => {
    for (const copy of copies) rmSync(copy, { recursive: true, force: true });
  });
  const copyOf = (site: string): string => {
    const copy = mkdtempSync(join(tmpdir(), "leaks-"));
    copies.push(copy);
    cpSync(site, copy, { recursive: true });
    return copy;
  };

  test("holds nothing of any athlete that can be read without a link", async () => {
    expect(findLeaks(await fixtureSite(), PRIVATE)).toEqual([]);
  });

  test("is found out when a word is planted: in a page, as an escape, in a stream of a PDF, in a name", async () => {
    const site = copyOf(await fixtureSite());
    writeFileSync(join(site, "page.html"), "<p>For orsolo</p>");
    writeFileSync(join(site, "data.js"), '"Tj\\u00f8stolv"');
    writeFileSync(
      join(site, "sheet.pdf"),
      Buffer.concat([Buffer.from("%PDF-1.7 stream\n"), deflateSync("(Zephyrine canary) Tj")]),
    );
    writeFileSync(join(site, "ilvane-quistgard.txt"), "");
    const found = findLeaks(site, PRIVATE).map(({ path, where, word }) => `${path} ${where} ${word}`);
    expect(found).toEqual(
      expect.arrayContaining([
        "page.html bytes Orsolo",
        "data.js bytes Tjøstolv",
        "sheet.pdf stream Zephyrine",
        "ilvane-quistgard.txt name ilvane-quistgard",
      ]),
    );
  });

  test("for the gym alone is built without the athletes being there at all", async () => {
    const site = await fixtureSite({ name: "gym", arguments: ["--audience", "gym"] });
    expect(findLeaks(site, PRIVATE)).toEqual([]);
    expect(findLeaks(site, [".bin"]).filter(({ where }) => where === "name")).toEqual([]);
  });
});
