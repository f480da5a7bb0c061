import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { FIXED_TABLES, MODEL_TABLES } from "../src/compute/model-tables.ts";
import { numbersIn } from "./support/check-constants.ts";
import { ARITHMETIC, METHOD } from "./support/method-numbers.ts";
import { isCode, readSources } from "./support/source-files.ts";

const files = readSources(fileURLToPath(new URL("../src/compute", import.meta.url))).filter(({ path }) =>
  isCode(path),
);
const allowed = [ARITHMETIC, METHOD].flatMap((list) =>
  Object.entries(list).flatMap(([path, names]) => names.map((name) => `${path} ${name}`)),
);

describe("the numbers of the model", () => {
  const found = files.filter(({ path }) => !path.endsWith("constants.ts")).flatMap(numbersIn);

  it("stand in constants files; only arithmetic and steps of a method stand with their function", () => {
    expect(found.filter((one) => !allowed.includes(one))).toEqual([]);
  });

  it("need every exception that is made", () => {
    expect(allowed.filter((one) => !found.includes(one))).toEqual([]);
  });

  it("are all printed: every constants file is in the tables, and no name twice", () => {
    const printed = [...MODEL_TABLES, ...FIXED_TABLES];
    expect(printed).toHaveLength(files.filter(({ path }) => path.endsWith("constants.ts")).length);
    for (const tables of [MODEL_TABLES, FIXED_TABLES]) {
      const names = tables.flatMap(({ constants }) => Object.keys(constants));
      expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
    }
  });
});

describe("the check of numbers", () => {
  const check = (text: string): readonly string[] => numbersIn({ path: "x.ts", text });

  it("tells a number by the name of what holds it", () => {
    expect(check("const LEAST = 0.93;\nfunction half(x: number) { return x / 2; }")).toEqual(["x.ts LEAST"]);
    expect(check("function ceiling(x: number) { return 1.4 * x; }")).toEqual(["x.ts ceiling"]);
  });

  it("lets none, one, halves, tens, units of time and what rounding needs be", () => {
    expect(check("const a = 0.5; const b = 3_600; const c = 1e-9; const d = 100;")).toEqual([]);
  });
});
