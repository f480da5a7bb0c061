/** Columns of a terminal that everybody has. */
export const WIDTH = 80;

/** Width of a text in columns; marks above and below letters take none. */
export const columnsOf = (text: string): number =>
  Array.from(text.normalize("NFC").replace(/\p{M}/gu, "")).length;

/**
 * A text broken into lines of at most `width` columns between words; spaces that must not break do not. Further lines
 * stand as far in as `hang` says, the first as far as `indent`. A word longer than a line stands alone.
 */
export function wrap(text: string, indent = 0, hang = indent, width = WIDTH): readonly string[] {
  const words = text.split(/[ \n]+/).filter((word) => word !== "");
  const lines: string[] = [];
  let line = " ".repeat(indent);
  let empty = true;
  for (const word of words) {
    if (!empty && columnsOf(line) + 1 + columnsOf(word) > width) {
      lines.push(line);
      line = " ".repeat(hang);
      empty = true;
    }
    line += `${empty ? "" : " "}${word}`;
    empty = false;
  }
  return (empty ? lines : [...lines, line]).map((each) => each.replaceAll("\u00a0", " "));
}

type Side = "left" | "right";

/**
 * Rows of cells under one another. Every column is as wide as its widest cell, but the last, which is wrapped into what is
 * left of the width.
 */
export function columns(
  rows: readonly (readonly string[])[],
  sides: readonly Side[],
  indent = 2,
  gap = 2,
): readonly string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, column) =>
    Math.max(0, ...rows.map((row) => columnsOf(row[column] ?? ""))),
  );
  return rows.flatMap((row) => {
    let line = " ".repeat(indent);
    for (const [column, cell] of row.slice(0, -1).entries()) {
      const space = " ".repeat(Math.max(0, (widths[column] ?? 0) - columnsOf(cell)));
      line += (sides[column] === "right" ? space + cell : cell + space) + " ".repeat(gap);
    }
    const start = columnsOf(line);
    const last = wrap(row.at(-1) ?? "", start, start);
    const whole = last.length === 0 ? [line] : [line + (last[0] ?? "").slice(start), ...last.slice(1)];
    return whole.map((each) => each.replaceAll("\u00a0", " ").trimEnd());
  });
}

/** A heading with a rule to the edge. */
export function heading(text: string): string {
  const rule = "─".repeat(Math.max(3, WIDTH - columnsOf(text) - 1));
  return `${text} ${rule}`;
}

/** Two texts at the two edges of a line; the right one below when both do not fit. */
export function edges(left: string, right: string): readonly string[] {
  const space = WIDTH - columnsOf(left) - columnsOf(right);
  return space >= 2 ? [`${left}${" ".repeat(space)}${right}`] : [...wrap(left), ...wrap(right)];
}
