import ts from "typescript";
import { parseSource, walk } from "./parse-source.ts";
import type { SourceFile } from "./source-files.ts";

/** Clock, machine, locale and console: never in a pure file, under any meaning. */
const neverNamed =
  "Date Intl process Buffer console fs globalThis crypto require setTimeout setInterval".split(" ");

/** Also words of the domain, such as a competition's window; refused unless the file itself declares the name. */
const namedOnlyIfDeclared = ["window", "document", "performance", "navigator", "localStorage", "fetch"];

/** Tells each use of clock, chance, machine, locale or module-level mutable state in a file that must be pure. */
export function checkPurity(file: SourceFile): readonly string[] {
  return parseSource(file).flatMap((script) => {
    const declared = namesDeclaredIn(script);
    const faults = mutableStateIn(script);
    walk(script, (node) => {
      const fault = impurityAt(node, declared);
      if (fault !== undefined) faults.push(fault);
    });
    return faults.map((fault) => `${file.path}: ${fault}`);
  });
}

function impurityAt(node: ts.Node, declared: ReadonlySet<string>): string | undefined {
  if (!ts.isIdentifier(node)) return undefined;
  const name = node.text;
  const { parent } = node;
  if (name.startsWith("toLocale") || name === "localeCompare")
    return `uses ${name}, which depends on the locale`;
  if (ts.isPropertyAccessExpression(parent) && parent.name === node) return undefined;
  if (name === "Math") return mathFault(parent);
  if (name === "Temporal" && ts.isPropertyAccessExpression(parent) && parent.name.text === "Now") {
    return "uses Temporal.Now; the caller brings the clock";
  }
  if (isPropertyName(node)) return undefined;
  if (neverNamed.includes(name)) return `uses ${name}; the caller brings clock, chance, files and locale`;
  if (namedOnlyIfDeclared.includes(name) && !declared.has(name))
    return `uses ${name}, which belongs to the browser`;
  return undefined;
}

function mathFault(parent: ts.Node): string | undefined {
  if (!ts.isPropertyAccessExpression(parent)) return "uses Math other than as Math.name";
  return parent.name.text === "random"
    ? "uses Math.random; take the seeded generator as an argument"
    : undefined;
}

/** A name that only labels a field: `{ window: ... }`, `readonly window: Opening`, `{ window: opens } = event`. */
function isPropertyName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  return (
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent)) &&
    parent.name === node
  );
}

function namesDeclaredIn(script: ts.SourceFile): ReadonlySet<string> {
  const names = new Set<string>();
  walk(script, (node) => {
    const declares =
      ts.isVariableDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isBindingElement(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isImportSpecifier(node);
    if (declares && node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
  });
  return names;
}

function mutableStateIn(script: ts.SourceFile): string[] {
  return script.statements.filter(ts.isVariableStatement).flatMap((statement) => {
    const isConst = (statement.declarationList.flags & ts.NodeFlags.Const) !== 0;
    return statement.declarationList.declarations.flatMap((declaration) => {
      const name = declaration.name.getText();
      if (!isConst)
        return [`"${name}" can change at the top of the module; keep state in a value passed along`];
      return startsEmpty(declaration)
        ? [`"${name}" is an empty collection at the top of the module, to be filled`]
        : [];
    });
  });
}

/** A constant that starts empty can only be there to be filled, unless its type says readonly. */
function startsEmpty({ initializer, type }: ts.VariableDeclaration): boolean {
  if (!initializer || /\breadonly\b|\bReadonly/.test(type?.getText() ?? "")) return false;
  if (ts.isArrayLiteralExpression(initializer)) return initializer.elements.length === 0;
  if (ts.isObjectLiteralExpression(initializer)) return initializer.properties.length === 0;
  const isCollection =
    ts.isNewExpression(initializer) && /^(Weak)?(Map|Set)$/.test(initializer.expression.getText());
  return isCollection && (initializer.arguments ?? []).length === 0;
}
