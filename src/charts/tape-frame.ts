/** Where things stand on a tape, in the unit of the drawing. */
export type TapeFrame = {
  readonly x: (clock: number) => number;
  readonly left: number;
  readonly right: number;
  readonly stripTop: number;
  readonly stripBottom: number;
  readonly textSize: number;
};
