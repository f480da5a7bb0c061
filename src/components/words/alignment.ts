/** How a cell of a table in a text arrives: its alignment as an attribute or as a style. */
export type CellProps = {
  readonly align?: string;
  readonly style?: string | Readonly<Record<string, string>>;
};

/** The class that aligns a cell; the content policy refuses styles written on an element. */
export function alignment(align: CellProps["align"], style: CellProps["style"]): string | undefined {
  const written = typeof style === "string" ? /text-align:\s*(\w+)/.exec(style)?.[1] : style?.["textAlign"];
  const side = align ?? written;
  return side === "right" || side === "center" ? `align-${side}` : undefined;
}
