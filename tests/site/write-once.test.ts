import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { writeOnce } from "../../src/site/write-once.ts";

const how = { mode: 0o600, flush: true };
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

it("makes a file with its rights where there is none, and leaves one that is there", () => {
  const file = join(folder, "secret");
  expect(writeOnce(file, "first", how)).toBe(true);
  expect(writeOnce(file, "second", how)).toBe(false);
  expect(readFileSync(file, "utf8")).toBe("first");
  expect(statSync(file).mode & 0o777).toBe(0o600);
  expect(readdirSync(folder)).toEqual(["secret"]);
});

it("says what keeps it from being made, and leaves nothing", () => {
  expect(() => writeOnce(join(folder, "none/secret"), "x", how)).toThrow("ENOENT");
  expect(readdirSync(folder)).toEqual([]);
});
