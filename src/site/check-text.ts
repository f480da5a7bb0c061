import type { MdastNode } from "satteri";
import type { Fault } from "../models/fault.ts";
import { checkElement, type Element, linkFault, type Tell } from "./check-element.ts";
import type { TextContext } from "./text-context.ts";

type Node = MdastNode;

/**
 * Checks a parsed text without drawing it: nothing in it is a program, every word is known, with the attributes it takes,
 * naming lifts, parts and divisions that exist. `text` is what was parsed, with the lines of the file.
 */
export function checkText(file: string, text: string, root: Node, context: TextContext): readonly Fault[] {
  const faults: Fault[] = [];
  const tell: Tell = (offset, found, fault) => {
    faults.push({ place: placeAt(file, text, offset), found, ...fault, severity: "fault" });
  };
  walk(root, (node) => {
    checkNode(node, text, tell, (element) => {
      checkElement(element, text, tell, context);
    });
  });
  return faults;
}

function walk(node: Node, visit: (node: Node) => void): void {
  visit(node);
  if ("children" in node) for (const child of node.children) walk(child, visit);
}

function checkNode(node: Node, text: string, tell: Tell, checkWord: (element: Element) => void): void {
  const at = node.position?.start.offset ?? 0;
  const written = text.slice(at, node.position?.end.offset ?? at);
  switch (node.type) {
    case "mdxJsxFlowElement":
    case "mdxJsxTextElement":
      checkWord(node);
      return;
    case "mdxjsEsm":
      tell(at, firstLine(written), {
        problem: "a line that begins with import or export is read as program text",
        remedy: "Leave the line out; the words need no import. If it is a sentence, begin it differently.",
      });
      return;
    case "mdxFlowExpression":
    case "mdxTextExpression":
      if (isOneComment(node.value)) return;
      tell(at, firstLine(written), {
        problem: "what stands between braces is read as program text",
        allowed: "a comment such as {/* not shown */}",
        remedy: "Leave the braces out, or write \\{ for a brace that is to be shown.",
      });
      return;
    case "link":
    case "definition": {
      const fault = linkFault(node.url);
      if (fault) tell(at, firstLine(written), fault);
      return;
    }
    case "image":
    case "imageReference":
      tell(at, firstLine(written), {
        problem: "a picture would lie outside the lock or on another server",
        remedy: "Say it in words, or link to the picture: [floor plan](https://...).",
      });
      return;
    default:
  }
}

/** Whether an expression is one comment and nothing beside it: a comment ends at its first end sign, whatever follows. */
function isOneComment(expression: string): boolean {
  const inside = expression.trim();
  return inside.startsWith("/*") && inside.indexOf("*/", 2) === inside.length - 2;
}

const firstLine = (written: string): string => written.split("\n")[0] ?? "";

function placeAt(file: string, text: string, offset: number): Fault["place"] {
  const before = text.slice(0, offset).split("\n");
  return { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
