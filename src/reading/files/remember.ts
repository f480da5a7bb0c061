import type { SourceFile } from "./source-file.ts";

/**
 * Gives what was made before of the very same files under the same name, or makes it. Files are handed in lists: one that is
 * handed again and again is looked at once. What is made is plain data and rests on these files alone.
 */
export type Remember = <T>(what: Remembered, from: readonly (readonly SourceFile[])[], make: () => T) => T;

/** What is worth remembering: the library, which is always the same, and athletes, of whom there are many. */
type Remembered = "library" | "athlete";

/** Remembers nothing. */
export const makeAnew: Remember = (_what, _from, make) => make();
