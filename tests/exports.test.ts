import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { below, checkExports } from "./support/check-exports.ts";
import { readSources, type SourceFile } from "./support/source-files.ts";

const root = fileURLToPath(new URL("..", import.meta.url));

/** Doors that tests and experiments go through, and the cuts of the fonts that styles name. The list may only shrink. */
const KEPT = [
  "src/fonts/font-files.ts: WEB_SUBSETS",
  "src/fonts/font-files.ts: webFontFile",
  "src/reading/read-data.ts: readData",
  "src/site/load-data.ts: loadData",
];

describe("the exports of src", () => {
  const files = [
    ...["src", "tests"].flatMap((folder) =>
      readSources(`${root}${folder}`).map((file) => below(folder, file)),
    ),
    { path: "astro.config.mjs", text: readFileSync(`${root}astro.config.mjs`, "utf8") },
  ];
  const told = checkExports(files);

  it("are imported by another file, and not by tests alone", () => {
    expect(told.filter((fault) => !KEPT.some((kept) => fault.startsWith(kept)))).toEqual([]);
  });

  it("need every exception that is made", () => {
    expect(KEPT.filter((kept) => !told.some((fault) => fault.startsWith(kept)))).toEqual([]);
  });
});

describe("the check of exports", () => {
  const check = (...files: readonly (readonly [string, string])[]): readonly string[] =>
    checkExports(files.map(([path, text]): SourceFile => ({ path, text })));

  it("tells what nobody imports, and what only tests do where the file has no use for it", () => {
    const own = [
      "src/a.ts",
      "export const one = 1;\nexport type Two = 2;\nexport const three = one;",
    ] as const;
    expect(check(own)).toHaveLength(3);
    expect(check(own, ["tests/a.test.ts", `import { one, three } from "../src/a.ts";`])).toEqual([
      "src/a.ts: exports Two, which no other file imports; do not export it",
      "src/a.ts: three is used by tests alone; delete it with its test",
    ]);
  });

  it.each([
    ["an import", `import { one } from "./a.ts";`],
    ["another name", `import { one as other } from "./a.ts";`],
    ["a type", `import type { one } from "./a.ts";`],
    ["an import type", `type One = typeof import("./a.ts").one;`],
    ["the module as a whole", `import * as a from "./a.ts";`],
    ["a dynamic import", `const a = await import("./a.ts");`],
    ["a worker", `new Worker(new URL("./a.ts", import.meta.url));`],
    ["an entry by its path", `const entry = "src/a.ts";`],
  ])("sees %s", (_form, text) => {
    expect(check(["src/a.ts", "export const one = 1;"], ["src/b.ts", text])).toEqual([]);
  });
});
