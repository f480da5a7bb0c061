import type { MdastNode } from "satteri";
import { nearestName } from "../models/nearest.ts";
import { type Word, WORDS } from "../models/words.ts";
import type { TextContext } from "./text-context.ts";
import { faultOfRound, faultOfValue, type ValueFault } from "./read-attribute.ts";
import { ownEntry } from "../models/own-entry.ts";

export type Element = Extract<MdastNode, { type: "mdxJsxFlowElement" | "mdxJsxTextElement" }>;
/** Tells a fault at an offset of the text. */
export type Tell = (offset: number, found: string, fault: ValueFault) => void;

/** Plain HTML that may stand in a text; what could load, run or restyle something may not. */
export const PLAIN_HTML: readonly string[] =
  "a abbr b blockquote br code dd del details dl dt em h2 h3 h4 hr i kbd li ol p s small strong sub summary sup table tbody td th thead tr u ul".split(
    " ",
  );
const PLAIN_ATTRIBUTES = ["href", "title", "lang", "open", "colspan", "rowspan", "scope"];

/** Checks one word of a text: its name, its attributes and what stands inside. */
export function checkElement(element: Element, text: string, tell: Tell, context: TextContext): void {
  const at = element.position?.start.offset ?? 0;
  const name = element.name ?? "";
  const word = ownEntry(WORDS, name);
  if (!word && !PLAIN_HTML.includes(name)) {
    tell(at, `<${name}>`, unknownWord(name));
    return;
  }
  if (word && !context.hasReader) {
    tell(at, `<${name}>`, {
      problem: "words with a reader's own numbers are shown in the texts of workouts alone",
      remedy: "Say it in general terms here.",
    });
    return;
  }
  const known = word ? Object.keys(word.attributes) : PLAIN_ATTRIBUTES;
  const given = new Map<string, Written>();
  for (const attribute of element.attributes) {
    if (attribute.type !== "mdxJsxAttribute") {
      tell(at, `<${name} {...}>`, {
        problem: "attributes cannot be computed",
        remedy: 'Write each attribute out: name="value".',
      });
      continue;
    }
    const written = writtenAt(attribute, text, at);
    given.set(attribute.name, written);
    const kind = word && ownEntry(word.attributes, attribute.name)?.kind;
    const fault = known.includes(attribute.name)
      ? (computedFault(attribute, written.value, kind !== undefined) ??
        (kind ? faultOfValue(kind, written.value ?? "", context) : hrefFault(attribute.name, written.value)))
      : unknownAttribute(attribute.name, name, known);
    if (!fault) continue;
    const { value } = written;
    tell(written.offset, value === undefined ? attribute.name : `${attribute.name}="${value}"`, fault);
  }
  const round = word && given.get("round");
  const late = round && faultOfRound(round.value ?? "", given.get("part")?.value, context);
  if (late) tell(round.offset, `round="${round.value ?? ""}"`, late);
  if (word)
    checkWhole(element, name, word, given, (found, fault) => {
      tell(at, found, fault);
    });
}

function unknownWord(name: string): ValueFault {
  const nearest = nearestName(name, Object.keys(WORDS));
  return {
    problem: "no word has this name",
    allowed: Object.keys(WORDS)
      .map((one) => `<${one}>`)
      .join(" "),
    ...(nearest === undefined ? {} : { nearest: `<${nearest}>` }),
    remedy: "Write one of the words allowed, or &lt; for a sign that is to be shown.",
  };
}

function unknownAttribute(attribute: string, name: string, known: readonly string[]): ValueFault {
  const nearest = nearestName(attribute, known);
  return {
    problem: `<${name}> has no attribute of this name`,
    allowed: known.length > 0 ? known.join(", ") : "none",
    ...(nearest === undefined ? {} : { nearest }),
    remedy: nearest === undefined ? "Leave the attribute out." : `Write ${nearest}="...".`,
  };
}

function computedFault(
  attribute: JsxAttribute,
  value: string | undefined,
  needsValue: boolean,
): ValueFault | undefined {
  const isPlainSwitch = attribute.value === null || attribute.value === undefined;
  if (value !== undefined || (isPlainSwitch && !needsValue)) return undefined;
  return {
    problem: `the value of "${attribute.name}" is missing or computed`,
    remedy: `Write it in quotes: ${attribute.name}="...".`,
  };
}

const hrefFault = (attribute: string, value = ""): ValueFault | undefined =>
  attribute === "href" ? linkFault(value) : undefined;

/** A link may lead to a page or an address to write to; anything else would run or lead nowhere. */
export const linkFault = (url: string): ValueFault | undefined =>
  /^(https?:\/\/|mailto:|tel:)/i.test(url)
    ? undefined
    : {
        problem: "a link from a brief leads nowhere unless it is written out in full",
        allowed: "https://..., mailto:..., tel:...",
        remedy: "Write the whole address of the page.",
      };

/** Attributes that are missing, and text where none can be or where it is missing. */
function checkWhole(
  element: Element,
  name: string,
  word: Word,
  given: ReadonlyMap<string, Written>,
  tell: (found: string, fault: ValueFault) => void,
): void {
  const attributes = Object.entries(word.attributes);
  for (const [attribute, { required, says }] of attributes) {
    if (!required || given.has(attribute)) continue;
    tell(`<${name}>`, {
      problem: `<${name}> needs ${attribute}: ${says}`,
      remedy: `Write <${name} ${attribute}="..."${word.around ? ">" : " />"}.`,
    });
  }
  if (!word.around && element.children.length > 0) {
    tell(`<${name}>`, {
      problem: `<${name}> shows a value and takes no text`,
      remedy: `Write <${name} ... /> with a stroke before the end, and no closing word.`,
    });
  }
  if (word.around && element.children.length === 0) {
    tell(`<${name}>`, {
      problem: `<${name}> stands around the text it is about, and there is none`,
      remedy: `Write <${name} ...>, the text, and </${name}>.`,
    });
  }
  if (word.around && attributes.length > 0 && given.size === 0) {
    tell(`<${name}>`, {
      problem: `<${name}> does not say for whom`,
      allowed: attributes.map(([attribute]) => attribute).join(", "),
      remedy: `Add at least one attribute, such as <${name} level="new">.`,
    });
  }
}

type JsxAttribute = Extract<Element["attributes"][number], { type: "mdxJsxAttribute" }>;

type Written = { readonly offset: number; readonly value: string | undefined };

/** Value of an attribute where it is written out, and where the attribute begins; the parser does not tell the latter. */
function writtenAt(attribute: JsxAttribute, text: string, elementAt: number): Written {
  const name = attribute.name.replace(/[^a-zA-Z0-9-]/g, ".");
  const found = text.slice(elementAt).search(new RegExp(`(?<=\\s)${name}(?=[\\s=/>])`));
  const offset = elementAt + Math.max(found, 0);
  return { offset, value: literalOf(attribute) };
}

/** The value of an attribute where it is written out: {3} and {"A"} are as good as "3" and "A". Nothing is computed. */
export function literalOf({ value }: Pick<JsxAttribute, "value">): string | undefined {
  if (typeof value === "string") return value;
  const literal = /^\s*(?:(\d+(?:\.\d+)?)|"([^"\\]*)"|'([^'\\]*)')\s*$/.exec(value?.value ?? "");
  return literal?.[1] ?? literal?.[2] ?? literal?.[3];
}
