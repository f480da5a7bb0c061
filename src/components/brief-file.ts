/** A file that goes with a brief, as the page offers it. */
export type BriefFile = {
  /** What it is called beside the page: `sheet-a4`. */
  readonly name: string;
  /** What it is called for a reader. */
  readonly label: string;
  /** Name under which it is saved; told only once the page is open. */
  readonly saveAs: string;
  /** Media type. */
  readonly type: string;
  /** Address relative to the page, for files that are not locked. */
  readonly address: string;
  /** Whether it is meant to be shown to others. */
  readonly share: boolean;
};
