import type { HastNode } from "satteri";
import type { CoachText, TextElement, TextNode } from "../models/coach-text.ts";
import { WORDS } from "../models/words.ts";
import { literalOf, linkFault, PLAIN_HTML } from "./check-element.ts";

/** What ids of notes in a text begin with, so that they are never those of the page around it. */
export const FOOTNOTE_PREFIX = "text-";

/** Elements that Markdown makes beside those that may be written as HTML. */
const MADE_BY_MARKDOWN = new Set(["h1", "h5", "h6", "input", "pre", "section"]);
const SHOWN = new Set([...PLAIN_HTML, ...MADE_BY_MARKDOWN]);

/** Attributes that are kept, and how they are called in HTML. */
const KEPT: ReadonlyMap<string, string> = new Map([
  ...["href", "title", "lang", "open", "scope", "start", "type", "checked", "disabled"].map(
    (name) => [name, name] as const,
  ),
  ["colSpan", "colspan"],
  ["rowSpan", "rowspan"],
  ["colspan", "colspan"],
  ["rowspan", "rowspan"],
  ["ariaLabel", "aria-label"],
]);

/** A parsed and checked text as the tree that is drawn. Whatever is not known to be harmless is left out. */
export const coachTextOf = (root: HastNode): CoachText => insideOf(root);

const insideOf = (node: HastNode): CoachText => ("children" in node ? node.children.flatMap(pieceOf) : []);

function pieceOf(node: HastNode): readonly TextNode[] {
  switch (node.type) {
    case "text":
      return [node.value];
    case "element":
      return elementOf(node.tagName, attributesOf(node.properties), node);
    case "mdxJsxFlowElement":
    case "mdxJsxTextElement":
      return elementOf(node.name ?? "", writtenAttributes(node), node);
    default:
      // Comments; a program was refused before.
      return [];
  }
}

function elementOf(
  name: string,
  attributes: TextElement["attributes"],
  node: HastNode,
): readonly TextElement[] {
  if (!SHOWN.has(name) && !Object.hasOwn(WORDS, name)) return [];
  return [{ name, attributes, children: insideOf(node) }];
}

type Properties = Extract<HastNode, { type: "element" }>["properties"];

/** What Markdown gives an element: links, the side to which a cell is set, where a list starts, the ids of notes. */
function attributesOf(properties: Properties): TextElement["attributes"] {
  const kept = Object.entries(properties).flatMap(([name, value]): readonly (readonly [string, Value])[] => {
    if (name === "style") {
      const side = /^text-align: (left|right|center)$/.exec(String(value))?.[1];
      return side === undefined ? [] : [["align", side]];
    }
    if (name === "id") return String(value).startsWith(FOOTNOTE_PREFIX) ? [["id", String(value)]] : [];
    return keptAttribute(name, value);
  });
  return Object.fromEntries(kept);
}

type Value = TextElement["attributes"][string];
type Written = Extract<HastNode, { type: "mdxJsxTextElement" }>;

/** The attributes of what is written like HTML; none is computed. */
function writtenAttributes({
  name,
  attributes,
}: Pick<Written, "name" | "attributes">): TextElement["attributes"] {
  const isWord = Object.hasOwn(WORDS, name ?? "");
  const kept = attributes.flatMap((attribute): readonly (readonly [string, Value])[] => {
    if (attribute.type !== "mdxJsxAttribute") return [];
    const value = literalOf(attribute) ?? true;
    return isWord ? [[attribute.name, value]] : keptAttribute(attribute.name, value);
  });
  return Object.fromEntries(kept);
}

function keptAttribute(name: string, value: unknown): readonly (readonly [string, Value])[] {
  const called = KEPT.get(name);
  if (called === undefined) return [];
  if (typeof value !== "string" && typeof value !== "number" && typeof value !== "boolean") return [];
  const leads =
    called !== "href" || String(value).startsWith(`#${FOOTNOTE_PREFIX}`) || !linkFault(String(value));
  return leads ? [[called, value]] : [];
}
