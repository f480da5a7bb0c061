import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import {
  readLinkVersions,
  revokeGroup,
  revokeLinks,
  versionOf,
  versionOfGroup,
} from "../../src/site/link-versions.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe("link versions", () => {
  it("are 1 for everyone at first", () => {
    expect(versionOf(readLinkVersions(folder), "ada")).toBe(1);
    expect(readLinkVersions(folder).board).toBe(1);
  });

  it("go up for the one whose links are revoked, and for nobody else", () => {
    revokeLinks(folder, "ada");
    revokeLinks(folder, "ada");
    const versions = readLinkVersions(folder);
    expect([versionOf(versions, "ada"), versionOf(versions, "ben"), versions.board]).toEqual([3, 1, 1]);
    expect(revokeLinks(folder).board).toBe(2);
    expect(JSON.parse(readFileSync(join(folder, ".rigsheet/links.json"), "utf8"))).toEqual({
      board: 2,
      athletes: { ada: 3 },
      known: {},
    });
  });

  it("go up for the board of one group, and not for a gym of the same name", () => {
    const [group, gym] = (["group", "gym"] as const).map((kind) => ({ kind, id: "mill", name: "Mill" }));
    if (!group || !gym) throw new Error("Two are wanted.");
    revokeGroup(folder, group);
    const versions = readLinkVersions(folder);
    expect([versionOfGroup(versions, group), versionOfGroup(versions, gym), versions.board]).toEqual([
      2, 1, 1,
    ]);
  });

  it.each(["constructor", "__proto__", "toString", "hasOwnProperty", "valueOf"])(
    "are kept for an athlete whose file is called %s",
    (id) => {
      expect(versionOf(readLinkVersions(folder), id)).toBe(1);
      revokeLinks(folder, "ada");
      expect(versionOf(readLinkVersions(folder), id)).toBe(1);
      revokeLinks(folder, id);
      revokeLinks(folder, id);
      const versions = readLinkVersions(folder);
      expect([versionOf(versions, id), versionOf(versions, "ada"), versions.board]).toEqual([3, 2, 1]);
    },
  );

  it("are written whole or not at all", () => {
    revokeLinks(folder, "ada");
    expect(readdirSync(join(folder, ".rigsheet")).sort()).toEqual([".gitignore", "links.json"]);
  });

  it("stop everything when their file cannot be read, because revoked links would work again", () => {
    mkdirSync(join(folder, ".rigsheet"));
    const file = join(folder, ".rigsheet/links.json");
    writeFileSync(file, '{"board": 1');
    expect(() => readLinkVersions(folder)).toThrow(
      new Error(
        `${file} cannot be read. It says which links were revoked; without it they would work again. Put back an earlier copy, or write {"board": 1, "athletes": {"id": 2}} with the id of everyone whose link was revoked.`,
      ),
    );
  });
});
