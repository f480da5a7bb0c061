import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, it } from "vitest";
import { countSite } from "../../src/site/count-site.ts";

const LOCKED = '<template id="locked">AAAA</template>';

it("a site is counted by the pages of each kind, its files and bytes; a private page in clear is none", () => {
  const folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
  const files = [
    "index.html",
    "b/AA/index.html",
    "b/AA/sheet-a4.bin",
    "b/BB/index.html",
    "b/open/index.html",
    "b/sw.js",
    "strategy/x/index.html",
    "strategy/x/new/index.html",
    "strategy/x/new/sheet-a4.pdf",
  ];
  for (const file of files) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), /^b\/[A-Z]+\/index/.test(file) ? LOCKED : "12345");
  }
  expect(countSite(folder)).toEqual({
    locked: 2,
    strategies: 1,
    bandPages: 1,
    files: 9,
    bytes: 7 * 5 + 2 * LOCKED.length,
  });
  rmSync(folder, { recursive: true });
});
