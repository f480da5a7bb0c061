import { describe, expect, it } from "vitest";
import type { CardWork } from "../../src/card/card-facts.ts";
import { workBlock } from "../../src/card/work-block.ts";
import type { WorkFrame } from "../../src/card/work-columns.ts";
import { parsedFont } from "../support/load-fonts.ts";

const upright: WorkFrame = {
  x: 72,
  width: 936,
  top: 300,
  bottom: 1294,
  align: "start",
  columns: 1,
  largest: 104,
  smallest: 34,
};
const wide: WorkFrame = {
  x: 60,
  width: 1080,
  top: 180,
  bottom: 602,
  align: "middle",
  columns: 2,
  largest: 110,
  smallest: 26,
};

const many: CardWork = {
  kind: "for time, cap 24:00",
  lines: [
    "750 m run, counts 1",
    "33 goblet squat at 24/16 kg",
    "27 toes-to-bar",
    "21 deadlift at 110/75 kg, tie-break",
    "39 box step-over to 60/50 cm",
    "15 hang power clean at 60/42.5 kg",
    "750 m run, counts 1",
  ],
};
const rounds: CardWork = { kind: "6:00, as many rounds as possible", lines: ["6 rounds:", "  10 sit-up"] };
const single: CardWork = { kind: "heaviest load, 9:00", lines: ["1 clean and jerk"] };

const words = (text: string): readonly string[] => text.split(/\s/);
const fonts = { regular: parsedFont(400), strong: parsedFont(600) };

describe.each([
  ["upright", upright],
  ["wide", wide],
] as const)("the work on a card, %s", (_shape, frame) => {
  it.each([
    ["many lines", [many]],
    ["two parts", [many, rounds]],
    ["one lift", [single]],
  ] as const)("%s: no word is broken, no line leaves its box or stands on another", (_what, work) => {
    const boxes = workBlock(work, "men / women", frame);
    const said = work.flatMap(({ kind, lines }) => [kind, ...lines.map((line) => line.trim())]);
    expect(boxes.flatMap(({ text }) => words(text))).toEqual([...said, "men / women"].flatMap(words));
    const lines = boxes.flatMap(({ text, y, ...box }) =>
      text.split("\n").map((line, at) => ({ ...box, line, y: y + at * box.size * 1.1 })),
    );
    for (const [at, { line, size, strong, x, y, width }] of lines.entries()) {
      const font = strong ? fonts.strong : fonts.regular;
      expect((font.layout(line).advanceWidth / font.unitsPerEm) * size, line).toBeLessThanOrEqual(width);
      expect(y + size, line).toBeLessThanOrEqual(frame.bottom);
      const under = lines.slice(at + 1).filter((other) => other.x < x + width && x < other.x + other.width);
      for (const other of under) expect(other.y - y, `${line} | ${other.line}`).toBeGreaterThan(size * 0.95);
    }
  });
});

describe("the wide card", () => {
  it("sets many lines in two columns, under their kind, with letters a sixth larger than in one", () => {
    const [one, two] = [
      workBlock([many], undefined, { ...wide, columns: 1 }),
      workBlock([many], undefined, wide),
    ];
    expect(new Set(two.slice(1).map(({ x }) => x)).size).toBe(2);
    expect((two[0]?.size ?? 0) / (one[0]?.size ?? 1)).toBeGreaterThan(7 / 6);
  });

  it("sets few lines under one another, as large as they go", () => {
    expect(workBlock([single], undefined, wide).map(({ x, size }) => [x, size])).toEqual([
      [60, 110],
      [60, 110],
    ]);
  });

  it("never parts what is indented from the line above it", () => {
    const block: CardWork = { kind: "for time", lines: Array.from({ length: 4 }, () => rounds.lines).flat() };
    const boxes = workBlock([block], undefined, wide).slice(1);
    const at = (index: number): number => ((boxes[index]?.x ?? 0) > 600 ? 2 : 1);
    expect(new Set(boxes.map((_, index) => at(index))).size).toBe(2);
    for (const index of [0, 2, 4, 6]) expect(at(index)).toBe(at(index + 1));
  });
});
