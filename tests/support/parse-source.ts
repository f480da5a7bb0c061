import ts from "typescript";
import type { SourceFile } from "./source-files.ts";

/**
 * Parses the scripts of a file: a .ts file is one, an .astro file holds its front matter, the bodies of its
 * <script> elements, and the expressions of its template that load other files.
 */
export function parseSource(file: SourceFile): readonly ts.SourceFile[] {
  return scriptsOf(file).map((text) =>
    ts.createSourceFile(`${file.path}.ts`, text, ts.ScriptTarget.ESNext, true, ts.ScriptKind.TS),
  );
}

function scriptsOf(file: SourceFile): readonly string[] {
  if (!file.path.endsWith(".astro")) return [file.text];
  const frontMatter = /^\s*---\n([\s\S]*?)\n---/.exec(file.text);
  const template = file.text.slice(frontMatter?.[0].length ?? 0);
  const scripts = [...template.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)].flatMap((match) => {
    const source = /\bsrc="([^"]+)"/.exec(match[1] ?? "")?.[1];
    return source === undefined ? [match[2] ?? ""] : [`import ${JSON.stringify(source)};`];
  });
  const dynamic = [...template.matchAll(/\bimport\(\s*["'`][^"'`]+["'`]\s*\)/g)].map((match) => match[0]);
  return [frontMatter?.[1] ?? "", ...scripts, ...dynamic];
}

/** Calls a function for every node of a script, outermost first. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => {
    walk(child, visit);
  });
}
