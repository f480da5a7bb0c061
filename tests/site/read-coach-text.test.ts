import { describe, expect, it } from "vitest";
import type { CoachText } from "../../src/models/coach-text.ts";
import { sayFault } from "../../src/reading/say-fault.ts";
import { readCoachText } from "../../src/site/read-coach-text.ts";
import { expectSavedText } from "../support/golden.ts";
import { sampleMovements } from "../support/sample-movements.ts";

const path = "content/workouts/kiln-road.mdx";
const context = { movements: sampleMovements, hasReader: true, parts: ["a"], divisions: ["men", "women"] };
const read = (body: string) => readCoachText({ path, text: `---\ntitle: x\n---\n${body}` }, context);

/** Everything a text shows: its words, the names of its elements, and all values of attributes. */
const shown = (text: CoachText): readonly string[] =>
  text.flatMap((piece) =>
    typeof piece === "string"
      ? [piece]
      : [piece.name, ...Object.values(piece.attributes).map(String), ...shown(piece.children)],
  );

const EVIL = 'require("fs").writeFileSync("/planted","")';

/** Texts that are programs where texts are run, and what they are hidden in. */
const PROGRAMS = [
  `{${EVIL}}`,
  `{/* */ ${EVIL} /* */}`,
  `{/* a */${EVIL}/* b */}`,
  `{/**/${EVIL}/**/}`,
  `{/* */ /* */}`,
  `{\n/* a */\n${EVIL}\n/* b */\n}`,
  `{/* */
${EVIL}
// */}`,
  `{// a\n${EVIL}\n/* b */}`,
  `{/*/ */ ${EVIL} /*/}`,
  "{}",
  "{ }",
  "{`${" + EVIL + "}`}",
  "a {`x`} b",
  "{...props}",
  "{(() => 1)()}",
  "{athlete.name}",
  "{process.env.RIGSHEET_SECRET}",
  "{globalThis}",
  "{1}",
  '{"text"}',
  "**bold {1 + 1} bold**",
  "# heading {1 + 1}",
  "- list {1 + 1}",
  "| a {1} | b |\n|---|---|\n| 1 | {2} |",
  "> {1 + 1}",
  "[a {1 + 1}](https://example.org)",
  "x[^1]\n\n[^1]: {1 + 1}",
  'import fs from "fs"',
  'import "data:text/javascript,0"',
  "export const x = 1",
  `export default (() => ${EVIL})()`,
  `export const a = ${EVIL}`,
  'export * from "fs"',
  `text\n\nexport const frontmatter = {layout: "x"}`,
  `<Load of={${EVIL}} share="70%" />`,
  "<Load of={`${1}`} share='70%' />",
  '<Load {...props} of="deadlift" share="70%" />',
  "<Only {...props}>a</Only>",
  `<Only level={${EVIL}}>a</Only>`,
  `<Only level="new">{${EVIL}}</Only>`,
  `<Only level="new">\n\n{/* */ ${EVIL} /* */}\n\n</Only>`,
  `<b title={${EVIL}}>a</b>`,
  `<b title="x" {...{}}>a</b>`,
  `<b onclick="${EVIL.replaceAll('"', "'")}">a</b>`,
  "<b set:html={1}>a</b>",
  '<b set:html="<script>1</script>">a</b>',
  "<b class:list={[1]}>a</b>",
  "<Fragment>a</Fragment>",
  "<>a</>",
  "<props.components.wrapper />",
  '<Astro.self text="a" />',
  "<constructor>a</constructor>",
  '<__proto__ a="b">a</__proto__>',
  "<toString />",
  "<script>1</script>",
  "<style>{`a{}`}</style>",
  '<iframe src="https://example.org"></iframe>',
  '<svg onload="1"></svg>',
  '<a href="javascript:1">a</a>',
  '<a href={"java" + "script:1"}>a</a>',
  "[a](javascript:1)",
  "[a][b]\n\n[b]: javascript:1",
  "[a](data:text/html,x)",
  "![a](https://example.org/a.png)",
];

describe("text that would be a program elsewhere", () => {
  it.each(PROGRAMS)("is refused, with its place: %j", (body) => {
    const text = read(`Before.\n\n${body}`);
    expect(text.ok).toBe(false);
    if (text.ok) return;
    for (const { place, remedy } of text.faults) {
      expect(place.file).toBe(path);
      expect(place.line).toBeGreaterThanOrEqual(6);
      expect(remedy).not.toBe("");
    }
  });

  it("is refused in words that say what is wrong, what may stand there and what to do", () => {
    const told = PROGRAMS.map((body) => {
      const text = read(body);
      return [body, ...(text.ok ? [] : text.faults.map(sayFault))].join("\n");
    });
    expectSavedText("refused-texts.txt", `${told.join("\n\n")}\n`);
  });

  it.each([
    ["---\nlayout: data:text/javascript,1\n---\n\nOn.", "layout: data:text/javascript,1"],
    ["+++\nlayout = 1\n+++\n\nOn.", "+++\nlayout = 1\n+++"],
    ["`{1 + 1}` and \\{1 + 1}", "{1 + 1}"],
    ["```js\nimport fs from 'fs'\n```", "import fs from 'fs'\n"],
    ["    import fs", "import fs"],
    // A comment ends where its first end sign stands.
    [`a {/*/ ${EVIL} /*/} b`, "a  b"],
    ["a <!-- b", undefined],
    ["${1 + 1}", undefined],
  ])("is words where it is quoted, or refused: %j", (body, words) => {
    const text = read(body);
    expect(text.ok).toBe(words !== undefined);
    if (text.ok) expect(shown(text.value).join("")).toContain(words);
  });
});

describe("a text", () => {
  it("is a tree of words, elements and the reader's own numbers", () => {
    const text = read('Open at *once* with <FirstLift part="a" /> {/* not shown */}.\n\n| a |\n|--:|\n| 1 |');
    if (!text.ok) throw new Error("refused");
    expect(text.value[0]).toEqual({
      name: "p",
      attributes: {},
      children: [
        "Open at ",
        { name: "em", attributes: {}, children: ["once"] },
        " with ",
        { name: "FirstLift", attributes: { part: "a" }, children: [] },
        " ",
        ".",
      ],
    });
    expect(JSON.stringify(text.value)).toContain('{"name":"td","attributes":{"align":"right"}');
  });

  it("has no ids but those of its notes, which begin as no id of the page does", () => {
    const text = read("## Remember\n\n## Forget\n\nx[^1]\n\n[^1]: note");
    if (!text.ok) throw new Error("refused");
    const ids = [...JSON.stringify(text.value).matchAll(/"id":"([^"]*)"/g)].map(([, id]) => id);
    expect(ids).toEqual(["text-fnref-1", "text-fn-1"]);
  });

  it("may be empty, and is not read where the entries above it are not closed", () => {
    expect(read("")).toEqual({ ok: true, value: [], notices: [] });
    expect(readCoachText({ path, text: "---\ntitle: {1 + 1}\n" }, context)).toEqual({
      ok: true,
      value: [],
      notices: [],
    });
  });

  it("of a library file is in general terms", () => {
    const library = { movements: sampleMovements, hasReader: false };
    const at = "content/movements/kettle-bow.mdx";
    expect(readCoachText({ path: at, text: "---\nname: x\n---\nHold <Half />." }, library)).toEqual({
      ok: false,
      faults: [
        {
          place: { file: at, line: 4, column: 6 },
          found: "<Half>",
          problem: "words with a reader's own numbers are shown in the texts of workouts alone",
          remedy: "Say it in general terms here.",
          severity: "fault",
        },
      ],
    });
  });
});
