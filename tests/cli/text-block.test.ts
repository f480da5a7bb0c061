import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { columns, columnsOf, edges, heading, WIDTH, wrap } from "../../src/cli/text-block.ts";

describe("the width of a text", () => {
  it("counts letters, not the marks on them: Đặng has four, so has Ňňňň taken apart", () => {
    expect(columnsOf("Đặng")).toBe(4);
    expect(columnsOf("Ňňňň".normalize("NFD"))).toBe(4);
    expect(columnsOf("Đặng".normalize("NFD"))).toBe(4);
  });
});

describe("wrapping a text", () => {
  it("breaks between words and hangs further lines", () => {
    expect(wrap("one two three four", 2, 4, 11)).toEqual(["  one two", "    three", "    four"]);
  });

  it("keeps together what a no-break space joins, and writes it as a space", () => {
    expect(wrap("rest 6\u00a0s each", 0, 0, 8)).toEqual(["rest 6 s", "each"]);
    expect(wrap("then 66\u00a0s each", 0, 0, 8)).toEqual(["then", "66 s", "each"]);
  });

  it("lets a word stand alone that is longer than a line", () => {
    expect(wrap("a verylongword b", 0, 0, 5)).toEqual(["a", "verylongword", "b"]);
  });

  it("never writes a line wider than the terminal, whatever the words", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1, maxLength: 30 })), (words) => {
        const lines = wrap(words.join(" "), 2, 6);
        expect(lines.every((line) => columnsOf(line) <= WIDTH)).toBe(true);
      }),
    );
  });

  it("gives no line for no text", () => {
    expect(wrap("  ")).toEqual([]);
  });
});

describe("columns", () => {
  it("stand under one another, numbers on the right, and the last is wrapped", () => {
    expect(
      columns(
        [
          ["1", "9:30", "up"],
          ["12", "10:00", "down"],
        ],
        ["left", "right"],
      ),
    ).toEqual(["  1    9:30  up", "  12  10:00  down"]);
    const [first, second] = columns([["at", `${"word ".repeat(20)}end`]], ["left"]);
    expect(first).toMatch(/^ {2}at {2}word/);
    expect(second).toMatch(/^ {6}word/);
  });

  it("keep their place where a cell is missing", () => {
    expect(
      columns(
        [
          ["", "b"],
          ["aa", "c"],
        ],
        ["left"],
      ),
    ).toEqual(["      b", "  aa  c"]);
  });
});

describe("a heading and two edges", () => {
  it("reach to the edge of the terminal", () => {
    expect(columnsOf(heading("Warm-up"))).toBe(WIDTH);
    expect(columnsOf(edges("Kiln Road", "Đặng Thu Hà")[0] ?? "")).toBe(WIDTH);
  });

  it("go below one another when both do not fit", () => {
    expect(edges("a".repeat(50), "b".repeat(50))).toEqual(["a".repeat(50), "b".repeat(50)]);
  });
});
