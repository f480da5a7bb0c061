import type { Scalar } from "yaml";

/**
 * Offset in the source of the character at `offset` of a text's value. Exact for a text on one line and for blocks after
 * `|`; for texts folded over several lines, the start.
 */
export function placeInScalar(scalar: Scalar, source: string, offset: number): number {
  const [start, end] = scalar.range ?? [0, 0];
  const raw = source.slice(start, end);
  if (scalar.type === "BLOCK_LITERAL") return start + offsetInBlock(raw, String(scalar.value), offset);
  if (raw.includes("\n")) return start;
  const quoted = scalar.type === "QUOTE_DOUBLE" || scalar.type === "QUOTE_SINGLE";
  return start + offset + (quoted ? 1 : 0);
}

/** Counts lines of the value, then finds the same line below the `|` and skips its indentation. */
function offsetInBlock(raw: string, value: string, offset: number): number {
  const before = value.slice(0, offset).split("\n");
  const valueLine = value.split("\n")[before.length - 1] ?? "";
  const rawLines = raw.split("\n");
  const lineStart = rawLines.slice(0, before.length).reduce((sum, line) => sum + line.length + 1, 0);
  const indentation = Math.max(
    (rawLines[before.length] ?? "").replace(/\r$/, "").length - valueLine.length,
    0,
  );
  return lineStart + indentation + (before.at(-1)?.length ?? 0);
}
