import type { YAMLError } from "yaml";
import type { Fault, Place } from "../../models/fault.ts";

type Saying = readonly [problem: string, remedy: string];

const INDENT: Saying = [
  "this line is indented in a way that does not fit the lines above it",
  "Begin lines that belong together at the same column, with spaces.",
];

const BROKEN: Saying = [
  "this cannot be read here",
  "Write each entry as `name: value`, with a space after the colon, and put texts with signs such as : # [ ] { } in quotes.",
];

const SAYINGS: Readonly<Partial<Record<YAMLError["code"], Saying>>> = {
  BAD_DQ_ESCAPE: [
    "after a backslash in double quotes only certain letters may stand",
    "Write the backslash twice, or use single quotes.",
  ],
  BAD_INDENT: INDENT,
  BAD_SCALAR_START: ["a text cannot begin with this sign", "Put the whole text in quotes."],
  BLOCK_IN_FLOW: [
    "inside brackets or braces there can be no lines of the form `name: value` below one another",
    "Write everything between the brackets with commas, or leave the brackets out.",
  ],
  MISSING_CHAR: [
    "a closing quote, bracket, colon or comma is missing before this place",
    "Look at the line, and the ones above it, for a quote or bracket that is opened and not closed.",
  ],
  MULTIPLE_DOCS: [
    "a line of three hyphens begins a second document here",
    "Keep one document per file: delete the line `---` or make two files.",
  ],
  TAB_AS_INDENT: ["the line begins with a tab", "Use spaces instead of tabs at the beginning of lines."],
  TAG_RESOLVE_FAILED: ["a text that begins with ! is taken for a type", "Put the whole text in quotes."],
};

/** A fault of the YAML text itself, in words for a person who has not heard of YAML. */
export function yamlFault(error: YAMLError, source: string, placeOf: (offset: number) => Place): Fault {
  const [start] = error.pos;
  const found = lineAt(source, start).trim();
  const [problem, remedy] = sayingOf(error, source.slice(start), found);
  return { place: placeOf(start), found, problem, remedy, severity: "fault" };
}

function sayingOf(error: YAMLError, rest: string, line: string): Saying {
  if (error.code === "BLOCK_AS_IMPLICIT_KEY" || error.code === "MULTILINE_IMPLICIT_KEY") {
    if (/:\s.*:(\s|$)/.test(line)) {
      return [
        "there are two colons on this line",
        'Put the text after the first colon in quotes: `name: "text: more text"`.',
      ];
    }
    return /^[^\s:]+:\S/.test(line)
      ? ["the space after the colon is missing", "Write `name: value`, with a space after the colon."]
      : INDENT;
  }
  if (error.code === "UNEXPECTED_TOKEN" && rest.startsWith("-")) {
    return [
      "a list cannot begin on the line of its name",
      "Begin the list on the next line, one `- entry` a line, or leave out the hyphen.",
    ];
  }
  return SAYINGS[error.code] ?? BROKEN;
}

function lineAt(source: string, offset: number): string {
  const start = source.lastIndexOf("\n", Math.max(offset - 1, 0)) + 1;
  const end = source.indexOf("\n", start);
  return source.slice(start, end === -1 ? undefined : end);
}
