import { describe, expect, it } from "vitest";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isLinked, isOwnRequest, isServed } from "../../src/site/dev-guard.ts";

describe("what is served while developing", () => {
  it.each([
    "/",
    "/strategy/weir/",
    "/strategy/weir/new-men/card-portrait.png",
    "/b/0123456789ABCDEF/",
    "/b/0123456789ABCDEF/sheet-a4.bin",
    "/@vite/client",
    "/@id/astro:scripts/page.js",
    "/@id/__x00__astro/client.js",
    "/src/styles/base.css",
    "/src/browser/unlock.ts",
    "/src/pages/b/[address]/index.astro?astro&type=script&index=0&lang.ts",
    "/src/fonts/fira-sans-condensed-400-latin.woff2",
    "/node_modules/vite/dist/client/env.mjs",
    "/node_modules/.vite/deps/zod.js?v=1",
  ])("is what a page needs: %s", (path) => {
    expect(isServed(path, "/")).toBe(true);
  });

  it.each([
    "/.rigsheet/secret",
    "/.rigsheet/links.json",
    "/.rigsheet/secret?raw",
    "/%2erigsheet/secret",
    "/%252erigsheet/secret",
    "/src/../.rigsheet/secret",
    "/src/styles/../../.rigsheet/secret",
    "/src/styles/%2e%2e/%2e%2e/.rigsheet/secret",
    "/src\\..\\.rigsheet\\secret",
    "//.rigsheet/secret",
    "/athletes/ana.yaml",
    "/athletes/ana.yaml?raw",
    "/athletes/ana.yaml?import&raw",
    "/athletes/ana.yaml?url",
    "/content/workouts/weir.mdx",
    "/content/settings.yaml",
    "/@fs/etc/passwd",
    "/@fs/home/me/gym/athletes/ana.yaml",
    "/@id/../.rigsheet/secret",
    "/@id/astro:data-layer-content",
    "/@id/astro:content",
    "/@id/__x00__astro:data-layer-content",
    "/@id/astro:env/server",
    "/@id/fs",
    "/@id//etc/passwd",
    "/src/site/secret.ts",
    "/src/cli/build.ts",
    "/src/styles/base.css?raw",
    "/package.json",
    "/astro.config.mjs",
    "/.git/config",
    "/.astro/data-store.json",
    "/node_modules/.astro/data-store.json",
    "/node_modules/.bin/vite",
    "/dist/index.html",
    "/__open-in-editor?file=a",
    "/%",
    "/a\0b",
  ])("is nothing else: %s", (path) => {
    expect(isServed(path, "/")).toBe(false);
    expect(isServed(`/gym${path}`, "/gym/")).toBe(false);
  });

  it("is not what a link on the disk leads to", () => {
    const root = mkdtempSync(join(tmpdir(), "rigsheet-"));
    mkdirSync(join(root, "src/styles"), { recursive: true });
    writeFileSync(join(root, "secret"), "");
    writeFileSync(join(root, "src/styles/own.css"), "");
    symlinkSync(join(root, "secret"), join(root, "src/styles/linked.css"));
    expect(isLinked("/src/styles/linked.css?direct", "/", root)).toBe(true);
    expect(isLinked("/gym/src/styles/linked.css", "/gym/", root)).toBe(true);
    for (const path of ["/src/styles/own.css", "/src/styles/none.css", "/strategy/weir/"])
      expect(isLinked(path, "/", root)).toBe(false);
    rmSync(root, { recursive: true });
  });

  it("is served to this computer's own pages alone", () => {
    const host = "localhost:4321";
    expect(isOwnRequest({ host })).toBe(true);
    expect(isOwnRequest({ host, origin: `http://${host}`, "sec-fetch-site": "same-origin" })).toBe(true);
    expect(isOwnRequest({ host, origin: "http://localhost:8080", "sec-fetch-site": "same-site" })).toBe(
      false,
    );
    expect(isOwnRequest({ host, "sec-fetch-site": "cross-site" })).toBe(false);
    expect(isOwnRequest({ host, origin: "null" })).toBe(false);
    expect(isOwnRequest({ host: "evil.example" })).toBe(false);
    expect(isOwnRequest({})).toBe(false);
  });
});
