import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveFolder, type Serving } from "../../src/site/serve-folder.ts";

const outside = mkdtempSync(join(tmpdir(), "rigsheet-"));
const folder = join(outside, "dist");
let serving: Serving;

beforeAll(async () => {
  mkdirSync(join(folder, "b/AA"), { recursive: true });
  writeFileSync(join(outside, "secret"), "never");
  writeFileSync(join(folder, "index.html"), "home");
  writeFileSync(join(folder, "404.html"), "nothing");
  writeFileSync(join(folder, "b/AA/index.html"), "locked");
  writeFileSync(join(folder, "b/AA/sheet-a4.bin"), "bytes");
  serving = await serveFolder(folder, "/gym/", 0);
});
afterAll(() => {
  serving.server.close();
  rmSync(outside, { recursive: true });
});

const ask = async (path: string) => {
  const response = await fetch(`${serving.address}${path}`);
  return [response.status, response.headers.get("content-type"), await response.text()];
};

describe("serving a site on this computer", () => {
  it("gives pages of folders, files by their type, and 404 for the rest", async () => {
    expect(await ask("/gym/")).toEqual([200, "text/html;charset=utf-8", "home"]);
    expect(await ask("/gym/b/AA/")).toEqual([200, "text/html;charset=utf-8", "locked"]);
    expect(await ask("/gym/b/AA/sheet-a4.bin")).toEqual([200, "application/octet-stream", "bytes"]);
    for (const path of ["/", "/gym/none", "/gym/b", "/gym/b/", "/gym/%E0%A4%", "/gym/%zz"]) {
      expect(await ask(path)).toEqual([404, "text/html;charset=utf-8", "nothing"]);
    }
  });

  it("is refused for a file, and for no folder at all", async () => {
    await expect(serveFolder(join(outside, "secret"), "/", 0)).rejects.toThrow(
      `${join(outside, "secret")} is a file and no folder of a site. Name the folder with --out.`,
    );
    await expect(serveFolder(join(outside, "none"), "/", 0)).rejects.toThrow(
      `There is no folder ${join(outside, "none")} yet. Build first, with the same --out: npm run build`,
    );
  });

  it("gives nothing from outside the folder", async () => {
    for (const path of ["/gym/..%2fsecret", "/gym/%2e%2e/secret", "/gym/b/..%2f..%2fsecret"]) {
      expect((await ask(path))[0]).toBe(404);
    }
  });

  it("says that a port is taken and that there is nothing to serve", async () => {
    const port = Number(new URL(serving.address).port);
    await expect(serveFolder(folder, "/", port)).rejects.toThrow(
      new Error(`Port ${port} is taken on this computer. Name another with --port.`),
    );
    await expect(serveFolder(join(outside, "none"), "/", 0)).rejects.toThrow(
      new Error(
        `There is no folder ${join(outside, "none")} yet. Build first, with the same --out: npm run build`,
      ),
    );
  });
});
