import { plainText } from "./plain-text.ts";

/** A quantity's text with what a person adds around it taken off. */
export type Doubt = {
  /** The quantity itself. */
  readonly core: string;
  /** Written with `~`, `about`, `ca.`, or with a question mark behind. */
  readonly approximate: boolean;
  /** The writer says that an unusual value is right: `checked` stands behind it. */
  readonly checked: boolean;
  /** A bound is no result: `100+`, `> 100`, `at least 100`. */
  readonly bound: boolean;
  /** Both ends of a range: `90-95`, `90 to 95`. */
  readonly range?: readonly [string, string];
};

const ABOUT =
  /^(?:~|≈|≃|±|about|approximately|approx\.?|around|maybe|probably|perhaps|roughly|circa|ca\.?|c\.|etwa|env\.?|est(?:imated|\.)?(?=[\s\d:])\s*:?)\s*/i;
const ABOUT_BEHIND = /\s*(?:\?+|\(\?+\)|[,(]?\s*(?:approx\.?|roughly|estimated|est\.?|or so)\)?)$/i;
/** What a writer puts behind an unusual value that is right. */
export const CHECKED = /\s*(?:,|\()?\s*(?:checked|really|sic)\)?!?$/i;
const BOUND =
  /^(?:>=?|<=?|≥|≤|over|under|sub[- ]?(?=\d)|at least|at most|min\.? |max\.? of|more than|less than)\s*/i;
/** A spreadsheet's mark for text before a number, and the end of a sentence behind one. */
const TEXT_MARK = /^'(?=\d)/;
const FULL_STOP = /(?<=\d)\.$/;
const PLUS_BEHIND = /(\d\s*[a-z#]*)\s*\+\s*([a-z#]*)$/i;
const ISH = /(\d)\s*-?ish\b/i;
const RANGE = /^(.*\d\s*[^\d\s-]*)\s*(?:-|\bto\b|\.\.+|…|\bbis\b)\s*(\d.*)$/i;

/** Takes `~`, `checked`, bounds and ranges off a quantity. The core is in plain signs; see {@link plainText}. */
export function takeDoubtOff(text: string): Doubt {
  let core = plainText(text).replace(TEXT_MARK, "").replace(FULL_STOP, "");
  const checked = CHECKED.test(core);
  core = core.replace(CHECKED, "");
  const approximate = ABOUT.test(core) || ISH.test(core) || (core.length > 1 && ABOUT_BEHIND.test(core));
  core = core.replace(ABOUT, "").replace(ISH, "$1");
  if (core.length > 1) core = core.replace(ABOUT_BEHIND, "");
  const bound = BOUND.test(core) || PLUS_BEHIND.test(core);
  core = core.replace(BOUND, "").replace(PLUS_BEHIND, "$1 $2").trim();
  const ends = RANGE.exec(core);
  return {
    core,
    approximate,
    checked,
    bound,
    ...(ends === null ? {} : { range: [ends[1]?.trim() ?? "", ends[2]?.trim() ?? ""] as const }),
  };
}
