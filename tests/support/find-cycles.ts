import { resolveImport } from "./check-layers.ts";
import { readImports } from "./read-imports.ts";
import { isCode, type SourceFile } from "./source-files.ts";

/**
 * Finds files that import one another in a ring by value (types may point back: they are erased).
 * Depth-first search; every ring that a back edge closes is told once, as "a -> b -> a".
 */
export function findCycles(files: readonly SourceFile[]): readonly string[] {
  const edges = new Map(files.map((file) => [file.path, valueImports(file)]));
  const done = new Set<string>();
  const cycles: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) cycles.push([...trail.slice(start), path].join(" -> "));
    if (start >= 0 || done.has(path)) return;
    for (const next of edges.get(path) ?? []) visit(next, [...trail, path]);
    done.add(path);
  };
  for (const path of edges.keys()) visit(path, []);
  return cycles;
}

function valueImports(file: SourceFile): readonly string[] {
  if (!isCode(file.path)) return [];
  return readImports(file)
    .filter((line) => !line.typeOnly && line.specifier.startsWith("."))
    .map((line) => resolveImport(file.path, line.specifier));
}
