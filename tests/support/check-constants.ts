import ts from "typescript";
import { parseSource, walk } from "./parse-source.ts";
import type { SourceFile } from "./source-files.ts";

/**
 * Numbers that say nothing about people or sport: none, one, a pair, the half of something, tens, and what units come by (seconds,
 * minutes, hours, days of a year, thousands).
 */
const STRUCTURAL: readonly number[] = [0, 0.5, 1, 2, 10, 24, 60, 100, 365, 1000, 3600];
/** Below this a number only keeps rounding from deciding. */
const ROUNDING = 1e-6;

/** The statements of a file, by name, that hold other numbers. */
export function numbersIn(file: SourceFile): readonly string[] {
  return parseSource(file).flatMap((script) =>
    script.statements
      .filter((statement) => holdsNumber(statement))
      .map((one) => `${file.path} ${nameOf(one)}`),
  );
}

function holdsNumber(statement: ts.Statement): boolean {
  let found = false;
  walk(statement, (node) => {
    if (!ts.isNumericLiteral(node)) return;
    const value = Number(node.text);
    found ||= value > ROUNDING && !STRUCTURAL.includes(value);
  });
  return found;
}

function nameOf(statement: ts.Statement): string {
  if (ts.isFunctionDeclaration(statement)) return statement.name?.text ?? "";
  return ts.isVariableStatement(statement)
    ? statement.declarationList.declarations.map(({ name }) => name.getText()).join(", ")
    : statement.getText().slice(0, 40);
}
