import ts from "typescript";
import { parseSource, walk } from "./parse-source.ts";
import type { SourceFile } from "./source-files.ts";

/** Three words in a row, which no key, id or unit is. */
const PROSE = /\p{L}[\p{L}'’-]*[,;:]? \p{L}[\p{L}'’-]*[,;:]? \p{L}/u;

/**
 * Tells text in a file that reads as prose: three words or more in one string, or in one template with a word for each of its
 * values. What an error says that nobody catches is for developers; what a constant does and rests on is told with the model.
 */
export function checkProse(file: SourceFile): readonly string[] {
  return parseSource(file).flatMap((script) => {
    const found: string[] = [];
    walk(script, (node) => {
      const text = textOf(node);
      if (text === undefined || !PROSE.test(text) || isThrown(node) || isOfConstant(node)) return;
      found.push(`${file.path}: says "${text}"; give the reason as a kind and its numbers, wording/ says it`);
    });
    return found;
  });
}

function textOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join("x");
}

const isThrown = (node: ts.Node): boolean =>
  ts.isNewExpression(node.parent) && /Error$/.test(node.parent.expression.getText());

/** The words of a model constant: its unit, what it does, its source. */
const isOfConstant = ({ parent }: ts.Node): boolean =>
  ts.isPropertyAssignment(parent) && /^(does|source|unit)$/.test(parent.name.getText());
