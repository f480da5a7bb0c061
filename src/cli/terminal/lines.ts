/** Width of a terminal brief, columns. */
export const WIDTH = 80;

/** Breaks a text at spaces so that no line is wider than `width`; no-break spaces hold. */
export function wrap(text: string, width = WIDTH, indent = ""): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (indent.length + longer.length > width && line !== "") {
      lines.push(indent + line);
      line = word;
    } else line = longer;
  }
  return [...lines, indent + line];
}

/** Rows as columns: each as wide as its widest cell, figures to the right where `right` says so. */
export function columns(
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): readonly string[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [at, cell] of row.entries()) widths[at] = Math.max(widths[at] ?? 0, cell.length);
  }
  return rows.map((row) =>
    row
      .map((cell, at) => (right.includes(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0)))
      .join("  ")
      .trimEnd(),
  );
}

/** A heading with a rule to the right edge. */
export const heading = (title: string): string =>
  `${title} ${"─".repeat(Math.max(0, WIDTH - title.length - 1))}`;

/** A heading and its entries, each with a dash; nothing for an empty list. */
export function listed(title: string, entries: readonly string[]): readonly string[] {
  if (entries.length === 0) return [];
  return [heading(title), ...entries.flatMap(entryLines)];
}

const entryLines = (entry: string): readonly string[] =>
  wrap(entry, WIDTH, "  ").map((line, at) => (at === 0 ? `- ${line.slice(2)}` : line));
