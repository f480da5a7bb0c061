/** What a lifter used, felt or celebrated: it changes nothing about the number beside it. */
const GEAR = String.raw`(?:belt(?:ed|s)?|(?:knee )?sleeves?|wraps?|wrist ?wraps?|shoes|lifters|gloves|grips|chalk)`;
const WITH = String.raw`(?:(?:w\/o?|with(?:out)?|no|in)\s*)?`;
const OCCASION = String.raw`(?:(?:at|in)\s+)?(?:the\s+)?(?:comp(?:etition)?|gym|meet|training|class|morning|evening|am|pm|fasted|dressed|naked)`;
const PRAISE = String.raw`(?:new|old|all[- ]time|lifetime|current|recent|last)?\s*(?:PR|PB|best|max|1 ?RM)|easy|smooth|clean|solid|legit|yay|woo ?hoo`;
const HARMLESS = String.raw`(?:${WITH}${GEAR}|${OCCASION}|${PRAISE})`;

const IN_BRACKETS = new RegExp(String.raw`\s*\((?:${HARMLESS})[!.]*\)$`, "i");
const BEHIND = new RegExp(
  String.raw`(?<=\d\s*(?:kgs?|kilos?|lbs?|pounds?|#)?)\.?[\s,;-]+(?:${HARMLESS})[!.]*$`,
  "i",
);
const BEFORE = new RegExp(
  String.raw`^(?:new|old|all[- ]time|lifetime|current)\s+(?:PR|PB|best|max)[!:. ]+(?=\d)`,
  "i",
);
/** Pictures, and the marks of joy behind a number. */
const PICTURES = /\s*(?:\p{Extended_Pictographic}|\uFE0F|\u200D|!)+$/u;

/**
 * Takes off what people add beside a mass without changing it: `105 kg (belt)`, `105 kg PR!`, `72 kg in the morning`. Every
 * other word stays, for the reader to ask about.
 *
 * @example takeRemarkOff("105 kg w/ belt") // => "105 kg"
 */
export function takeRemarkOff(text: string): string {
  // `#` and digits count as pictures to the standard, and are none here.
  const bare = /[\d#]$/.test(text) ? text : text.replace(PICTURES, "");
  return bare.replace(IN_BRACKETS, "").replace(BEFORE, "").replace(BEHIND, "").trim();
}
