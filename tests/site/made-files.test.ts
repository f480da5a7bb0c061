import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { allInside, readMade, writeMade } from "../../src/site/made-files.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe("the list of what a build wrote", () => {
  it("is read as it was written, for each folder alone", () => {
    const [one, other] = [join(folder, "one"), join(folder, "other")];
    mkdirSync(one);
    mkdirSync(other);
    expect(readMade(folder, one)).toBeUndefined();
    writeMade(folder, one, ["b/sw.js", "index.html"]);
    writeMade(folder, other, ["404.html"]);
    expect(readMade(folder, one)).toEqual(new Set(["b/sw.js", "index.html"]));
    expect(readMade(folder, other)).toEqual(new Set(["404.html"]));
  });

  it("is forgotten when its folder is gone", () => {
    writeMade(folder, join(folder, "gone"), ["a"]);
    writeMade(folder, folder, ["a"]);
    expect(readdirSync(join(folder, ".rigsheet/made"))).toHaveLength(1);
    expect(existsSync(join(folder, "gone"))).toBe(false);
  });
});

it("a folder is listed with everything in it, empty folders too", () => {
  mkdirSync(join(folder, "a/b/c"), { recursive: true });
  mkdirSync(join(folder, "a/d"), { recursive: true });
  writeFileSync(join(folder, "a/b/.x"), "");
  expect([...allInside(folder)].sort()).toEqual(["a/b/.x", "a/b/c/", "a/d/"]);
});
