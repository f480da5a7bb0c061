import { beforeAll, describe, expect, it } from "vitest";
import { findLeaks } from "../support/find-leaks.ts";
import { FIXTURE, fixtureSite } from "../support/fixture-site.ts";
import { personalWords } from "../support/personal-words.ts";
import { filesBelow } from "../support/source-files.ts";

describe("a site for the gym alone", () => {
  let site = "";
  beforeAll(async () => {
    site = await fixtureSite({ name: "gym", arguments: ["--audience", "gym"] });
  }, 600_000);

  it("holds the strategy pages with their files and no locked page", () => {
    const files = filesBelow(site);
    expect(files.filter((file) => /^strategy\/[^/]+\/index\.html$/.test(file))).toHaveLength(2);
    expect(files.filter((file) => file.endsWith(".pdf"))).toHaveLength(2 * 8 * 2);
    expect(files.filter((file) => file.startsWith("b/") && file !== "b/sw.js")).toEqual([]);
  });

  it("holds nothing of any athlete", { timeout: 120_000 }, async () => {
    const words = personalWords(FIXTURE).filter((word) => /[^a-z]/.test(word));
    expect(await findLeaks(site, words)).toEqual([]);
  });
});
