import { describe, expect, it } from "vitest";
import { settleVersions } from "../../src/site/former-athletes.ts";
import { FIRST_VERSIONS, versionOf } from "../../src/site/link-versions.ts";

const { versions: begun } = settleVersions(FIRST_VERSIONS, [
  { id: "ana", name: "Ana Ruddock" },
  { id: "bo", name: "Bo Ferrow" },
]);
const settle = (...present: readonly { id: string; name?: string }[]) => settleVersions(begun, present);

describe("the links of who has left", () => {
  it("are nobody's at first", () => {
    expect(begun.athletes.size).toBe(0);
    expect([...begun.known.keys()]).toEqual(["ana", "bo"]);
  });

  it("end, so that somebody new under the same file name gets new ones", () => {
    const left = settle({ id: "bo", name: "Bo Ferrow" });
    expect(left.former).toEqual([{ id: "ana", name: "Ana Ruddock" }]);
    expect(versionOf(left.versions, "ana")).toBe(2);
    expect(versionOf(left.versions, "bo")).toBe(1);
    const back = settleVersions(left.versions, [
      { id: "bo", name: "Bo Ferrow" },
      { id: "ana", name: "Ana Cask" },
    ]);
    expect(back.former).toEqual([]);
    expect(versionOf(back.versions, "ana")).toBe(2);
    const again = settleVersions(back.versions, [{ id: "bo", name: "Bo Ferrow" }]);
    expect(versionOf(again.versions, "ana")).toBe(3);
  });

  it("end where the file holds another person at once", () => {
    const other = settle({ id: "ana", name: "Ulrike Zander" }, { id: "bo", name: "Bo Ferrow" });
    expect(other.former).toEqual([{ id: "ana", name: "Ana Ruddock", now: "Ulrike Zander" }]);
    expect(versionOf(other.versions, "ana")).toBe(2);
  });

  it("end where only the first name is the same: two Anas share a file name, and no links", () => {
    const other = settle({ id: "ana", name: "Ana Cask" }, { id: "bo", name: "Bo Ferrow" });
    expect(other.former).toEqual([{ id: "ana", name: "Ana Ruddock", now: "Ana Cask" }]);
  });

  it("stay where a name is mended or a word added, and where a file cannot be read for now", () => {
    for (const name of ["Ána Ruddock", "ana ruddock-marl", "Ana", "Ana Rudock", "Ruddock, Ana"]) {
      const same = settle({ id: "ana", name }, { id: "bo" });
      expect([same.former, same.versions.athletes.size]).toEqual([[], 0]);
    }
    const unread = settle({ id: "ana" }, { id: "bo", name: "Bo Ferrow" });
    expect(unread.versions).toBe(begun);
  });

  it("stay where no athlete at all has a file: the folder is more likely missing", () => {
    expect(settle()).toEqual({ versions: begun, former: [] });
  });

  it("end for files with names of which every object has something", () => {
    const { versions } = settleVersions(FIRST_VERSIONS, [
      { id: "__proto__", name: "Pro" },
      { id: "constructor", name: "Con" },
    ]);
    const left = settleVersions(versions, [{ id: "constructor", name: "Con" }]);
    expect([versionOf(left.versions, "__proto__"), versionOf(left.versions, "constructor")]).toEqual([2, 1]);
  });
});
