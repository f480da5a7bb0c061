import type { Checked } from "../models/fault.ts";

type Saying = { readonly problem: string; readonly remedy: string };

/** What the reader of MDX says, and what a person who has not heard of MDX needs to know. */
const SAYINGS: readonly (readonly [RegExp, (name: string) => Saying])[] = [
  [
    /Expected a closing tag for `<([^>`]*)>`/,
    (name) => ({
      problem: `<${name}> is opened and never closed`,
      remedy: `Write </${name}> behind the text it is about, or <${name} ... /> if there is none.`,
    }),
  ],
  [
    /Unexpected closing tag `<\/([^>`]*)>`/,
    (name) => ({
      problem: `</${name}> closes something that is not open here`,
      remedy: `Delete it, or write <${name} ...> before the text.`,
    }),
  ],
  [
    /Unexpected character|Unexpected end of file in (name|tag|attribute)/,
    () => ({
      problem: "the sign < begins a word such as <Load ... />, and none follows here",
      remedy: 'Write "under" or &lt; for the sign itself, and the values of attributes in quotes.',
    }),
  ],
  [
    /expression|brace/,
    () => ({
      problem: "the sign { begins program text, which is not closed or cannot be read",
      remedy: "Leave the brace out, or write \\{ for a brace that is to be shown.",
    }),
  ],
];

/** Runs the reader of MDX over a text; what it cannot read becomes a fault in plain words at its place. */
export function unreadable<T>(file: string, text: string, read: () => T): Checked<T> {
  try {
    return { ok: true, value: read(), notices: [] };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const [, line, column, said = message] = /^(\d+):(\d+): ([\s\S]*)$/.exec(message) ?? [];
    const written = text.split("\n")[Number(line ?? 1) - 1] ?? "";
    // Where a line is read to its end before anything is missing, its last brace is what began it.
    const at = Number(column ?? 1) - 1;
    const begins = at < written.length ? at : Math.max(0, written.lastIndexOf("{"));
    const place = { file, line: Number(line ?? 1), column: begins + 1 };
    return {
      ok: false,
      faults: [{ place, found: written.slice(begins), ...sayingOf(said), severity: "fault" }],
    };
  }
}

function sayingOf(said: string): Saying {
  for (const [pattern, say] of SAYINGS) {
    const match = pattern.exec(said);
    if (match) return say(match[1] ?? "");
  }
  return {
    problem: "the text cannot be read from here on",
    remedy: "Look for a sign < or { that is not text.",
  };
}
