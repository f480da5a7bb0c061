/** The side to which a cell of a table in a text is set, where one is said. */
export type CellProps = { readonly align?: string; readonly [attribute: string]: unknown };

/** The class that aligns a cell; the content policy refuses styles written on an element. */
export const alignment = (align: CellProps["align"]): string | undefined =>
  align === "right" || align === "center" ? `align-${align}` : undefined;
