import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { loadUsable } from "../../src/site/load-data.ts";
import { openReadMemory } from "../../src/site/read-memory.ts";
import type { Surroundings } from "../../src/site/surroundings.ts";
import { copyFixture, DAY } from "../support/fixture-site.ts";
import { ROOT, TEST_SECRET } from "../support/run-command.ts";

let dataFolder = "";
beforeEach(() => {
  dataFolder = mkdtempSync(join(tmpdir(), "rigsheet-memory-"));
  copyFixture(dataFolder);
});
afterEach(() => {
  rmSync(dataFolder, { recursive: true, force: true });
});
const places = (
  more: Partial<Surroundings> = {},
  secret = { secret: TEST_SECRET } as object,
): Surroundings => ({
  root: ROOT,
  dataFolder,
  audience: "everyone",
  date: DAY,
  base: "/",
  ...secret,
  ...more,
});
const kept = (): string => join(dataFolder, ".rigsheet/cache/read");
const file = { path: "athletes/ada.yaml", text: "name: Ada\n" };
const around = [{ path: "content/settings.yaml", text: "zone: Europe/Oslo\n" }];

describe("what was read before", () => {
  it("is taken as it was, and read again where the file, or any it rests on, is another", () => {
    let made = 0;
    const ask = (text: string, others = around): number => {
      const memory = openReadMemory(places(), true);
      const value = memory.remember("athlete", [others, [{ ...file, text }]], () => ++made);
      memory.save();
      return value;
    };
    expect([ask(file.text), ask(file.text)]).toEqual([1, 1]);
    expect(ask("name: Ida\n")).toBe(2);
    expect(ask("name: Ida\n", [{ path: "content/settings.yaml", text: "zone: Europe/Paris\n" }])).toBe(3);
  });

  it("of a library is kept though many others were read before it, whatever their names sort like", () => {
    const root = mkdtempSync(join(tmpdir(), "rigsheet-program-"));
    mkdirSync(join(root, "src"));
    for (const name of ["astro.config.mjs", "package-lock.json", "tsconfig.json"])
      writeFileSync(join(root, name), "");
    let made = 0;
    const ask = (text: string): number =>
      openReadMemory(places({ root }), false).remember(
        "library",
        [[{ path: "content/movements/one.mdx", text }]],
        () => ++made,
      );
    // Each is read twice in a row, as a command after a command does; names are sums, in no order.
    const asked = Array.from({ length: 20 }, (_, at) => [ask(`v${at}`), ask(`v${at}`)]);
    expect(asked).toEqual(Array.from({ length: 20 }, (_, at) => [at + 1, at + 1]));
    expect(readdirSync(join(root, ".rigsheet/library"))).toHaveLength(8);
    rmSync(root, { recursive: true, force: true });
  });

  it("gives the same data as reading anew", () => {
    const [first, second] = [loadUsable(places()), loadUsable(places())];
    expect(second).toEqual(first);
    const athlete = join(dataFolder, "athletes/orsolo-venn.yaml");
    writeFileSync(athlete, readFileSync(athlete, "utf8").replace("level: regular", "level: nonsense"));
    const broken = loadUsable(places());
    expect(broken.faults.map(({ place, found }) => [place.file, found])).toEqual([
      ["athletes/orsolo-venn.yaml", "nonsense"],
    ]);
    expect(loadUsable(places()).faults).toEqual(broken.faults);
  });

  it("is locked, so that nobody is read in it, and passed over where it is broken or of another secret", () => {
    const first = loadUsable(places());
    const bytes = readFileSync(kept());
    expect(bytes.includes("Vennemark")).toBe(false);
    bytes[100] = (bytes[100] ?? 0) ^ 1;
    writeFileSync(kept(), bytes);
    expect(loadUsable(places())).toEqual(first);
    expect(loadUsable(places({ secret: "ZG0G40R40M30E209185GR38E1W8124GK2GAHC5RR34D1P70X3RFG" }))).toEqual(
      first,
    );
  });

  it("is nothing of anybody where there is no secret yet, or for the gym alone", () => {
    loadUsable(places({}, {}));
    loadUsable(places({ audience: "gym" }));
    expect(readdirSync(dataFolder)).not.toContain(".rigsheet");
  });
});
