import { plainText } from "./plain-text.ts";

/**
 * What a cell says that holds no quantity. `unknown`: nobody has tested it. `cannot`: tested or not, it cannot be done.
 * `unclear`: either, or something else.
 */
type AnswerWord = "unknown" | "cannot" | "unclear";

const UNKNOWN =
  /^(?:|-+|\?+|\.+|~|n\.?\/?a\.?|nan|null|nil|unknown|unk|tbd|tba|tbc|not (?:known|tested|given|sure|available)|untested|no (?:data|idea|info|record|result|value|test|number)s?|don'?t know|dunno|missing|blank|k\.? ?a\.?|pending|private|secret|withheld|won'?t say|no thanks?|no thank you|prefer not(?: to(?: say| answer)?)?|rather not(?: say)?|will test|to test|next week|dn[sf])$/i;
const CANNOT =
  /^(?:none(?: yet)?|no|zero|0+(?: reps?)?|never|cannot|can ?not|can'?t(?: do(?: it)?)?|unable|no .+)$/i;
const UNCLEAR =
  /^(?:x+|yes|y|ok|ja|oui|n|✓|✔|done|not yet|some|few|many|lots|old|injured|working on it|soon|almost|\*+)$/i;

/**
 * Reads words that stand where a number belongs; nothing where the text is none of them. Unknown and cannot are two
 * different plans, so no word is taken for both.
 *
 * @example answerWord("n/a") // => "unknown"
 * @example answerWord("no MU") // => "cannot"
 */
export function answerWord(text: string): AnswerWord | undefined {
  const plain = plainText(text).replace(/(?<=\w)[!.]+$/, "");
  if (UNKNOWN.test(plain)) return "unknown";
  if (UNCLEAR.test(plain)) return "unclear";
  return CANNOT.test(plain) ? "cannot" : undefined;
}
