import { posix } from "node:path";
import { readImports } from "./read-imports.ts";
import { isCode, type SourceFile } from "./source-files.ts";

/** What one folder of src may use. A folder may always import itself and every folder of a lower level. */
export type Layer = {
  readonly folder: string;
  readonly level: number;
  /** Rank among the folders inside one folder of src that are levels of their own, where they are. */
  readonly step?: number;
  /** Folders of the same level that it may import. */
  readonly beside?: readonly string[];
  /** Lower folders that it may not import. */
  readonly never?: readonly string[];
  /** Packages it may import, exact names; a name ending in * stands for all that begin so. */
  readonly packages: readonly string[];
};

/** The top folder a path lies in; files directly in src belong to the folder "". */
export function folderOf(path: string): string {
  return path.includes("/") ? (path.split("/")[0] ?? "") : "";
}

/** The layer a path belongs to: that of the innermost folder which stands in the table, a top folder always by its own name. */
export function layerOf(path: string, layers: readonly Layer[]): Layer | undefined {
  const top = folderOf(path);
  const holds = (folder: string): boolean => folder === top || path.startsWith(`${folder}/`);
  return layers
    .filter(({ folder }) => holds(folder))
    .toSorted((a, b) => b.folder.length - a.folder.length)[0];
}

/** Tells every import that goes up, sideways, to a package not allowed there, or to a file that is not there. */
export function checkLayers(files: readonly SourceFile[], layers: readonly Layer[]): readonly string[] {
  const paths = new Set(files.map((file) => file.path));
  return files.flatMap((file) => {
    const layer = layerOf(file.path, layers);
    if (!layer)
      return [`${file.path}: folder "${folderOf(file.path)}" does not stand in the table of levels`];
    if (!isCode(file.path)) return [];
    return readImports(file)
      .map(({ specifier }) => faultOf(file.path, specifier, layer, layers, paths))
      .filter((fault) => fault !== undefined)
      .map((fault) => `${file.path}: ${fault}`);
  });
}

function faultOf(
  from: string,
  specifier: string,
  layer: Layer,
  layers: readonly Layer[],
  paths: ReadonlySet<string>,
): string | undefined {
  if (specifier === "(computed)")
    return "imports a computed name; write the name out so that it can be checked";
  if (/^(\/|#|~|@\/)/.test(specifier)) return `imports "${specifier}"; write a relative path instead`;
  if (!specifier.startsWith(".")) return packageFault(specifier, layer);
  const target = resolveImport(from, specifier);
  if (/[*{]/.test(target)) {
    return isCode(target) ? `globs code with "${specifier}"; import each file by name` : undefined;
  }
  if (target.startsWith("..")) {
    return layer.level < 4
      ? `imports "${specifier}" from outside src, which only levels 4 and 5 may`
      : undefined;
  }
  if (!paths.has(target)) {
    return `imports "${specifier}", but there is no such file; relative imports end in .ts, .astro or the like`;
  }
  return folderFault(target, specifier, layer, layers);
}

function packageFault(name: string, layer: Layer): string | undefined {
  const allowed = layer.packages.some((entry) =>
    entry.endsWith("*") ? name.startsWith(entry.slice(0, -1)) : name === entry,
  );
  if (allowed) return undefined;
  return `imports the package "${name}"; ${layer.folder}/ may import ${layer.packages.join(", ") || "none"}`;
}

function folderFault(
  path: string,
  specifier: string,
  layer: Layer,
  layers: readonly Layer[],
): string | undefined {
  const target = layerOf(path, layers);
  if (!target) return `imports "${specifier}", whose folder does not stand in the table of levels`;
  const { folder } = target;
  if (folder === layer.folder) return undefined;
  if (layer.never?.includes(folderOf(path)))
    return `imports "${specifier}"; ${layer.folder}/ never imports ${folderOf(path)}/`;
  if (target.level < layer.level || layer.beside?.includes(folder) || isLowerStep(target, layer))
    return undefined;
  return (
    `imports "${specifier}"; ${folder}/ is level ${levelOf(target)} and ${layer.folder}/ is level ${levelOf(layer)}, ` +
    `imports only go down`
  );
}

/** Whether both are steps inside one folder of src, and the first is the lower. */
function isLowerStep(target: Layer, layer: Layer): boolean {
  const inOne = folderOf(`${target.folder}/`) === folderOf(`${layer.folder}/`);
  return inOne && target.step !== undefined && layer.step !== undefined && target.step < layer.step;
}

const levelOf = ({ level, step }: Layer): string =>
  step === undefined ? `${level}` : `${level}, step ${step}`;

/** The path within src that a relative import names, without a query such as ?raw. */
export function resolveImport(from: string, specifier: string): string {
  return posix.join(posix.dirname(from), specifier.replace(/\?.*$/, ""));
}
