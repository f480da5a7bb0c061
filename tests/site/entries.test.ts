import { describe, expect, it } from "vitest";
import { dataOf, entriesOf, type Kind, KINDS, type StoredEntry } from "../../src/site/entries.ts";
import { loadData } from "../../src/site/load-data.ts";
import { FIXTURE } from "../support/fixture-site.ts";
import { ROOT } from "../support/run-command.ts";

const checked = loadData({ root: ROOT, dataFolder: FIXTURE, audience: "everyone" });
if (!checked.ok) throw new Error("the fixture has faults");
const data = checked.value;

describe("checked things in the store", () => {
  it("come out as they went in, in whatever order the store gives them", () => {
    const stored = new Map<Kind, readonly StoredEntry[]>(
      KINDS.map((kind) => [kind, entriesOf(kind, data).toReversed()]),
    );
    expect(dataOf((kind) => stored.get(kind) ?? [])).toEqual({ ...data, notices: [] });
  });

  it("survive being written as JSON", () => {
    for (const kind of KINDS) {
      const entries = entriesOf(kind, data);
      expect(JSON.parse(JSON.stringify(entries))).toEqual(entries);
    }
  });

  it("are missed when nothing could be read yet", () => {
    expect(() => dataOf(() => [])).toThrow(
      new Error("There is nothing to show yet: the content has faults that must be mended first."),
    );
  });
});
