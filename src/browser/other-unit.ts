import type { MassUnit } from "../models/quantity.ts";
import { sayOtherUnit } from "../wording/mass.ts";
import { NO_BREAK_SPACE } from "../wording/number.ts";

/** A mass or a range of masses as a page says them. */
const MASS = new RegExp(
  `(?<![\\d.,])(?:(\\d+(?:\\.\\d+)?)–)?(\\d+(?:\\.\\d+)?)[${NO_BREAK_SPACE} ](kg|lb)(?![\\w/])`,
  "g",
);
/** What stands behind a mass that has its other unit already, or that is a plate: plates are called as they are marked. */
const KEPT_BEHIND = /^(?:[\s\u00a0]?\(| a side|,? each side| and |, on | collar)/;
/** What stands before a plate, or before the other unit itself. */
const KEPT_BEFORE = /(?:\+ |\bon |\boff |×|\()$/;

/** A text cut into pieces, with what is to be added behind each: the same mass in the other unit. */
export function otherUnits(text: string): readonly { readonly text: string; readonly added?: string }[] {
  const pieces: { text: string; added?: string }[] = [];
  let from = 0;
  for (const match of text.matchAll(MASS)) {
    const [whole, low, high = "", unit = ""] = match;
    const end = match.index + whole.length;
    if (KEPT_BEHIND.test(text.slice(end)) || KEPT_BEFORE.test(text.slice(0, match.index))) continue;
    const said = [low, high].flatMap((figure) => (figure === undefined ? [] : inOther(Number(figure), unit)));
    pieces.push({ text: text.slice(from, end), added: ` (${said.join("–")})` });
    from = end;
  }
  return [...pieces, { text: text.slice(from) }];
}

function inOther(value: number, written: string): string {
  const unit: MassUnit = written === "lb" ? "lb" : "kg";
  const load = { mass: { value, unit }, kilograms: 0, pieces: 1 };
  return sayOtherUnit(load, unit === "lb" ? "kg" : "lb") ?? "";
}

/** Shows or hides the other unit behind every mass of a page. The loads stay what they are: what plates make. */
export function showOtherUnit(room: HTMLElement, isShown: boolean): void {
  for (const added of room.querySelectorAll(".other-unit")) added.remove();
  if (!isShown) {
    room.normalize();
    return;
  }
  const walker = document.createTreeWalker(room, NodeFilter.SHOW_TEXT);
  const texts: Text[] = [];
  while (walker.nextNode()) texts.push(walker.currentNode as Text);
  for (const node of texts) {
    if (node.parentElement?.closest("svg, button, .plates")) continue;
    const pieces = otherUnits(node.data);
    if (pieces.length > 1) node.replaceWith(...pieces.flatMap(nodesOf));
  }
}

function nodesOf({ text, added }: { readonly text: string; readonly added?: string }): readonly Node[] {
  const words = document.createTextNode(text);
  if (added === undefined) return [words];
  const other = document.createElement("span");
  other.className = "other-unit";
  other.textContent = added;
  return [words, other];
}
