import { posix } from "node:path";
import ts from "typescript";
import { parseSource } from "./parse-source.ts";
import { isCode, type SourceFile } from "./source-files.ts";

const kebab = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const pascal = /^[A-Z][A-Za-z0-9]*$/;
const routePart = /^(\[(\.\.\.)?[a-zA-Z]+\]|[a-z0-9]+(-[a-z0-9]+)*)(-?\[[a-zA-Z]+\])*$/;

/** Tells misnamed files, code in another dialect, default exports and barrel files. */
export function checkShape(file: SourceFile): readonly string[] {
  const faults = [
    nameFault(file.path),
    dialectFault(file.path),
    ...(isCode(file.path) ? exportFaults(file) : []),
  ];
  return faults.filter((fault) => fault !== undefined).map((fault) => `${file.path}: ${fault}`);
}

function nameFault(path: string): string | undefined {
  if (!isCode(path)) return undefined;
  const parts = path.split("/");
  const isRoute = parts[0] === "pages";
  const stem = posix.basename(path).replace(/\.(ts|astro)$/, "");
  const folderName = isRoute ? routePart : kebab;
  if (!parts.slice(0, -1).every((part) => folderName.test(part))) return "folder names are kebab-case";
  if (isRoute) {
    return stem.split(/\.(?=[a-z]+$)/).every((part) => routePart.test(part))
      ? undefined
      : "route names are kebab-case";
  }
  if (path.endsWith(".astro")) return pascal.test(stem) ? undefined : "component names are PascalCase";
  return kebab.test(stem) || stem === "content.config" || stem === "env.d"
    ? undefined
    : "file names are kebab-case";
}

function dialectFault(path: string): string | undefined {
  return /\.(m?jsx?|cjs|tsx|[mc]ts|mdx)$/.test(path) ? "code in src is written as .ts or .astro" : undefined;
}

function exportFaults(file: SourceFile): readonly (string | undefined)[] {
  const statements = parseSource(file).flatMap((script) => [...script.statements]);
  const isIndex = posix.basename(file.path) === "index.ts" && !file.path.startsWith("pages/");
  const onlyReExports =
    statements.length > 0 && statements.every((node) => ts.isExportDeclaration(node) && node.moduleSpecifier);
  return [
    statements.some(exportsDefault) ? "has a default export; export by name" : undefined,
    isIndex || onlyReExports ? "is a barrel file; import from the file that defines the thing" : undefined,
  ];
}

function exportsDefault(statement: ts.Statement): boolean {
  if (ts.isExportAssignment(statement)) return true;
  if (
    ts.isExportDeclaration(statement) &&
    statement.exportClause &&
    ts.isNamedExports(statement.exportClause)
  ) {
    return statement.exportClause.elements.some((element) => element.name.text === "default");
  }
  return (
    ts.canHaveModifiers(statement) &&
    (ts.getModifiers(statement) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.DefaultKeyword)
  );
}
