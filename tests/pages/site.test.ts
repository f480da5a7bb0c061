import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { fixtureSite } from "../support/fixture-site.ts";
import { ROOT } from "../support/run-command.ts";
import { filesBelow } from "../support/source-files.ts";

let site = "";
let files: readonly string[] = [];
beforeAll(async () => {
  site = await fixtureSite();
  files = filesBelow(site);
}, 600_000);

const read = (file: string): string => readFileSync(join(site, file), "utf8");
const lockedPages = (): readonly string[] => files.filter((file) => /^b\/.*\.html$/.test(file));
const publicPages = (): readonly string[] =>
  files.filter((file) => file.endsWith(".html") && !file.startsWith("b/"));

describe("a built site", () => {
  it("has a page for the board and each athlete's workout, with the same files beside each", () => {
    expect(lockedPages()).toHaveLength(1 + 3 * 2);
    const besides = new Map<string, string[]>();
    for (const file of files.filter((one) => /^b\/.*\.bin$/.test(one))) {
      const [, address = "", name = ""] = file.split("/");
      besides.set(address, [...(besides.get(address) ?? []), name]);
    }
    expect(besides.size).toBe(6);
    for (const names of besides.values()) {
      expect(names).toEqual([
        "calendar.bin",
        "card-landscape.bin",
        "card-portrait.bin",
        "day.bin",
        "sheet-a4.bin",
        "sheet-letter.bin",
      ]);
    }
  });

  it("has a strategy page for each workout, and a page with files for each band", () => {
    const strategies = files.filter((file) => /^strategy\/[^/]+\/index\.html$/.test(file));
    expect(strategies).toEqual(["strategy/gravel-bell/index.html", "strategy/slow-lighthouse/index.html"]);
    const bands = files.filter((file) => /^strategy\/[^/]+\/[^/]+\/sheet-a4\.pdf$/.test(file));
    expect(bands).toHaveLength(2 * 8);
  });

  it("has no source maps, no sitemap, no path of this computer", () => {
    expect(files.filter((file) => /\.map$|sitemap/.test(file))).toEqual([]);
    for (const file of files.filter((one) => /\.(html|css|js|txt)$/.test(one))) {
      expect(read(file)).not.toContain(ROOT.replace(/\/$/, ""));
    }
  });

  it("asks no other host for anything", () => {
    for (const file of files.filter((one) => /\.(html|css|js)$/.test(one))) {
      const addresses = (read(file).match(/https?:\/\/[^"'\s)<]+/g) ?? []).filter(
        // Names of languages, not addresses.
        (address) => !address.startsWith("http://www.w3.org/"),
      );
      expect([file, addresses]).toEqual([file, []]);
    }
  });

  it("allows nothing that its own content policy would have to let through", () => {
    for (const file of files.filter((one) => one.endsWith(".html"))) {
      const html = read(file);
      const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(html)?.[1] ?? "";
      expect(policy).toContain("default-src 'none'");
      expect(policy).not.toMatch(/unsafe|\*|https?:/);
      expect(html).not.toMatch(/<[^>]+\sstyle=/);
      expect(html).not.toMatch(/\son[a-z]+=/);
      expect(html).toContain('<meta name="referrer" content="no-referrer">');
    }
  });

  it("links only to what is there", () => {
    const known = new Set(files.map((file) => `/${file.replace(/index\.html$/, "")}`));
    for (const file of publicPages()) {
      const base = `http://x/${file.replace(/index\.html$/, "")}`;
      const targets = [...read(file).matchAll(/(?:href|src)="([^"#][^"]*)"/g)].map(
        ([, target = ""]) => target,
      );
      const missing = targets
        .filter((target) => !target.startsWith("data:"))
        .map((target) => new URL(target, base).pathname)
        .filter((path) => !known.has(path));
      expect([file, missing]).toEqual([file, []]);
    }
  });
});

describe("a locked page", () => {
  it("is the same as every other but for its address and what is locked", () => {
    const shells = lockedPages().map((file) =>
      read(file)
        .replace(/<template id="locked">[^<]*<\/template>/, "")
        .replace(/data-address="[^"]*"/, ""),
    );
    expect(new Set(shells).size).toBe(1);
    expect(shells[0]).toContain("<title>Private page</title>");
    expect(shells[0]).toContain('<meta name="robots" content="noindex, nofollow, noarchive">');
  });

  it("has one length for every athlete and workout, and so has each file beside it", () => {
    for (const name of [
      "index.html",
      "sheet-a4.bin",
      "sheet-letter.bin",
      "card-landscape.bin",
      "card-portrait.bin",
      "calendar.bin",
      "day.bin",
    ]) {
      const board = lockedPages().find((file) => !files.includes(file.replace("index.html", "calendar.bin")));
      const lengths = files
        .filter((file) => file.startsWith("b/") && file.endsWith(`/${name}`) && file !== board)
        .map((file) => readFileSync(join(site, file)).length);
      expect([name, [...new Set(lengths)].length]).toEqual([name, 1]);
    }
  });

  it("is transferred, with all it needs, in at most 100 kB", () => {
    const page = lockedPages()[0] ?? "";
    const html = read(page);
    const parts = [...html.matchAll(/(?:href|src)="(\/_astro\/[^"]+)"/g)].map(([, path = ""]) =>
      path.slice(1),
    );
    const texts = [page, ...parts.filter((path) => /\.(css|js)$/.test(path))].map(
      (path) => gzipSync(read(path)).length,
    );
    const fonts = [...new Set(parts.filter((path) => path.endsWith(".woff2")))].map(
      (path) => readFileSync(join(site, path)).length,
    );
    expect(fonts).toHaveLength(2);
    expect([...texts, ...fonts].reduce((sum, length) => sum + length, 0)).toBeLessThanOrEqual(100_000);
  });

  it("asks for everything it needs at once: its script stands in it, fonts are named beside the style", () => {
    const html = read(lockedPages()[0] ?? "");
    expect(html).not.toMatch(/<script[^>]+src=/);
    expect(html.match(/<link rel="preload"[^>]+as="font"/g)).toHaveLength(2);
    expect(html.match(/<link rel="stylesheet"/g)).toHaveLength(1);
  });
});

describe("the pages for everyone", () => {
  it("show a coach's text in general terms on the strategy page", () => {
    const text = read("strategy/gravel-bell/index.html")
      .replace(/<[^>]+>/g, "")
      .replaceAll("&#39;", "'")
      .replace(/\s+/g, " ");
    expect(text).toContain("Aim at your band's target, be at your band's clock of round 2 after two rounds");
    expect(text).toContain("warm up to 70% of your best clean and jerk");
    expect(text).toContain("For new athletes: Step, do not jump.");
    expect(text).toContain("For all but new and regular athletes: Only for those who have raced before.");
  });

  it("show it with the band's own numbers on the band's page, and only what is meant for it", () => {
    const page = (band: string) =>
      read(`strategy/gravel-bell/${band}/index.html`)
        .replace(/<[^>]+>/g, "")
        .replace(/\s+/g, " ");
    expect(page("new-men")).toMatch(
      /Aim at (?:\d+:\d\d|\d+ reps), be at \d+:\d\d after two rounds and half done at \d+:\d\d\./,
    );
    expect(page("new-men")).toContain("Step, do not jump.");
    expect(page("new-men")).not.toContain("Only for those who have raced before.");
    expect(page("elite-women")).toContain("Only for those who have raced before.");
    expect(page("elite-women")).not.toContain("Step, do not jump.");
    expect(page("elite-women")).not.toContain("Something is left out for you.");
  });

  it("align tables of a text by class", () => {
    expect(read("strategy/gravel-bell/index.html")).toMatch(
      /<th scope="col" class="align-right">\s*Round\s*<\/th>/,
    );
  });

  it("keep a space between words and what is set off from them", () => {
    for (const file of publicPages()) {
      const glued =
        read(file).match(
          /[\p{L}\d,;:]<(?:strong|em|a)\b[^>]*>[\p{L}\d]|[\p{L}\d]<\/(?:strong|em|a)>[\p{L}\d(]/gu,
        ) ?? [];
      expect([file, glued]).toEqual([file, []]);
    }
  });

  it("write no space before a full stop or comma", () => {
    for (const file of publicPages()) {
      const text = read(file)
        .replace(/<(script|style)[\s\S]*?<\/\1>/g, "")
        .replace(/<[^>]+>/g, "");
      expect([file, text.match(/\p{L}+ [.,;](?=\s|$)/gu) ?? []]).toEqual([file, []]);
    }
  });

  it("carry headers for the host, and a page for what is not there", () => {
    for (const file of ["_headers", ".htaccess", ".nojekyll", "404.html", "robots.txt"])
      expect(files).toContain(file);
    expect(read("robots.txt")).toBe("User-agent: *\nAllow: /\n");
  });
});
