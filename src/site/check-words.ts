import { type MdastNode, mdxToMdast } from "satteri";
import type { DataRead } from "../models/data.ts";
import type { Fault } from "../models/fault.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import type { Workout } from "../models/workout.ts";
import { bodyAlone } from "./body-alone.ts";
import { checkElement, type Element, linkFault, type Tell } from "./check-element.ts";
import { unreadable } from "./unreadable-text.ts";

type Node = MdastNode;

/**
 * Checks the texts of all workouts without rendering them: every word known, with the attributes it takes, naming lifts,
 * parts, divisions that exist. Faults stand at the line of the file.
 */
export function checkWords(files: readonly SourceFile[], data: DataRead): readonly Fault[] {
  return data.workouts.flatMap((workout) => {
    const file = files.find(({ path }) => path === workout.place.file);
    return file ? checkText(file, workout, data) : [];
  });
}

function checkText(file: SourceFile, workout: Workout, data: DataRead): readonly Fault[] {
  const text = bodyAlone(file.text);
  const faults: Fault[] = [];
  const tell: Tell = (offset, found, fault) => {
    faults.push({ place: placeAt(file.path, text, offset), found, ...fault, severity: "fault" });
  };
  const root = unreadable(file.path, text, () => mdxToMdast(text));
  if (!root.ok) return root.faults;
  walk(root.value, (node) => {
    checkNode(node, text, tell, (element) => {
      checkElement(element, text, tell, workout, data);
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
      if (/^\s*(\/\*[\s\S]*\*\/\s*)?$/.test(node.value)) return;
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

const firstLine = (written: string): string => written.split("\n")[0] ?? "";

function placeAt(file: string, text: string, offset: number): Fault["place"] {
  const before = text.slice(0, offset).split("\n");
  return { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
