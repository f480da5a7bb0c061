import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { writeMade } from "../../src/site/made-files.ts";
import { settleTarget } from "../../src/site/settle-target.ts";

let folder = "";
beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), "rigsheet-")));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const at = (path: string) => join(folder, path);
function write(...paths: readonly string[]): void {
  for (const path of paths) {
    mkdirSync(dirname(at(path)), { recursive: true });
    writeFileSync(at(path), "x");
  }
}
const writeSite = (name: string) => {
  write(`${name}/b/sw.js`, `${name}/index.html`, `${name}/_headers`);
};
const settle = (path: string) => settleTarget(at(path), { root: at("tool"), dataFolder: at("data") });
const refusal = (path: string): string => {
  try {
    settle(path);
    return "";
  } catch (error) {
    return error instanceof Error ? error.message : "";
  }
};

describe("the folder a site is put into", () => {
  it("may be missing with those around it, empty, an earlier site, or one somebody looked into", () => {
    expect(settle("new/deep/dist")).toBe(at("new/deep/dist"));
    expect(readdirSync(at("new/deep"))).toEqual([]);
    mkdirSync(at("empty"));
    expect(settle("empty")).toBe(at("empty"));
    writeSite("dist");
    write("dist/.DS_Store");
    expect(settle("dist")).toBe(at("dist"));
  });

  it("may lie in the data folder and in that of the tool", () => {
    write("data/athletes/ana.yaml", "tool/package.json");
    expect([settle("data/dist"), settle("tool/dist")]).toEqual([at("data/dist"), at("tool/dist")]);
  });

  it("is never one with files of somebody else, though it holds a site too", () => {
    write("photos/1.jpg", "photos/2.jpg", "photos/3.jpg", "photos/4.jpg", "photos/5.jpg");
    expect(refusal("photos")).toBe(
      `${at("photos")} holds what no build put there and what would be lost: 1.jpg, 2.jpg, 3.jpg and 2 more. Move it elsewhere, or name another folder with --out.`,
    );
    writeSite("dist");
    write("dist/CNAME");
    expect(refusal("dist")).toContain("would be lost: CNAME. Move it");
    expect(readdirSync(at("photos"))).toHaveLength(5);
  });

  it.each([
    "strategy/notes.txt",
    "strategy/weir/plan.docx",
    "b/mine.txt",
    "b/0123456789ABCDEF/photo.jpg",
    "_astro/logo.svg",
    "_astro/theme.css",
    "b/.well-known/a",
    "strategy/drafts/",
  ])("is never one with a file of somebody else's deep inside: %s", (own) => {
    for (const list of [false, true]) {
      writeSite("dist");
      if (list) writeMade(at("tool"), at("dist"), ["b/sw.js", "index.html", "_headers"]);
      if (own.endsWith("/")) mkdirSync(at(`dist/${own}`), { recursive: true });
      else write(`dist/${own}`);
      expect(refusal("dist")).toBe(
        `${at("dist")} holds what no build put there and what would be lost: ${own}. Move it elsewhere, or name another folder with --out.`,
      );
    }
  });

  it("goes by the list of what was written, where there is one", () => {
    writeSite("dist");
    write("dist/robots.txt");
    expect(settle("dist")).toBe(at("dist"));
    writeMade(at("tool"), at("dist"), ["b/sw.js", "index.html", "_headers"]);
    expect(refusal("dist")).toContain("would be lost: robots.txt. Move it");
    writeMade(at("tool"), at("dist"), ["b/sw.js", "index.html", "_headers", "robots.txt"]);
    expect(settle("dist")).toBe(at("dist"));
  });

  it("is not a site that was made by something else", () => {
    write("other/index.html", "other/404.html");
    expect(refusal("other")).toContain("would be lost: 404.html, index.html.");
  });

  it("is not a file, nor a folder that holds the data or the tool", () => {
    write("file", "data/content/settings.yaml", "tool/package.json");
    expect(refusal("file")).toBe(`${at("file")} is a file. Name a folder for the site with --out.`);
    for (const [path, inside] of [
      ["data", "data"],
      ["", "tool"],
    ] as const) {
      expect(refusal(path)).toBe(
        `The site would take the place of ${at(path).replace(/\/$/, "")}, which holds ${at(inside)}. Name a folder of its own with --out.`,
      );
    }
  });

  it("is where a link on the disk leads, whether it is there yet or not", () => {
    writeSite("www/gym");
    symlinkSync(at("www/gym"), at("dist"));
    symlinkSync("www/later", at("next"));
    expect([settle("dist"), settle("next")]).toEqual([at("www/gym"), at("www/later")]);
    symlinkSync(at("www"), at("out"));
    expect(settle("out/third")).toBe(at("www/third"));
  });

  it("is put right where a replacement was killed halfway, at the end of a link too", () => {
    writeSite("www/.rigsheet-gym-old");
    symlinkSync(at("www/gym"), at("dist"));
    expect(settle("dist")).toBe(at("www/gym"));
    expect(readdirSync(at("www"))).toEqual(["gym"]);
  });
});
