import type { Shape } from "../charts/drawing.ts";
import type { Frame } from "./paper.ts";

/** The structure types of tagged PDF that a sheet uses. */
type Tag = "H1" | "H2" | "P" | "Figure" | "Table" | "TR" | "TH" | "TD" | "L" | "LI" | "LBody" | "Sect";

/** A piece of the page in reading order: words (or a figure with its words), or pieces inside a larger one. */
export type SheetNode =
  | {
      readonly tag: Tag;
      readonly shapes: readonly Shape[];
      /** The words of a figure. */
      readonly alt?: string;
      /** The box a figure fills. */
      readonly box?: Frame;
      /** What a heading cell of a table is the heading of. */
      readonly scope?: "Row" | "Column";
    }
  | { readonly tag: Tag; readonly children: readonly SheetNode[] };

/** What something on the sheet consists of: marks without words, and the words in reading order. Millimetres. */
export type Placed = { readonly marks: readonly Shape[]; readonly nodes: readonly SheetNode[] };

/** Something that has been measured at a width and can be put anywhere. Millimetres. */
export type Measured = {
  readonly height: number;
  readonly place: (x: number, y: number) => Placed;
};

/** A finished page, all in millimetres from the upper left corner. */
export type SheetPage = Placed & {
  readonly width: number;
  readonly height: number;
  readonly title: string;
};

/** Several placed things as one, in order. */
export const together = (parts: readonly Placed[]): Placed => ({
  marks: parts.flatMap((part) => part.marks),
  nodes: parts.flatMap((part) => part.nodes),
});

/** Every text of a page, in reading order. */
export const textsOf = (nodes: readonly SheetNode[]): readonly Extract<Shape, { kind: "text" }>[] =>
  nodes.flatMap((node) =>
    "children" in node ? textsOf(node.children) : node.shapes.filter((shape) => shape.kind === "text"),
  );
