import { posix } from "node:path";
import ts from "typescript";
import { resolveImport } from "./check-layers.ts";
import { parseSource, walk } from "./parse-source.ts";
import { isCode, type SourceFile } from "./source-files.ts";

/** Every name of a module is used by whoever takes the module as a whole. */
const ALL = "*";

/**
 * Tells exports that no other file imports, of files at `src/...`. What only tests import is told too where the file itself has
 * no use for it: it is kept for its test alone. Routes are called by name, and files without exports are entry points.
 */
export function checkExports(files: readonly SourceFile[]): readonly string[] {
  const code = files.filter(({ path }) => isCode(path) || path.endsWith(".mjs"));
  const used = new Map<string, Set<string>>();
  const usedByTests = new Map<string, Set<string>>();
  for (const file of code) {
    const uses = file.path.startsWith("tests/") ? usedByTests : used;
    for (const [target, name] of usesIn(file)) uses.set(target, (uses.get(target) ?? new Set()).add(name));
  }
  const isUsed = (uses: typeof used, path: string, name: string): boolean =>
    uses.get(path)?.has(name) === true || uses.get(path)?.has(ALL) === true;
  return code
    .filter(({ path }) => path.startsWith("src/") && path.endsWith(".ts") && !isCalledByName(path))
    .flatMap((file) =>
      exportsOf(file).flatMap(({ name, usedInside }) => {
        if (isUsed(used, file.path, name)) return [];
        if (!isUsed(usedByTests, file.path, name))
          return [`${file.path}: exports ${name}, which no other file imports; do not export it`];
        return usedInside ? [] : [`${file.path}: ${name} is used by tests alone; delete it with its test`];
      }),
    );
}

/** Routes and the pairing of content with schemas, whose exports the site generator asks for. */
const isCalledByName = (path: string): boolean =>
  path.startsWith("src/pages/") || path === "src/content.config.ts" || path === "src/env.d.ts";

/** What a file imports from others of the repository: the path of each, and the name. */
function usesIn(file: SourceFile): readonly (readonly [string, string])[] {
  const uses: (readonly [string, string])[] = [];
  const use = (specifier: ts.Node | undefined, names: readonly string[]): void => {
    if (!specifier || !ts.isStringLiteralLike(specifier) || !specifier.text.startsWith(".")) return;
    const target = resolveImport(file.path, specifier.text.replace(/\?.*$/, ""));
    for (const name of names) uses.push([target, name]);
  };
  for (const script of parseSource(file)) {
    walk(script, (node) => {
      if (ts.isImportDeclaration(node)) use(node.moduleSpecifier, namesOf(node.importClause));
      else if (ts.isExportDeclaration(node)) use(node.moduleSpecifier, [ALL]);
      else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
        use(node.argument.literal, [node.qualifier?.getText() ?? ALL]);
      else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
        use(node.arguments[0], [ALL]);
      else if (ts.isNewExpression(node) && node.arguments?.[1]?.getText() === "import.meta.url")
        use(node.arguments[0], [ALL]);
      // An entry that is bundled or run by its path, or by its name from beside.
      else if (ts.isStringLiteral(node) && /^src\/.+\.ts$/.test(node.text)) uses.push([node.text, ALL]);
      else if (ts.isStringLiteral(node) && /^[a-z-]+\.ts$/.test(node.text))
        uses.push([resolveImport(file.path, node.text), ALL]);
    });
  }
  return uses;
}

function namesOf(clause: ts.ImportClause | undefined): readonly string[] {
  const { namedBindings } = clause ?? {};
  if (!namedBindings) return [];
  return ts.isNamespaceImport(namedBindings)
    ? [ALL]
    : namedBindings.elements.map(({ name, propertyName }) => (propertyName ?? name).text);
}

type Exported = { readonly name: string; readonly usedInside: boolean };

/** What a file exports, and whether it has a use for it itself. */
function exportsOf(file: SourceFile): readonly Exported[] {
  return parseSource(file).flatMap((script) => {
    const names = script.statements.filter(isExported).flatMap(namesDeclared);
    const seen = new Map<string, number>();
    walk(script, (node) => {
      if (ts.isIdentifier(node)) seen.set(node.text, (seen.get(node.text) ?? 0) + 1);
    });
    return names.map((name) => ({ name, usedInside: (seen.get(name) ?? 0) > 1 }));
  });
}

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

function namesDeclared(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  const isNamed =
    ts.isFunctionDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isClassDeclaration(statement);
  return isNamed && statement.name ? [statement.name.text] : [];
}

/** The path of a file as seen from the root, for files read from a folder in it. */
export const below = (folder: string, file: SourceFile): SourceFile => ({
  ...file,
  path: posix.join(folder, file.path),
});
