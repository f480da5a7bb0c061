import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { recoverSwap, swapFolder } from "../../src/site/swap-folder.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const target = () => join(folder, "dist");
function make(name: string, text: string): string {
  mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, name, "index.html"), text);
  return join(folder, name);
}
const shown = () => readFileSync(join(target(), "index.html"), "utf8");

describe("putting a finished folder in another's place", () => {
  it("works where there was none, and where there was one", () => {
    swapFolder(make("build", "one"), target());
    expect(shown()).toBe("one");
    swapFolder(make("build", "two"), target());
    expect(shown()).toBe("two");
    expect(readdirSync(folder)).toEqual(["dist"]);
  });

  it("leaves nothing of the old one behind", () => {
    make("dist", "old");
    writeFileSync(join(target(), "old.html"), "old");
    swapFolder(make("build", "new"), target());
    expect(readdirSync(target())).toEqual(["index.html"]);
  });
});

describe("what a killed replacement left", () => {
  it("is nothing after one that ended", () => {
    swapFolder(make("build", "one"), target());
    expect(recoverSwap(target())).toBe(false);
    expect(shown()).toBe("one");
  });

  it("is cleared where the new folder stood beside and the old one was not yet moved", () => {
    make("dist", "old");
    make(".rigsheet-dist-new", "half");
    expect(recoverSwap(target())).toBe(true);
    expect(shown()).toBe("old");
    expect(readdirSync(folder)).toEqual(["dist"]);
  });

  it("is finished where the old one was moved and the new one stood ready", () => {
    make("dist", "old");
    renameSync(target(), join(folder, ".rigsheet-dist-old"));
    make(".rigsheet-dist-new", "new");
    expect(recoverSwap(target())).toBe(true);
    expect(shown()).toBe("new");
    expect(readdirSync(folder)).toEqual(["dist"]);
  });

  it("is cleared where only the old one was not yet deleted", () => {
    make("dist", "new");
    make(".rigsheet-dist-old", "old");
    recoverSwap(target());
    expect(shown()).toBe("new");
    expect(readdirSync(folder)).toEqual(["dist"]);
  });

  it("is put back where there is only the old one", () => {
    make(".rigsheet-dist-old", "old");
    recoverSwap(target());
    expect(shown()).toBe("old");
  });

  it("is nothing where nothing was ever built", () => {
    expect(recoverSwap(target())).toBe(false);
    expect(existsSync(target())).toBe(false);
  });
});
