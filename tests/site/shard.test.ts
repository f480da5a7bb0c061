import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { cacheKey } from "../../src/site/brief-cache.ts";
import {
  adoptShards,
  isInShard,
  placeShard,
  readShard,
  type Shard,
  writeShard,
} from "../../src/site/shard.ts";

describe("a shard", () => {
  it("is read as one of several, and nothing else", () => {
    expect(readShard("2/8")).toEqual({ number: 2, of: 8 });
    expect(readShard("1/1")).toEqual({ number: 1, of: 1 });
    for (const written of ["0/8", "9/8", "2", "2/", "a/b", "2/8/1", "-1/8", "1/5000"]) {
      expect(readShard(written), written).toBeUndefined();
    }
  });

  it("holds every athlete once, and about as many as every other", () => {
    const ids = Array.from({ length: 2000 }, (_, at) => `athlete-${at}`);
    const counts = [1, 2, 3, 4, 5].map(
      (number) => ids.filter((id) => isInShard(id, { number, of: 5 })).length,
    );
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(2000);
    // 400 each, give or take four standard deviations of a fair draw: sqrt(2000 × 0.2 × 0.8) = 17.9.
    for (const count of counts) expect(Math.abs(count - 400)).toBeLessThan(4 * 17.9);
  });
});

describe("the folder of a shard", () => {
  let folder = "";
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
  });
  afterEach(() => {
    rmSync(folder, { recursive: true });
  });
  const at = (path: string): string => join(folder, path);
  const put = (path: string, text: string): void => {
    mkdirSync(join(at(path), ".."), { recursive: true });
    writeFileSync(at(path), text);
  };

  it("takes the place of another shard", () => {
    put("fresh/shard", "new");
    put("fresh/pages/0123456789ABCDEF/entry", "new");
    put("target/shard", "old");
    put("target/pages/ZZZZZZZZZZZZZZZZ/entry", "old");
    placeShard(at("fresh"), at("target"));
    expect(readFileSync(at("target/shard"), "utf8")).toBe("new");
    expect(readFileSync(at("target/pages/0123456789ABCDEF/entry"), "utf8")).toBe("new");
    expect(() => readFileSync(at("target/pages/ZZZZZZZZZZZZZZZZ/entry"))).toThrow("ENOENT");
  });

  it.each([
    ["beside a shard", ["target/shard", "target/thesis.txt"]],
    ["among its pages", ["target/shard", "target/pages/letters/one.txt"]],
    ["in a folder of that name", ["target/shard/thesis.txt"]],
    ["in a file where pages belong", ["target/shard", "target/pages"]],
  ])("is never one with something of somebody's %s", (_where, files) => {
    put("fresh/shard", "new");
    for (const file of files) put(file, "mine");
    expect(() => {
      placeShard(at("fresh"), at("target"));
    }).toThrow(`${at("target")} holds something that is no shard. Name another folder with --out.`);
    for (const file of files) expect(readFileSync(at(file), "utf8")).toBe("mine");
  });

  it("is named twice only where it is, whatever else does not fit", async () => {
    const cache = { folder: at("cache"), key: await cacheKey(new Uint8Array(32)) };
    const write = async (name: string, shard: Shard): Promise<string> => {
      mkdirSync(at(name));
      await writeShard(at(name), { cache, addresses: [], from: "same", shard });
      return at(name);
    };
    const folders = [
      await write("one", { number: 1, of: 2 }),
      await write("other", { number: 1, of: 3 }),
      await write("two", { number: 2, of: 2 }),
    ];
    await expect(adoptShards(folders, cache, "same")).rejects.toThrow(
      new Error(
        `The shards do not make a site.\n  ${at("other")}: is one of 3 shards, the first named one of 2.`,
      ),
    );
  });
});
