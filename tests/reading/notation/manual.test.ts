import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { checkWorkout } from "../../support/workout-notation.ts";

const manual = readFileSync(new URL("../../../content/README.md", import.meta.url), "utf8");
const section = (heading: string): string => {
  const [, after = ""] = manual.split(`\n### ${heading}\n`);
  return after.split("\n### ")[0] ?? "";
};

/** The code of the first column of every row of the table in a section. */
const firstColumn = (heading: string): readonly string[] =>
  section(heading)
    .split("\n")
    .filter((row) => row.startsWith("| `"))
    .flatMap((row) => [...(row.split("|")[1] ?? "").matchAll(/`([^`]+)`/g)].map((match) => match[1] ?? ""));

/** What is wrong with a workout, in words; nothing when it is sound. Notices are no fault. */
function wrong(yaml: string): string {
  const checked = checkWorkout(yaml);
  return checked.ok ? "" : sayFaults(checked.faults);
}

const indent = (text: string, by: number): string => text.replace(/^/gm, " ".repeat(by));
const quoted = (line: string): string => `"${line.replaceAll('"', '\\"')}"`;

describe("the manual's workouts", () => {
  const workouts = [...manual.matchAll(/```yaml workout\n([\s\S]*?)```/g)].map((match) => match[1] ?? "");

  it("are here", () => {
    expect(workouts.length).toBeGreaterThan(10);
  });

  it.each(workouts.map((text) => [/title: (.*)/.exec(text)?.[1] ?? "", text] as const))(
    "%s",
    (_title, text) => {
      expect(wrong(text)).toBe("");
    },
  );
});

describe("the manual's kinds of part", () => {
  it.each(firstColumn("The kind of a part"))("%s", (kind) => {
    const work: Readonly<Record<string, string>> = {
      "for time": "- 10 burpee",
      amrap: "- 10 burpee",
      "max load": "- 1 snatch",
      "on the clock": "- every 1:00, 16 rounds:\n    - 10 burpee",
    };
    const [name = ""] = kind.split(":");
    const open = kind.endsWith("open") ? "- every 1:00, 1 up by 1, or out:\n    - burpee" : work[name];
    // `1 snatch, 3 attempts` is a line, not a kind
    const text =
      work[name] === undefined
        ? `max load: no limit\nwork:\n  - ${kind}`
        : `${kind}\nwork:\n${indent(open ?? "", 2)}`;
    expect(wrong(text)).toBe("");
  });
});

describe("the manual's lines", () => {
  it.each([...firstColumn("Lines"), ...firstColumn("Rests")])("%s", (line) => {
    const inInterval = `on the clock: as written\nwork:\n  - every 3:00, 3 rounds:\n      - 3 burpee\n      - ${quoted(line)}\n`;
    const inLadder = `for time:\nwork:\n  - 21-15-9:\n      - burpee\n      - ${quoted(line)}\n`;
    const inOpenLadder = `amrap: 9:00\nwork:\n  - 3 up by 3:\n      - burpee\n      - ${quoted(line)}\n`;
    const [first, ...others] = [inLadder, inInterval, inOpenLadder]
      .map(wrong)
      .sort((one, two) => one.length - two.length);
    expect(first, others[0]).toBe("");
  });
});

describe("the manual's blocks", () => {
  const lines: Readonly<Record<string, string>> = {
    "every 1:30, until 70 goblet squat:": "- 6 cal ski\n- max goblet squat at 24 kg",
    "every 1:00, 5 rounds, in turn:": "- 10 burpee\n- 10 air squat",
    "0:40 on, 0:25 off, 6 rounds:": "- max burpee\n- max air squat",
  };
  const frames: readonly string[] = [
    "for time: cap 30:00",
    "amrap: 30:00",
    "on the clock: as written",
    "on the clock: open",
  ];

  it.each(firstColumn("Blocks"))("%s", (block) => {
    const inside = indent(lines[block] ?? "- 10 burpee\n- 20 air squat", 6);
    const results = frames.map((frame) => wrong(`${frame}\nwork:\n  - ${block}\n${inside}\n`));
    const afterDeadline = wrong(
      `for time:\nwork:\n  - by 1:00:\n      - 3 burpee\n  - ${block}\n${inside}\n`,
    );
    expect([...results, afterDeadline]).toContain("");
  });
});

describe("the manual's other entries", () => {
  it.each(firstColumn("Everything else a workout may say"))("%s", (entry) => {
    const maxLoad = `max load: 6:00\nwork:\n  - 1 snatch\n${entry}\n`;
    const forTime = `for time: cap 9:00\nwork:\n  - 100 burpee\n${entry}\n`;
    expect([wrong(maxLoad), wrong(forTime)]).toContain("");
  });

  it("and its scores are all read", () => {
    const scores = [...section("The score").matchAll(/`([a-z][a-z ]*)`/g)].map((match) => match[1] ?? "");
    expect(scores.length).toBeGreaterThanOrEqual(15);
    for (const score of scores) {
      const parts = [
        `for time:\nscore: ${score}\nwork:\n  - 3 rounds:\n      - 10 burpee`,
        `amrap: 9:00\nscore: ${score}\nwork:\n  - 10 burpee`,
        `amrap: 9:00\nscore: ${score}\nwork:\n  - max calories row`,
        `amrap: 9:00\nscore: ${score}\nwork:\n  - max metres row`,
        `max load: 9:00\nscore: ${score}\nwork:\n  - 1 snatch\n  - 1 clean`,
      ];
      expect(parts.map(wrong), score).toContain("");
    }
  });
});
