import { mkdirSync, mkdtempSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { evenOut } from "../../src/site/even-out.ts";

it("gives every file and folder one time, and everybody the right to read", () => {
  const site = mkdtempSync(join(tmpdir(), "rigsheet-"));
  mkdirSync(join(site, "b/AA"), { recursive: true, mode: 0o700 });
  for (const [name, second] of [
    ["b/AA/index.html", 1],
    ["b/AA/sheet-a4.bin", 2],
    ["index.html", 3],
  ] as const) {
    writeFileSync(join(site, name), "x", { mode: 0o600 });
    utimesSync(join(site, name), second, second);
  }
  evenOut(site, new Date("2026-11-25T18:00:00Z"));
  const seen = ["", "b", "b/AA", "b/AA/index.html", "b/AA/sheet-a4.bin", "index.html"].map((name) => {
    const { mode, mtimeMs } = statSync(join(site, name));
    return [name, (mode & 0o777).toString(8), new Date(mtimeMs).toISOString()];
  });
  rmSync(site, { recursive: true });
  const time = "2026-11-25T18:00:00.000Z";
  expect(seen).toEqual([
    ["", "755", time],
    ["b", "755", time],
    ["b/AA", "755", time],
    ["b/AA/index.html", "644", time],
    ["b/AA/sheet-a4.bin", "644", time],
    ["index.html", "644", time],
  ]);
});
