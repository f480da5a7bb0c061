import { describe, expect, it } from "vitest";
import { sayFault } from "../../src/reading/say-fault.ts";
import { readCoachText } from "../../src/site/read-coach-text.ts";
import { sampleMovements } from "../support/sample-movements.ts";

const path = "content/workouts/kiln-road.mdx";
/** The entries at the top take three lines, so the text begins on line 4. */
const top = '---\ntitle: "a <b {"\n---\n';

const context = {
  divisions: ["women", "men", "masters women"],
  parts: ["A", "B"],
  movements: sampleMovements,
  hasReader: true,
};

function said(text: string): readonly string[] {
  const read = readCoachText({ path, text: top + text }, context);
  return read.ok ? [] : read.faults.map(sayFault);
}

describe("the words in the text of a workout", () => {
  it.each([
    'Open at <Load of="deadlift" share="70%" />, not more.',
    'Hold <Split round="3" part="A"/> and <Split round={2} />; <Target />; <Half />; <Share of="thruster" />; <Sets of="pull-ups" round="2" />.',
    'Then <FirstLift part="b" />.',
    '<Only level="new, regular" division="masters women" unit="kg" sex="female" habit="starts-too-fast">\n\nTake *your* time.\n\n</Only>',
    '<Except limit="shoulder, pregnancy, overhead">kip</Except> <Only limit="any">ask</Only>',
    "<Withheld>No lift is planned for you.</Withheld>",
    "| a | b |\n|---|--:|\n| 1 | 2 |\n\n<details open>\n<summary>More</summary>\n\ntext\n\n</details>",
    'See [the rules](https://example.org/rules.pdf "rules") or <a href="mailto:desk@example.org">write</a>.',
    "{/* not shown */}\n\n4 < 5, 5'30\" -- and 70% of it.",
    "",
  ])("may be %j", (text) => {
    expect(said(text)).toEqual([]);
  });

  it("are told with the nearest when unknown", () => {
    expect(said('First\n\nOpen at <Laod of="deadlift" share="70%" />.')).toEqual([
      `${path}:6:9: Fault
  found    <Laod>
  wrong    no word has this name
  allowed  <Load> <Share> <Target> <Split> <Half> <Sets> <FirstLift> <Only> <Except> <Withheld>
  nearest  <Load>
  to do    Write one of the words allowed, or &lt; for a sign that is to be shown.`,
    ]);
  });

  it("are told when they ask for a share of nothing", () => {
    expect(said('Open at <Load of="deadlift" share="0%" />.')).toEqual([
      `${path}:4:29: Fault
  found    share="0%"
  wrong    a share of nothing is no load
  allowed  a share from 1% to 200%
  to do    Write the share of the best lift that is meant, such as \`70%\`.`,
    ]);
  });

  it("are told when they name a round to which nobody comes", () => {
    const rounds = new Map([
      ["a", 5],
      ["b", 1],
    ]);
    const text =
      'At <Split round="5" part="a" />, <Split round="99" /> and <Sets of="thruster" part="b" round="2" />.';
    const read = readCoachText({ path, text: top + text }, { ...context, rounds });
    expect(read.ok ? [] : read.faults.map(sayFault)).toEqual([
      `${path}:4:41: Fault
  found    round="99"
  wrong    nobody comes to round 99 of the workout
  allowed  a round from 1 to 5
  to do    Write a round that is done.`,
      `${path}:4:88: Fault
  found    round="2"
  wrong    nobody comes to round 2 of part b
  allowed  1, the only round
  to do    Write a round that is done.`,
    ]);
  });

  it("are told when they name a lift nobody knows", () => {
    expect(said('Open at <Load\n  of="dedlift" share="70%" />.')).toEqual([
      `${path}:5:3: Fault
  found    of="dedlift"
  wrong    no movement has this name
  nearest  deadlift
  to do    Write the name of a movement, or add the movement to content/movements.`,
    ]);
  });

  it("are told when they ask for numbers of a movement nobody does in the workout", () => {
    const read = readCoachText(
      { path, text: `${top}It is <Share of="deadlift" /> of your best.` },
      { ...context, done: new Set(["thruster"]) },
    );
    expect(read.ok ? [] : read.faults.map(sayFault)).toEqual([
      `${path}:4:14: Fault
  found    of="deadlift"
  wrong    nobody does this movement in the workout, so there is no number of it to show
  allowed  thruster
  to do    Write a movement of the workout, or say it in words of your own.`,
    ]);
  });

  it("are told when an attribute is missing, unknown or of no use", () => {
    expect(said('<Load of="deadlift" percent="70%" />')).toEqual([
      `${path}:4:21: Fault
  found    percent="70%"
  wrong    <Load> has no attribute of this name
  allowed  of, share
  to do    Leave the attribute out.`,
      `${path}:4:1: Fault
  found    <Load>
  wrong    <Load> needs share: share of the best lift today
  to do    Write <Load share="..." />.`,
    ]);
    expect(said('<Load of="deadlift" share="70" />')).toEqual([
      `${path}:4:21: Fault
  found    share="70"
  wrong    the percent sign is missing
  allowed  a share such as \`70%\`
  to do    Write \`70%\` if that is meant.`,
    ]);
    expect(said("<Split round />")).toEqual([
      `${path}:4:8: Fault
  found    round
  wrong    the value of "round" is missing or computed
  to do    Write it in quotes: round="...".`,
    ]);
    expect(said("<Split round={n} />")).toHaveLength(1);
    expect(said("<Split {...all} />")[0]).toContain(
      '  wrong    attributes cannot be computed\n  to do    Write each attribute out: name="value".',
    );
  });

  it("are told when a level, division or part does not exist here", () => {
    expect(said('<Only level="beginner">a</Only>')).toEqual([
      `${path}:4:7: Fault
  found    level="beginner"
  wrong    "beginner" is not among what can be named here
  allowed  new, regular, competitor, elite
  to do    Write names that are allowed, with commas between them.`,
    ]);
    expect(said('<Only division="woman">a</Only>')[0]).toContain("  nearest  women\n");
    expect(said('<Target part="C" />')[0]).toContain("  allowed  A, B\n");
    expect(said('<Only limit="">a</Only>')[0]).toContain("  wrong    nothing is named here\n");
  });

  it("are told when text is missing inside, or stands where none can", () => {
    expect(said('<Target part="A">9:00</Target>')).toEqual([
      `${path}:4:1: Fault
  found    <Target>
  wrong    <Target> shows a value and takes no text
  to do    Write <Target ... /> with a stroke before the end, and no closing word.`,
    ]);
    expect(said('<Only level="new" />')).toEqual([
      `${path}:4:1: Fault
  found    <Only>
  wrong    <Only> stands around the text it is about, and there is none
  to do    Write <Only ...>, the text, and </Only>.`,
    ]);
    expect(said("<Only>a</Only>")).toEqual([
      `${path}:4:1: Fault
  found    <Only>
  wrong    <Only> does not say for whom
  allowed  level, division, unit, sex, habit, limit
  to do    Add at least one attribute, such as <Only level="new">.`,
    ]);
  });
});

describe("a text that cannot be read", () => {
  it("is told at its place: a sign < that begins nothing", () => {
    expect(said("ok\n\nhold <5 W")).toEqual([
      `${path}:6:6: Fault
  found    <5 W
  wrong    the sign < begins a word such as <Load ... />, and none follows here
  to do    Write "under" or &lt; for the sign itself, and the values of attributes in quotes.`,
    ]);
  });

  it("is told when a word is not closed, or closed without being open", () => {
    expect(said('<Only level="new">\n\ntext')).toEqual([
      `${path}:4:1: Fault
  found    <Only level="new">
  wrong    <Only> is opened and never closed
  to do    Write </Only> behind the text it is about, or <Only ... /> if there is none.`,
    ]);
    expect(said("text\n\n</Only>")[0]).toContain(
      "  wrong    </Only> closes something that is not open here\n",
    );
  });

  it("is told when braces are not closed", () => {
    expect(said("a { b")[0]).toContain(
      "  wrong    the sign { begins program text, which is not closed or cannot be read\n",
    );
  });
});

describe("what a text may not hold", () => {
  it.each([
    ["{1 + 1}", "what stands between braces is read as program text"],
    ["a {athlete.name} b", "what stands between braces is read as program text"],
    ['import x from "y"', "a line that begins with import or export is read as program text"],
    ["![floor](plan.png)", "a picture would lie outside the lock or on another server"],
    ["<script>alert(1)</script>", "no word has this name"],
    ['<img src="https://example.org/a.png" />', "no word has this name"],
    ['<p style="color: red">a</p>', "<p> has no attribute of this name"],
    [
      '<a href="javascript:alert(1)">a</a>',
      "a link from a brief leads nowhere unless it is written out in full",
    ],
    ["[a](../other)", "a link from a brief leads nowhere unless it is written out in full"],
  ])("is %s", (text, problem) => {
    expect(said(text).join("\n")).toContain(`  wrong    ${problem}\n`);
  });
});
