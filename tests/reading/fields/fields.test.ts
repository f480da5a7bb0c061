import { describe, expect, it } from "vitest";
import * as z from "zod";
import { readYaml } from "../../../src/reading/yaml/read.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";
import { known, listField } from "../../../src/reading/fields/list-field.ts";
import {
  bodyMassField,
  countField,
  heightField,
  metresField,
  numberField,
  timeField,
  yesNoField,
} from "../../../src/reading/fields/quantity-field.ts";
import { nameField, textField } from "../../../src/reading/fields/text-field.ts";
import { wordField } from "../../../src/reading/fields/word-field.ts";

const check = (field: z.ZodType, text: string): unknown => {
  const result = readYaml({ path: "a.yaml", text: `a: ${text}` }, z.strictObject({ a: field }), {
    scalars: "text",
  });
  if (!result.ok) return result.faults.map(sayFault).join("\n");
  const { a } = result.value;
  return result.notices.length > 0 ? { value: a, told: result.notices.map((notice) => notice.problem) } : a;
};
const fault = (...lines: string[]): string => ["a.yaml:1:4: Fault", ...lines].join("\n");

describe("a field for a quantity", () => {
  it.each([
    [metresField, "20 in", 0.508],
    [timeField, "7:32", 452],
    [heightField, "170 cm", 1.7],
    [bodyMassField, "63 kg", 63],
    [countField, "22", 22],
    [numberField, "0,85", 0.85],
    [numberField, "-4", -4],
    [yesNoField, "yes", true],
    [yesNoField, "No", false],
  ])("takes %#", (field, text, value) => {
    expect(check(field, text)).toBe(value);
  });

  it("hands on how a doubtful text was read", () => {
    expect(check(heightField, "1,70")).toEqual({
      value: 1.7,
      told: ["only metres are a height here; read as 1.70 m"],
    });
  });

  it("says what else to write", () => {
    expect(check(timeField, "7.32 min")).toBe(
      [
        "a.yaml:1:4: Question",
        "  found    7.32 min",
        "  because  this may be minutes and seconds, or minutes with a decimal",
        "  allowed  a time such as `7:32`, `7:05.4`, `1:04:10`, `59 s` or `12 min`",
        "  to do    Write `7:32` or `7:19.2`, whichever is meant.",
      ].join("\n"),
    );
    expect(check(yesNoField, "perhaps")).toBe(
      fault(
        "  found    perhaps",
        "  wrong    this is neither yes nor no",
        "  allowed  `yes` or `no`",
        "  to do    Write `yes` or `no`.",
      ),
    );
    expect(check(numberField, "some")).toBe(
      fault(
        "  found    some",
        "  wrong    this is not a number",
        "  allowed  a number such as `4` or `0.85`",
        "  to do    Write a number such as `4` or `0.85`.",
      ),
    );
    expect(check(numberField, "1,800")).toBe(
      [
        "a.yaml:1:4: Question",
        "  found    1,800",
        "  because  the sign in the number may group thousands or begin decimals",
        "  allowed  a number such as `4` or `0.85`",
        "  to do    Write `1800` or `1.8`, whichever is meant.",
      ].join("\n"),
    );
  });
});

describe("a field for a word", () => {
  const field = wordField(["starts-too-fast", "slow-transitions"] as const, { sprinter: "starts-too-fast" });

  it.each(["starts too fast", "starts-too-fast", "Starts too fast"])("takes %j", (text) => {
    expect(check(field, text)).toBe("starts-too-fast");
  });

  it.each([
    ["start too fast", "starts too fast"],
    ["sprinter", "starts too fast"],
  ])("proposes a word for %j", (text, nearest) => {
    expect(check(field, text)).toBe(
      fault(
        `  found    ${text}`,
        "  wrong    this is not one of the words possible here",
        "  allowed  starts too fast, slow transitions",
        `  nearest  ${nearest}`,
        `  to do    Write \`${nearest}\`.`,
      ),
    );
  });

  it("names all words where none is near", () => {
    expect(check(field, "lazy")).toBe(
      fault(
        "  found    lazy",
        "  wrong    this is not one of the words possible here",
        "  allowed  starts too fast, slow transitions",
        "  to do    Write one of the words allowed.",
      ),
    );
  });
});

describe("a field for a list", () => {
  const field = listField(countField, { split: true });

  it.each([
    ["[1, 2]", [1, 2]],
    ["3", [3]],
    ["1, 2, 3", [1, 2, 3]],
    ["none", []],
    ["", []],
    ["[]", []],
  ])("takes %j", (text, list) => {
    expect(check(field, text)).toEqual(list);
  });

  it("points at the entry, also where it is the only one", () => {
    expect(check(field, "one")).toBe(
      fault(
        "  found    one",
        "  wrong    this is not a number",
        "  allowed  a whole number such as `22`",
        "  to do    Write a whole number such as `22`.",
      ),
    );
  });
});

describe("an entry that may be unknown", () => {
  it.each(["", "?", "n/a", "-", "''"])("is left out by %j", (text) => {
    expect(check(known(bodyMassField), text)).toBeUndefined();
  });

  it("is taken where it is there", () => {
    expect(check(known(bodyMassField), "63 kg")).toBe(63);
  });
});

describe("a name", () => {
  it.each([
    ["Łukasz", "Łukasz"],
    ["يوسف", "يوسف"],
    ["美咲", "美咲"],
    ["O’Neill-Sørby ", "O’Neill-Sørby"],
    // written with a combining mark, kept composed
    ["Jose\u0301", "José"],
    // a mark that turns the direction of what follows
    ["Ada\u202E", "Ada"],
    ["Ada   Berg", "Ada Berg"],
  ])("%j is kept as %j", (text, name) => {
    expect(check(nameField, text)).toBe(name);
  });

  it.each([
    ['"\\t"', "the name is empty", "Write the name."],
    ['"A\\0"', "an invisible control sign stands in the name", "Type the name anew."],
    ["x".repeat(81), "the name is longer than 80 signs", "Write a shorter name."],
  ])("%j is refused", (text, problem, remedy) => {
    expect(check(nameField, text)).toContain(
      `  wrong    ${problem}\n  allowed  a name in any script\n  to do    ${remedy}`,
    );
  });

  it("differs from free text, which keeps its lines", () => {
    expect(check(textField, '"two\\n\\nlines "')).toBe("two\n\nlines");
  });
});
