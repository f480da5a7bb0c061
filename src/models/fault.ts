/** Where in a file a fault stands. `line` and `column` count from 1. */
export type Place = { readonly file: string; readonly line: number; readonly column: number };

/**
 * One fault of a file a person wrote, as data until the last moment: where, what was found, what is allowed,
 * the nearest correct name if there is one, and what to do.
 */
export type Fault = {
  readonly place: Place;
  /** The words found, as written; empty when something is missing. */
  readonly found: string;
  /** What is wrong, one plain sentence without the place. */
  readonly problem: string;
  /** What is allowed instead. */
  readonly allowed?: string;
  /** The nearest correct name. */
  readonly nearest?: string;
  /** What to do about it. */
  readonly remedy: string;
  /** `fault` stops the build; `question` does so too, and proposes a reading to confirm; `notice` only tells how something was read. */
  readonly severity: "fault" | "question" | "notice";
  /** The only briefs it stops, by the ids of athlete and workout; absent where it stops all that need the file. */
  readonly stops?: readonly BriefName[];
};

/** A brief by the ids of its athlete and its workout. */
export type BriefName = { readonly athlete: string; readonly workout: string };

/** Either a checked value (with notices) or the faults that kept it from being one. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T; readonly notices: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };
