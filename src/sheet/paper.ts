/** Papers a sheet is made for. */
export const PAPERS = ["a4", "letter"] as const;
export type Paper = (typeof PAPERS)[number];

/** Width and height in millimetres (ISO 216; 8.5 by 11 inches). */
export const PAPER_SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

/** Margins, millimetres. Office printers leave about 4 to 6 mm at the edges unprinted. */
export const MARGIN = { side: 11, top: 8.5, bottom: 8 } as const;

/** A box on the page, millimetres. */
export type Frame = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};
