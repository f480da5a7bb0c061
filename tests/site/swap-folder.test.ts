import { spawnSync } from "node:child_process";
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
import { ROOT } from "../support/run-command.ts";

const KILLED_SWAP = join(ROOT, "tests/support/killed-swap.ts");

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

  it("is cleared where a copy to another disk was not whole, and never becomes the site", () => {
    make(".rigsheet-dist-copy", "half");
    expect(recoverSwap(target())).toBe(true);
    expect(readdirSync(folder)).toEqual([]);
  });

  it.each(["", "--across"])(
    "is the old or the new site, whole, whichever change on the disk it was killed before %s",
    (across) => {
      const seen: string[] = [];
      for (let at = 0; seen.at(-1) !== "ended"; at++) {
        for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
        make("dist", "old");
        make("build", "new");
        const { signal } = spawnSync(process.execPath, [KILLED_SWAP, folder, String(at), across]);
        recoverSwap(target());
        seen.push(signal === null ? "ended" : shown());
        expect(readdirSync(target())).toEqual(["index.html"]);
        expect(readdirSync(folder).filter((name) => name !== "build")).toEqual(["dist"]);
      }
      expect(new Set(seen)).toEqual(new Set(["old", "new", "ended"]));
      expect(seen.indexOf("new")).toBeGreaterThan(seen.lastIndexOf("old"));
    },
  );

  it("is nothing where nothing was ever built", () => {
    expect(recoverSwap(target())).toBe(false);
    expect(existsSync(target())).toBe(false);
  });
});
