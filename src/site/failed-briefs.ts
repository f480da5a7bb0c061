/**
 * A brief that could not be computed although its files are right, or a file of it that could not be drawn, told with what
 * was met.
 */
export type FailedBrief = {
  readonly athlete: string;
  readonly workout: string;
  /** What of the brief could not be made; absent where all of it could not. */
  readonly file?: string;
  readonly problem: string;
};
