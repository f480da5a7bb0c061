import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod";
import { readFrontMatter, readYaml } from "../../../src/reading/yaml/read.ts";
import { refuse, tellNotice, tellRefusal } from "../../../src/reading/yaml/refuse.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";

const load = z.string().transform((text, ctx) => {
  if (text.endsWith("#")) {
    const pounds = `${text.slice(0, -1)} lb`;
    tellNotice(ctx, {
      problem: "# is read as pounds",
      remedy: `Write \`${pounds}\` to be sure.`,
      readAs: pounds,
    });
    return z.NEVER;
  }
  if (/ (kg|lb)$/.test(text)) return text;
  return refuse(ctx, {
    found: text.slice(2),
    problem: "the unit is missing",
    remedy: "Add kg or lb.",
    offset: 2,
  });
});
const schema = z.strictObject({
  name: z.string().describe("the name"),
  level: z.enum(["new", "regular"]).optional(),
  count: z.number().min(1).optional(),
  loads: z.array(z.union([load, z.strictObject({ load })])).optional(),
  lifts: z.record(z.string(), load).optional(),
});
const read = (text: string, scalars: "typed" | "text" = "typed") =>
  readYaml({ path: "a.yaml", text }, schema, { scalars });
const told = (text: string): readonly string[] => {
  const result = read(text);
  return result.ok ? result.notices.map(sayFault) : result.faults.map(sayFault);
};
const say = (place: string, ...lines: string[]): string => [`a.yaml:${place}`, ...lines].join("\n");

describe("reading a YAML file", () => {
  it("gives the checked value", () => {
    expect(read("name: Ada\nlifts:\n  squat: 80 kg\n")).toEqual({
      ok: true,
      value: { name: "Ada", lifts: { squat: "80 kg" } },
      notices: [],
    });
  });

  it("takes a file with byte order mark and Windows line ends", () => {
    expect(read("\uFEFFname: Ada\r\ncount: 2\r\n")).toMatchObject({
      ok: true,
      value: { name: "Ada", count: 2 },
    });
  });

  it("keeps a decimal comma between braces together", () => {
    expect(read("name: Ada\nlifts: {squat: 82,5 kg, press: 40,5 kg}")).toMatchObject({
      ok: true,
      value: { lifts: { squat: "82,5 kg", press: "40,5 kg" } },
    });
  });

  it("does not join what a comma and a space part", () => {
    expect(told("name: Ada\nlifts: {squat: 82, 5 kg}")).toHaveLength(2);
  });

  it("hands on numbers as written when text is asked for", () => {
    const texts = z.strictObject({ time: z.string(), empty: z.null(), quoted: z.string() });
    const text = "time: 7.10\nempty:\nquoted: ''";
    expect(readYaml({ path: "a.yaml", text }, texts, { scalars: "text" })).toMatchObject({
      ok: true,
      value: { time: "7.10", empty: null, quoted: "" },
    });
  });

  it("takes a lone hyphen or question mark for an empty entry", () => {
    const texts = z.strictObject({ a: z.null(), b: z.null(), c: z.number() });
    expect(readYaml({ path: "a.yaml", text: "a: -\nb: ?  # not tested\nc: 3" }, texts)).toMatchObject({
      ok: true,
      value: { a: null, b: null, c: 3 },
    });
  });

  it("tells all faults at once, each at its own place", () => {
    expect(told("name: 3\nlevle: new\nlevel: regulr\ncount: 0\nloads: [85 kg, 90]\n")).toEqual([
      say(
        "1:7: Fault",
        "  found    3",
        "  wrong    `name` must be a text",
        "  allowed  the name",
        "  to do    Write a text, in quotes if it looks like a number.",
      ),
      say(
        "3:8: Fault",
        "  found    regulr",
        "  wrong    this is not one of the words possible for `level`",
        "  allowed  new, regular",
        "  nearest  regular",
        "  to do    Write one of the words allowed.",
      ),
      say(
        "4:8: Fault",
        "  found    0",
        "  wrong    `count` must be at least 1",
        "  to do    Write at least 1.",
      ),
      say(
        "5:16: Fault",
        "  found    90",
        "  wrong    entry 2 of `loads` cannot be read",
        "  to do    Write it in one of the forms allowed.",
      ),
      say(
        "2:1: Fault",
        "  found    levle",
        "  wrong    no entry has this name",
        "  allowed  name, level, count, loads, lifts",
        "  nearest  level",
        "  to do    Write `level:`.",
      ),
    ]);
  });

  it("says what is missing, in the file and in an entry", () => {
    expect(told("loads: [{}]")).toEqual([
      say("1:1: Fault", "  wrong    `name` is missing", "  allowed  the name", "  to do    Add `name`."),
      say(
        "1:9: Fault",
        "  wrong    `load` is missing",
        "  allowed  a text",
        "  to do    Add `load`, a text.",
      ),
    ]);
  });

  it("points at the words inside a text", () => {
    expect(told('name: Ada\nlifts:\n  squat: "5x85"')).toEqual([
      say("3:13: Fault", "  found    85", "  wrong    the unit is missing", "  to do    Add kg or lb."),
    ]);
  });

  it("says that an empty file is empty", () => {
    expect(told("# nothing yet\n")).toEqual([
      say(
        "1:1: Fault",
        "  wrong    nothing is written here yet",
        "  to do    Write a group of entries: one indented `name: value` a line, or `{name: value, name: value}`.",
      ),
    ]);
  });

  it("tells how a doubtful text was read, and reads on as if the clear one stood there", () => {
    expect(read("name: Ada\nloads: [315#, {load: 225#}]")).toEqual({
      ok: true,
      value: { name: "Ada", loads: ["315 lb", { load: "225 lb" }] },
      notices: [
        {
          place: { file: "a.yaml", line: 2, column: 9 },
          found: "315#",
          problem: "# is read as pounds",
          remedy: "Write `315 lb` to be sure.",
          severity: "notice",
        },
        {
          place: { file: "a.yaml", line: 2, column: 22 },
          found: "225#",
          problem: "# is read as pounds",
          remedy: "Write `225 lb` to be sure.",
          severity: "notice",
        },
      ],
    });
  });

  it("still tells faults that stand behind a doubtful text", () => {
    const behind = schema.refine((value) => value.level !== undefined, { message: "a level is needed" });
    const result = readYaml({ path: "a.yaml", text: "name: Ada\nlifts: {squat: 315#}" }, behind);
    expect(result.ok ? [] : result.faults.map((fault) => fault.problem)).toEqual(["a level is needed"]);
  });

  it("never throws, whatever is written", () => {
    const signs = fc.constantFrom(
      "name",
      "loads",
      ":",
      " ",
      "\n",
      "-",
      "[",
      "]",
      "{",
      "}",
      '"',
      "'",
      "&a",
      "*a",
      "5,5 kg",
      "|",
      "\t",
      "?",
      "#",
      "!",
      "---\n",
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(signs).map((parts) => parts.join("")),
        ),
        (text) => {
          for (const scalars of ["typed", "text"] as const)
            expect(typeof read(text, scalars).ok).toBe("boolean");
          expect(readFrontMatter({ path: "a.mdx", text: `---\n${text}` }, schema).bodyLine).toBeGreaterThan(
            0,
          );
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe("an entry of more signs than anybody needs", () => {
  it("is a fault at its place, and is not read any further", () => {
    const text = `a: x\nb: "${"1-".repeat(1500)}"`;
    expect(readYaml({ path: "a.yaml", text }, z.record(z.string(), z.string()))).toEqual({
      ok: false,
      faults: [
        {
          place: { file: "a.yaml", line: 2, column: 4 },
          found: `"${"1-".repeat(19)}1…`,
          problem: "this text has 3000 signs",
          remedy: "Keep an entry under 2000 signs.",
          severity: "fault",
        },
      ],
    });
  });
});

describe("broken YAML", () => {
  it.each([
    [
      "name: Ada: the first",
      "1:7",
      "there are two colons on this line",
      'Put the text after the first colon in quotes: `name: "text: more text"`.',
    ],
    [
      "name: Ada\ncount:2\nlevel: new",
      "2:1",
      "the space after the colon is missing",
      "Write `name: value`, with a space after the colon.",
    ],
    [
      "name: *Ada*",
      "1:7",
      "a text that begins with * is taken for a reference",
      'Put it in quotes: "*Ada*".',
    ],
    [
      "name: &Ada",
      "1:7",
      "a text that begins with & is taken for a reference",
      'Put it in quotes: "&Ada ...".',
    ],
    ["name: !Ada x", "1:7", "a text that begins with ! is taken for a type", "Put the whole text in quotes."],
    ["name: @Ada", "1:7", "a text cannot begin with this sign", "Put the whole text in quotes."],
    [
      "loads:\n\t- 3 kg",
      "2:1",
      "the line begins with a tab",
      "Use spaces instead of tabs at the beginning of lines.",
    ],
    [
      "name: 'Ada\ncount: 2",
      "2:9",
      "a closing quote, bracket, colon or comma is missing before this place",
      "Look at the line, and the ones above it, for a quote or bracket that is opened and not closed.",
    ],
    [
      "name: Ada\n---\nname: Bo",
      "2:1",
      "a line of three hyphens begins a second document here",
      "Keep one document per file: delete the line `---` or make two files.",
    ],
    [
      "loads: - 3 kg",
      "1:8",
      "a list cannot begin on the line of its name",
      "Begin the list on the next line, one `- entry` a line, or leave out the hyphen.",
    ],
    [
      "name: Ada\nname: Bo",
      "2:1",
      '"name" already stands on line 1',
      "Keep one of the two lines, or join them.",
    ],
    [
      "? [1]\n: 2",
      "1:3",
      "this cannot be the name of an entry",
      "Write a word, a colon and a space: `name: value`.",
    ],
    [
      'name: "a\\qb"',
      "1:9",
      "after a backslash in double quotes only certain letters may stand",
      "Write the backslash twice, or use single quotes.",
    ],
  ])("%j is told at %s in plain words", (text, place, problem, remedy) => {
    const message = told(text)[0] ?? "";
    expect(message).toContain(`a.yaml:${place}: Fault`);
    expect(message).toContain(`\n  wrong    ${problem}\n  to do    ${remedy}`);
  });
});

describe("broken lines in plain words", () => {
  it.each([
    [
      "loads:\n  - 3 kg\n name: Ada",
      "this line is indented in a way that does not fit the lines above it",
      "Begin lines that belong together at the same column, with spaces.",
    ],
    [
      "name: }",
      "this cannot be read here",
      "Write each entry as `name: value`, with a space after the colon, and put texts with signs such as : # [ ] { } in quotes.",
    ],
    [
      "loads: [\n  - 3 kg\n]",
      "inside brackets or braces there can be no lines of the form `name: value` below one another",
      "Write everything between the brackets with commas, or leave the brackets out.",
    ],
    ["__proto__: 3", '"__proto__" is no name for an entry', "Choose another name."],
  ])("%j", (text, problem, remedy) => {
    expect(told(text).join("\n")).toContain(`  wrong    ${problem}\n  to do    ${remedy}`);
  });
});

describe("a value that a schema refuses in its own way", () => {
  const odd = z.strictObject({
    step: z.number().multipleOf(5).optional(),
    code: z
      .string()
      .regex(/^[a-z]+$/)
      .describe("small letters")
      .optional(),
    names: z.record(z.string().min(2), z.number()).optional(),
    most: z.array(z.number()).max(2).optional(),
    over: z.number().gt(3).optional(),
    both: z.union([z.number(), z.boolean()]).optional(),
    word: z.literal("yes").optional(),
  });
  const tellOdd = (text: string): readonly string[] => {
    const result = readYaml({ path: "a.yaml", text }, odd);
    return result.ok ? [] : result.faults.map(sayFault);
  };

  it.each([
    ["step: 7", "1:7", "7", "`step` must be a multiple of 5", undefined, "Write a multiple of 5."],
    [
      "code: A1",
      "1:7",
      "A1",
      "`code` is not written as it should be",
      "small letters",
      "Write it in the form allowed.",
    ],
    ["names: {a: 1}", "1:9", "a", "`a` must have at least 2 letters", undefined, "Write at least 2 letters."],
    [
      "most: [1, 2, 3]",
      "1:7",
      "[1, 2, 3]",
      "`most` must have at most 2 entries",
      undefined,
      "Write at most 2 entries.",
    ],
    [
      "over: 3",
      "1:7",
      "3",
      "`over` must be at least 3 and not 3 itself",
      undefined,
      "Write at least 3 and not 3 itself.",
    ],
    [
      "both: text",
      "1:7",
      "text",
      "`both` cannot be read",
      undefined,
      "Write it in one of the forms allowed.",
    ],
    ["word:", "1:6", undefined, "`word` is missing", "yes", "Add `word` with one of these words."],
    ["step: [1]", "1:7", "[1]", "`step` must be a number", undefined, "Write a number."],
  ])("%j", (text, place, found, problem, allowed, remedy) => {
    const lines = [
      found === undefined ? [] : [`  found    ${found}`],
      [`  wrong    ${problem}`],
      allowed === undefined ? [] : [`  allowed  ${allowed}`],
      [`  to do    ${remedy}`],
    ].flat();
    expect(tellOdd(text)).toEqual([[`a.yaml:${place}: Fault`, ...lines].join("\n")]);
  });

  it("is told once more when a notice renames its entry", () => {
    const renaming = z.record(z.string(), z.string()).transform((written, ctx) => {
      for (const [name, value] of Object.entries(written)) {
        if (name === "BS")
          tellNotice(ctx, {
            path: [name],
            at: "name",
            problem: "read as squat",
            readAs: "squat",
            remedy: "Write squat.",
          });
        if (value === "bad") tellRefusal(ctx, { path: [name], problem: "is bad", remedy: "Mend it." });
      }
      return written;
    });
    const file = { path: "a.yaml", text: "BS: bad" };
    const result = readYaml(file, renaming);
    expect(
      result.ok ? [] : result.faults.map(({ place, found }) => [place.line, place.column, found]),
    ).toEqual([[1, 5, "bad"]]);
  });
});

describe("reading front matter", () => {
  const file = (text: string) => ({ path: "a.mdx", text });

  it("gives value, body and the line the body begins on", () => {
    expect(readFrontMatter(file("---\nname: Ada\n---\n\n# Go\n"), schema)).toEqual({
      ok: true,
      value: { name: "Ada" },
      notices: [],
      body: "\n# Go\n",
      bodyLine: 4,
    });
  });

  it("counts lines of faults from the top of the file", () => {
    const result = readFrontMatter(file("---\r\nname: Ada\r\nlevle: new\r\n---\r\ntext"), schema);
    expect(result.ok ? [] : result.faults.map((fault) => fault.place.line)).toEqual([3]);
  });

  it("says how to open and to close it", () => {
    const opened = readFrontMatter(file("name: Ada\n"), schema);
    const closed = readFrontMatter(file("---\nname: Ada\n"), schema);
    expect([opened, closed].flatMap((result) => (result.ok ? [] : result.faults.map(sayFault)))).toEqual([
      [
        "a.mdx:1:1: Fault",
        "  found    name: Ada",
        "  wrong    the file does not begin with a line of three hyphens",
        "  to do    Write `---` on the first line, the entries below it, and `---` again before the text.",
      ].join("\n"),
      [
        "a.mdx:1:1: Fault",
        "  found    ---",
        "  wrong    the entries at the top are not closed",
        "  to do    Write a line `---` between the entries and the text.",
      ].join("\n"),
    ]);
  });
});
