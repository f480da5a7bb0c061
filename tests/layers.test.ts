import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkLayers, type Layer, layerOf } from "./support/check-layers.ts";
import { checkPurity } from "./support/check-purity.ts";
import { checkShape } from "./support/check-shape.ts";
import { findCycles } from "./support/find-cycles.ts";
import { readImports } from "./support/read-imports.ts";
import { isCode, readSources, type SourceFile } from "./support/source-files.ts";

const forRendering = ["pdfkit", "fontkit", "satori", "sharp", "qrcode", "node:*"];
const forComponents = ["astro", "astro/types", "astro:*"];

/** The folders of the computation: each stands on those before it. */
const computeSteps = [
  "overrides",
  "unroll",
  "motion",
  "search",
  "capacity",
  "pacing",
  "early-splits",
  "places",
  "lifting",
  "conditions",
  "cautions",
  "choices",
  "warm-up",
  "after",
  "set-up",
  "debrief",
  "plan",
];

/** The folders of the reading, likewise. */
const readingSteps = [
  "quantities",
  "files",
  "yaml",
  "names",
  "conditions",
  "fields",
  "notation",
  "athlete-file",
  "field-file",
  "schemas",
  "data-folder",
  "tables",
];
const forReading = ["zod", "yaml", "csv-parse/sync", "temporal-polyfill"];

/** The levels of src. Imports go down, or stay in their own folder, or go beside where it says so. */
const layers: readonly Layer[] = [
  { folder: "models", level: 0, packages: ["zod"] },
  { folder: "numerics", level: 0, packages: [] },
  ...readingSteps.map((folder, step): Layer => ({
    folder: `reading/${folder}`,
    level: 1,
    step,
    packages: forReading,
  })),
  // The doors of the reading, which stand above all of its folders.
  { folder: "reading", level: 1, step: readingSteps.length, packages: forReading },
  ...computeSteps.map((folder, step): Layer => ({
    folder: `compute/${folder}`,
    level: 1,
    step,
    packages: ["temporal-polyfill"],
  })),
  // The doors of the computation, which stand above all of its folders.
  { folder: "compute", level: 1, step: computeSteps.length, packages: ["temporal-polyfill"] },
  { folder: "wording", level: 1, packages: [] },
  { folder: "charts", level: 2, never: ["compute"], packages: [] },
  // The day itself: what was tapped, folded into how it stands. It plans attempts again, so it may compute.
  { folder: "live", level: 2, packages: [] },
  { folder: "styles", level: 2, packages: [] },
  { folder: "fonts", level: 2, packages: [] },
  { folder: "sheet", level: 3, never: ["compute"], packages: forRendering },
  { folder: "card", level: 3, never: ["compute"], packages: forRendering },
  { folder: "calendar", level: 3, never: ["compute"], packages: [] },
  { folder: "lock", level: 3, never: ["compute"], packages: forRendering },
  { folder: "components", level: 3, never: ["compute"], packages: forComponents },
  { folder: "layouts", level: 3, beside: ["components"], never: ["compute"], packages: forComponents },
  { folder: "site", level: 4, packages: ["*"] },
  { folder: "cli", level: 4, beside: ["site"], packages: ["*"] },
  { folder: "browser", level: 5, packages: ["*"] },
  { folder: "pages", level: 5, beside: ["browser"], packages: ["*"] },
  // content.config.ts, which pairs each folder of content with its schema.
  { folder: "", level: 5, packages: ["*"] },
];

const highestPureLevel = 2;

function isPure(path: string): boolean {
  const layer = layerOf(path, layers);
  return isCode(path) && layer !== undefined && layer.level <= highestPureLevel;
}

describe("the files of src", () => {
  const files = readSources(fileURLToPath(new URL("../src", import.meta.url)));

  it("are there to be read", () => {
    expect(files.filter((file) => isCode(file.path)).length).toBeGreaterThan(0);
  });

  it("import only downwards, and only the packages of their level", () => {
    expect(checkLayers(files, layers)).toEqual([]);
  });

  it("stand in a folder of the computation or of the reading that is a level", () => {
    const inner = files
      .map(({ path }) => /^(?:compute|reading)\/[^/]+(?=\/)/.exec(path)?.[0])
      .filter((folder) => folder !== undefined);
    expect(
      [...new Set(inner)].filter((folder) => layerOf(`${folder}/x.ts`, layers)?.folder !== folder),
    ).toEqual([]);
  });

  it("import one another without a ring", () => {
    expect(findCycles(files)).toEqual([]);
  });

  it("use no clock, chance, machine, locale or shared state up to level 2", () => {
    expect(files.filter((file) => isPure(file.path)).flatMap(checkPurity)).toEqual([]);
  });

  it("are named for what they export, export by name, and are no barrels", () => {
    expect(files.flatMap(checkShape)).toEqual([]);
  });
});

const file = (path: string, text = ""): SourceFile => ({ path, text });

describe("the check of levels", () => {
  const targets = [
    file("models/plan.ts"),
    file("compute/pace.ts"),
    file("compute/lifting/plates.ts"),
    file("wording/time.ts"),
    file("numerics/bisect.ts"),
    file("reading/fields/pace.ts"),
    file("components/Tape.astro"),
    file("site/collections.ts"),
  ];
  const check = (path: string, text: string): readonly string[] =>
    checkLayers([...targets, file(path, text)], layers);

  it("lets a file import its own folder and lower ones", () => {
    const text = `import { plates } from "../lifting/plates.ts";\nimport { bisect } from "../../numerics/bisect.ts";`;
    expect(check("compute/warm-up/sets.ts", text)).toEqual([]);
  });

  it("refuses a folder of the computation what stands above it, and its doors", () => {
    expect(check("compute/motion/run.ts", `import type { Plates } from "../lifting/plates.ts";`)).toEqual([
      'compute/motion/run.ts: imports "../lifting/plates.ts"; compute/lifting/ is level 1, step 8 and compute/motion/ is level 1, step 2, imports only go down',
    ]);
    expect(check("compute/plan/parts.ts", `import { pace } from "../pace.ts";`)).toEqual([
      'compute/plan/parts.ts: imports "../pace.ts"; compute/ is level 1, step 17 and compute/plan/ is level 1, step 16, imports only go down',
    ]);
    expect(check("reading/yaml/read.ts", `import { pace } from "../fields/pace.ts";`)[0]).toContain(
      "reading/fields/ is level 1, step 5 and reading/yaml/ is level 1, step 2, imports only go down",
    );
    expect(check("compute/pace-all.ts", `import { plates } from "./lifting/plates.ts";`)).toEqual([]);
  });

  it("refuses an import that goes up", () => {
    expect(check("models/athlete.ts", `import { pace } from "../compute/pace.ts";`)).toEqual([
      'models/athlete.ts: imports "../compute/pace.ts"; compute/ is level 1, step 17 and models/ is level 0, imports only go down',
    ]);
  });

  it("refuses an import from a folder beside, unless the table allows it", () => {
    expect(check("compute/say.ts", `import { time } from "../wording/time.ts";`)).toEqual([
      'compute/say.ts: imports "../wording/time.ts"; wording/ is level 1 and compute/ is level 1, step 17, imports only go down',
    ]);
    expect(check("layouts/Page.astro", `---\nimport Tape from "../components/Tape.astro";\n---\n`)).toEqual(
      [],
    );
    expect(check("cli/plan.ts", `import { read } from "../site/collections.ts";`)).toEqual([]);
  });

  it("refuses the computation to a renderer, types included", () => {
    expect(check("sheet/draw.ts", `import type { Pace } from "../compute/pace.ts";`)).toEqual([
      'sheet/draw.ts: imports "../compute/pace.ts"; sheet/ never imports compute/',
    ]);
  });

  it.each([
    ["an export-from", `export { pace } from "../compute/pace.ts";`],
    ["a dynamic import", `const pace = await import("../compute/pace.ts");`],
    ["an import type", `type Pace = import("../compute/pace.ts").Pace;`],
    ["a worker", `new Worker(new URL("../compute/pace.ts", import.meta.url));`],
    ["an import for its effect", `import "../compute/pace.ts";`],
  ])("sees %s", (_form, text) => {
    expect(check("models/athlete.ts", text)).toHaveLength(1);
  });

  it.each([
    ["front matter", `---\nimport { pace } from "../compute/pace.ts";\n---\n<p></p>`],
    ["a script element", `<script>\nimport { pace } from "../compute/pace.ts";\n</script>`],
    ["a script's address", `<script src="../compute/pace.ts"></script>`],
    ["a template", `<p>{(await import("../compute/pace.ts")).pace}</p>`],
  ])("sees into %s of a component", (_place, text) => {
    expect(check("components/Pace.astro", text)).toEqual([
      'components/Pace.astro: imports "../compute/pace.ts"; components/ never imports compute/',
    ]);
  });

  it("refuses a package that the level may not have", () => {
    expect(check("compute/read.ts", `import { z } from "zod";`)).toEqual([
      'compute/read.ts: imports the package "zod"; compute/ may import temporal-polyfill',
    ]);
    expect(check("numerics/sum.ts", `import { readFileSync } from "fs";`)).toEqual([
      'numerics/sum.ts: imports the package "fs"; numerics/ may import none',
    ]);
    expect(check("calendar/write.ts", `import { readFileSync } from "node:fs";`)).toHaveLength(1);
    expect(check("reading/field.ts", `import { parse } from "csv-parse";`)).toHaveLength(1);
    expect(check("reading/field.ts", `import { parse } from "csv-parse/sync";`)).toEqual([]);
    expect(check("sheet/fonts.ts", `import { readFileSync } from "node:fs";`)).toEqual([]);
    expect(check("cli/build.ts", `import { Command } from "commander";`)).toEqual([]);
  });

  it("refuses a folder that the table does not know", () => {
    expect(check("utils/round.ts", "")).toEqual([
      'utils/round.ts: folder "utils" does not stand in the table of levels',
    ]);
  });

  it("refuses an import without its extension, which Node would not find", () => {
    expect(check("compute/sets.ts", `import { pace } from "./pace";`)).toEqual([
      'compute/sets.ts: imports "./pace", but there is no such file; relative imports end in .ts, .astro or the like',
    ]);
  });

  it("refuses what it could not check: aliases, computed names, globs of code", () => {
    expect(check("site/load.ts", `import { pace } from "/src/compute/pace.ts";`)).toEqual([
      'site/load.ts: imports "/src/compute/pace.ts"; write a relative path instead',
    ]);
    expect(check("site/load.ts", "await import(name);")).toEqual([
      "site/load.ts: imports a computed name; write the name out so that it can be checked",
    ]);
    expect(check("site/load.ts", `import.meta.glob(["../compute/*.ts"]);`)).toEqual([
      'site/load.ts: globs code with "../compute/*.ts"; import each file by name',
    ]);
    expect(check("site/load.ts", `import.meta.glob("../../content/*.mdx");`)).toEqual([]);
  });

  it("refuses files outside src below level 4", () => {
    expect(check("sheet/draw.ts", `import settings from "../../settings.json";`)).toEqual([
      'sheet/draw.ts: imports "../../settings.json" from outside src, which only levels 4 and 5 may',
    ]);
    expect(check("cli/build.ts", `import settings from "../../package.json";`)).toEqual([]);
  });
});

describe("the search for rings", () => {
  it("finds a ring of value imports and tells its way round", () => {
    const ring = [
      file("models/a.ts", `import { b } from "./b.ts";`),
      file("models/b.ts", `import { type C, c } from "./c.ts";`),
      file("models/c.ts", `export { a } from "./a.ts";`),
    ];
    expect(findCycles(ring)).toEqual(["models/a.ts -> models/b.ts -> models/c.ts -> models/a.ts"]);
  });

  it("finds a file that imports itself", () => {
    expect(findCycles([file("models/a.ts", `import { a } from "./a.ts";`)])).toEqual([
      "models/a.ts -> models/a.ts",
    ]);
  });

  it("lets types point back, since they are erased", () => {
    const pair = [
      file("models/a.ts", `import { b } from "./b.ts";`),
      file("models/b.ts", `import type { A } from "./a.ts";`),
    ];
    expect(findCycles(pair)).toEqual([]);
  });

  it("counts an import of inline types as a value, since the other file still runs", () => {
    expect(readImports(file("models/a.ts", `import { type B } from "./b.ts";`))).toEqual([
      { specifier: "./b.ts", typeOnly: false },
    ]);
  });
});

describe("the check of purity", () => {
  const check = (text: string): readonly string[] => checkPurity(file("compute/x.ts", text));

  it.each([
    ["const now = Date.now();", "uses Date; the caller brings clock, chance, files and locale"],
    ["const now: Date = at;", "uses Date; the caller brings clock, chance, files and locale"],
    ["const draw = Math.random();", "uses Math.random; take the seeded generator as an argument"],
    ['const draw = Math["random"]();', "uses Math other than as Math.name"],
    ["const { random } = Math;", "uses Math other than as Math.name"],
    ["const home = process.env.HOME;", "uses process; the caller brings clock, chance, files and locale"],
    ["const bytes = Buffer.from(text);", "uses Buffer; the caller brings clock, chance, files and locale"],
    ["console.log(pace);", "uses console; the caller brings clock, chance, files and locale"],
    ["const text = fs.readFileSync(path);", "uses fs; the caller brings clock, chance, files and locale"],
    ["const width = window.innerWidth;", "uses window, which belongs to the browser"],
    ["document.title = name;", "uses document, which belongs to the browser"],
    ["const text = new Intl.NumberFormat();", "uses Intl; the caller brings clock, chance, files and locale"],
    ["const text = load.toLocaleString();", "uses toLocaleString, which depends on the locale"],
    ["names.sort((a, b) => a.localeCompare(b));", "uses localeCompare, which depends on the locale"],
    [
      "const now = globalThis.Date.now();",
      "uses globalThis; the caller brings clock, chance, files and locale",
    ],
    ["const now = Temporal.Now.instant();", "uses Temporal.Now; the caller brings the clock"],
    ["let best = 0;", '"best" can change at the top of the module; keep state in a value passed along'],
    [
      "export let best = 0;",
      '"best" can change at the top of the module; keep state in a value passed along',
    ],
    ["const seen = new Map();", '"seen" is an empty collection at the top of the module, to be filled'],
    ["const seen: string[] = [];", '"seen" is an empty collection at the top of the module, to be filled'],
  ])("refuses %s", (text, fault) => {
    expect(check(text)).toEqual([`compute/x.ts: ${fault}`]);
  });

  it.each([
    ["the word in a comment", "// Date and Math.random are not used here"],
    ["the word in a string", 'const label = "Date";'],
    ["a field of that name", "const opens = competition.window.opens;"],
    ["a field declared so", "type Competition = { readonly window: Opening; readonly document: string };"],
    ["a parameter of that name", "export function opens(window: Opening) { return window.opens; }"],
    ["let inside a function", "export function sum() { let total = 0; return total; }"],
    ["other mathematics", "const root = Math.sqrt(2);"],
    ["a table of constants", 'const names = new Map([["kg", 1]]);'],
  ])("allows %s", (_case, text) => {
    expect(check(text)).toEqual([]);
  });
});

describe("the check of names and exports", () => {
  it.each([
    ["compute/planAttempts.ts", "file names are kebab-case"],
    ["compute/warmUp/build.ts", "folder names are kebab-case"],
    ["components/the-tape.astro", "component names are PascalCase"],
    ["pages/StrategyPage.astro", "route names are kebab-case"],
    ["compute/pace.js", "code in src is written as .ts or .astro"],
    ["compute/index.ts", "is a barrel file; import from the file that defines the thing"],
  ])("refuses %s", (path, fault) => {
    expect(checkShape(file(path))).toEqual([`${path}: ${fault}`]);
  });

  it.each([
    "compute/lifting/best-ladder.ts",
    "components/Tape.astro",
    "pages/index.astro",
    "pages/404.astro",
    "pages/b/[id].astro",
    "pages/b/[id].pdf.ts",
    "pages/[...path].ts",
    "pages/strategy/[workout]/card-[size].png.ts",
    "content.config.ts",
  ])("allows %s", (path) => {
    expect(checkShape(file(path))).toEqual([]);
  });

  it.each(["export default function pace() {}", "export default 3;", "export { pace as default };"])(
    "refuses %s",
    (text) => {
      expect(checkShape(file("compute/pace.ts", text))).toEqual([
        "compute/pace.ts: has a default export; export by name",
      ]);
    },
  );

  it("refuses a file that only hands on others, whatever its name", () => {
    expect(checkShape(file("models/all.ts", `export * from "./plan.ts";`))).toEqual([
      "models/all.ts: is a barrel file; import from the file that defines the thing",
    ]);
  });
});
