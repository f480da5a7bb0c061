import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkProse } from "./support/check-prose.ts";
import { isCode, readSources } from "./support/source-files.ts";

describe("the computation", () => {
  const told = readSources(fileURLToPath(new URL("../src/compute", import.meta.url)))
    .filter(({ path }) => isCode(path) && !path.endsWith("constants.ts"))
    .flatMap(checkProse);

  it("says nothing in words", () => {
    expect(told).toEqual([]);
  });
});

describe("the check of prose", () => {
  const check = (text: string): readonly string[] => checkProse({ path: "x.ts", text });

  it("tells a sentence, in one string or around values", () => {
    expect(check(`const why = "the bar is too heavy";`)).toEqual([
      `x.ts: says "the bar is too heavy"; give the reason as a kind and its numbers, wording/ says it`,
    ]);
    expect(check("const why = `part ${name} has ${n} rounds`;")).toHaveLength(1);
    expect(check("const why = `no pace of ${name}`;")).toHaveLength(1);
  });

  it("lets kinds, keys, units and what developers read be", () => {
    expect(
      check(`const kind = "stopped-by-cap"; const of = "kettlebell swing"; const key = \`\${a}|\${b}\`;`),
    ).toEqual([]);
    expect(check(`throw new RangeError("loads must go up");`)).toEqual([]);
    expect(
      check(`const c = { value: 1, does: "least chance of the first load", source: "trade rule of thumb" };`),
    ).toEqual([]);
  });
});
