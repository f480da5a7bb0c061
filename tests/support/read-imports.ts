import ts from "typescript";
import { parseSource, walk } from "./parse-source.ts";
import type { SourceFile } from "./source-files.ts";

/**
 * One place where a file names another: what it names, and whether only types come from there.
 * `import { type A } from` still runs the other file when types are merely erased, so it counts as a value.
 */
export type ImportLine = { readonly specifier: string; readonly typeOnly: boolean };

/** Lists what a file imports: static, dynamic, export-from, import types, workers and glob patterns. */
export function readImports(file: SourceFile): readonly ImportLine[] {
  const lines: ImportLine[] = [];
  for (const script of parseSource(file)) {
    walk(script, (node) => {
      for (const line of importsAt(node)) {
        lines.push(line);
      }
    });
  }
  return lines;
}

function importsAt(node: ts.Node): readonly ImportLine[] {
  if (ts.isImportDeclaration(node)) {
    const phase = node.importClause?.phaseModifier;
    return named(node.moduleSpecifier, phase === ts.SyntaxKind.TypeKeyword);
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier)
    return named(node.moduleSpecifier, node.isTypeOnly);
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
    return named(node.argument.literal, true);
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return named(node.arguments[0], false);
  }
  if (ts.isCallExpression(node) && node.expression.getText() === "import.meta.glob") {
    const patterns = node.arguments[0];
    const all = patterns && ts.isArrayLiteralExpression(patterns) ? [...patterns.elements] : [patterns];
    return all.flatMap((pattern) => named(pattern, false));
  }
  if (ts.isNewExpression(node) && node.arguments?.[1]?.getText() === "import.meta.url") {
    const target = node.arguments[0];
    return target && ts.isStringLiteralLike(target) && /\.(ts|astro)$/.test(target.text)
      ? named(target, false)
      : [];
  }
  return [];
}

/** A name that is computed cannot be checked, so it is reported as an import of "(computed)". */
function named(node: ts.Node | undefined, typeOnly: boolean): readonly ImportLine[] {
  const specifier = node && ts.isStringLiteralLike(node) ? node.text : "(computed)";
  return [{ specifier, typeOnly }];
}
