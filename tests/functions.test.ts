import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkFunctions } from "./support/check-functions.ts";
import { isCode, readSources } from "./support/source-files.ts";

describe("the functions of src", () => {
  it("have at most 60 lines and 5 parameters", () => {
    const files = readSources(fileURLToPath(new URL("../src", import.meta.url))).filter(({ path }) =>
      isCode(path),
    );
    expect(files.length).toBeGreaterThan(0);
    expect(files.flatMap(checkFunctions)).toEqual([]);
  });
});

describe("the check of functions", () => {
  const told = (text: string): readonly string[] => checkFunctions({ path: "x.ts", text });
  const filled = (lines: number): string => "  x += 1;\n".repeat(lines);

  it("counts from the name to the closing brace, nested ones too", () => {
    expect(told(`/** Long\n\n remark */\nfunction add() {\n${filled(58)}}`)).toEqual([]);
    expect(told(`function add() {\n${filled(59)}}`)).toEqual([
      "x.ts: add has 61 lines; cut it into named steps of at most 60",
    ]);
    expect(told(`const all = () => {\n${filled(59)}};`)[0]).toContain("all has 61 lines");
    expect(told(`each((x) => {\n${filled(59)}});`)[0]).toContain("a function without a name has 61 lines");
    expect(told(`const o = { add() {\n${filled(59)}} };`)[0]).toContain("add has 61 lines");
  });

  it("counts parameters", () => {
    expect(told("const add = (a, b, c, d, e) => a;")).toEqual([]);
    expect(told("const add = (a, b, c, d, e, f) => a;")).toEqual([
      "x.ts: add has 6 parameters; what belongs together is one value, at most 5",
    ]);
  });

  it("sees into the front matter and the scripts of a component", () => {
    const text = `---\nconst add = (a, b, c, d, e, f) => a;\n---\n<script>\nfunction sum(a, b, c, d, e, f) { return a; }\n</script>`;
    expect(checkFunctions({ path: "X.astro", text })).toHaveLength(2);
  });
});
