import ts from "typescript";
import { parseSource, walk } from "./parse-source.ts";
import type { SourceFile } from "./source-files.ts";

/** What a function may be at most: lines from its name to its closing brace, and parameters. */
export const LONGEST = 60;
export const MOST_PARAMETERS = 5;

/** Tells functions, arrow functions and methods that are longer, or take more, than a reader holds at once. */
export function checkFunctions(file: SourceFile): readonly string[] {
  return parseSource(file).flatMap((script) => {
    const faults: string[] = [];
    walk(script, (node) => {
      if (!isFunction(node) || node.body === undefined) return;
      const lines = lineOf(script, node.end) - lineOf(script, node.getStart()) + 1;
      const name = `${file.path}: ${nameOf(node)}`;
      if (lines > LONGEST)
        faults.push(`${name} has ${lines} lines; cut it into named steps of at most ${LONGEST}`);
      if (node.parameters.length > MOST_PARAMETERS)
        faults.push(
          `${name} has ${node.parameters.length} parameters; what belongs together is one value, at most ${MOST_PARAMETERS}`,
        );
    });
    return faults;
  });
}

type AnyFunction =
  | ts.FunctionDeclaration
  | ts.ArrowFunction
  | ts.FunctionExpression
  | ts.MethodDeclaration
  | ts.ConstructorDeclaration;

const isFunction = (node: ts.Node): node is AnyFunction =>
  ts.isFunctionDeclaration(node) ||
  ts.isArrowFunction(node) ||
  ts.isFunctionExpression(node) ||
  ts.isMethodDeclaration(node) ||
  ts.isConstructorDeclaration(node);

const lineOf = (script: ts.SourceFile, at: number): number => script.getLineAndCharacterOfPosition(at).line;

/** The name of a function, or of the constant it is. */
function nameOf(node: AnyFunction): string {
  if (node.name) return node.name.getText();
  return ts.isVariableDeclaration(node.parent) ? node.parent.name.getText() : "a function without a name";
}
