import type { Fault } from "../../models/fault.ts";
import { idOfFile } from "../files/id-of-file.ts";
import { nearestName } from "../../models/nearest.ts";
import type { SourceFile } from "../files/source-file.ts";

/** Where files of each kind stand, and their ending. */
export const FOLDERS = {
  movements: { folder: "content/movements", ending: "mdx" },
  "warm-ups": { folder: "content/warm-ups", ending: "mdx" },
  recovery: { folder: "content/recovery", ending: "mdx" },
  cautions: { folder: "content/cautions", ending: "mdx" },
  workouts: { folder: "content/workouts", ending: "mdx" },
  bands: { folder: "content/bands", ending: "yaml" },
  gyms: { folder: "content/gyms", ending: "yaml" },
  competitions: { folder: "content/competitions", ending: "yaml" },
  fields: { folder: "content/fields", ending: "csv" },
  athletes: { folder: "athletes", ending: "yaml" },
} as const;
export type FileKind = keyof typeof FOLDERS;

export type SortedFiles = {
  readonly of: Readonly<Record<FileKind, readonly SourceFile[]>>;
  readonly settings?: SourceFile;
  /** The coach's own text of messages. */
  readonly message?: SourceFile;
  readonly faults: readonly Fault[];
};

const KINDS = Object.keys(FOLDERS) as FileKind[];
const ALLOWED = [
  ...KINDS.map((kind) => `${FOLDERS[kind].folder}/*.${FOLDERS[kind].ending}`),
  "content/settings.yaml",
].join(", ");
/** Endings of files in which somebody may have written something that is missed. */
const WRITTEN = /\.(?:mdx?|ya?ml|csv|tsv|json|txt|xlsx?|ods|numbers|docx?)$/i;

/**
 * Sorts files by folder and ending. An own file goes before a built-in one of the same name. Files in an unknown place
 * are told; hidden files, backups and `README.md` are passed over.
 */
export function sortFiles(builtIn: readonly SourceFile[], own: readonly SourceFile[]): SortedFiles {
  const found = new Map<FileKind, Map<string, SourceFile>>(KINDS.map((kind) => [kind, new Map()]));
  const faults: Fault[] = [];
  let settings: SourceFile | undefined;
  let message: SourceFile | undefined;
  const ownPaths = new Set(own.map((file) => file.path));
  const all = [
    ...builtIn.filter((file) => !ownPaths.has(file.path)).map((file) => ({ file, isOwn: false })),
    ...own.map((file) => ({ file, isOwn: true })),
  ];
  const ownIds = new Set<string>();
  for (const { file, isOwn } of all) {
    const place = placeOf(file.path);
    if (place === "passed-over") continue;
    if (place === "settings") settings = file;
    else if (place === "message") message = file;
    else if (typeof place !== "string") faults.push(place);
    else {
      const id = idOfFile(file.path);
      const key = `${place}/${id.toLowerCase()}`;
      if (isOwn && ownIds.has(key)) faults.push(twice(file, found.get(place)?.get(id.toLowerCase())));
      else found.get(place)?.set(id.toLowerCase(), file);
      if (isOwn) ownIds.add(key);
    }
  }
  const of = Object.fromEntries(KINDS.map((kind) => [kind, inOrder(found.get(kind))])) as SortedFiles["of"];
  const single = {
    ...(settings === undefined ? {} : { settings }),
    ...(message === undefined ? {} : { message }),
  };
  return { of, ...single, faults };
}

const inOrder = (files: ReadonlyMap<string, SourceFile> | undefined): readonly SourceFile[] =>
  [...(files?.values() ?? [])].toSorted((one, other) => (one.path < other.path ? -1 : 1));

function placeOf(path: string): FileKind | "settings" | "message" | "passed-over" | Fault {
  const steps = path.split("/");
  const name = steps.at(-1) ?? "";
  if (/^\.|~$|^#|^~\$/.test(name) || /^readme\.md$/i.test(name)) return "passed-over";
  const top = steps.findIndex((step) => step === "content" || step === "athletes");
  if (top === -1) return misplaced(path, name);
  const inside = steps.slice(top);
  if (/^settings\.ya?ml$/i.test(name) && inside.length === 2 && inside[0] === "content") return "settings";
  if (inside.join("/") === "content/message.txt") return "message";
  const kind = KINDS.find((each) => inside.join("/").startsWith(`${FOLDERS[each].folder}/`));
  if (kind === undefined) return misplaced(path, name, inside);
  const { ending } = FOLDERS[kind];
  if (new RegExp(ending === "yaml" ? "\\.ya?ml$" : `\\.${ending}$`, "i").test(name)) return kind;
  if (!WRITTEN.test(name)) return "passed-over";
  const renamed = `${inside.slice(0, -1).join("/")}/${idOfFile(path)}.${ending}`;
  const [problem, remedy] = /\.(?:mdx?|ya?ml)$/i.test(name)
    ? [
        `files in ${FOLDERS[kind].folder} end in .${ending}`,
        `Rename the file to ${renamed}, if it holds what such a file holds.`,
      ]
    : ["a file of this kind is not read", `Write its contents into ${renamed}, or move the file elsewhere.`];
  return faultOf(path, name, problem, remedy);
}

/** A file in no known folder: a fault where somebody may have written something, passed over otherwise. */
function misplaced(path: string, name: string, inside: readonly string[] = []): "passed-over" | Fault {
  if (!WRITTEN.test(name)) return "passed-over";
  const folder = inside.at(-2) ?? "";
  const kind = KINDS.find((each) => each === nearestName(folder, KINDS));
  const fits = kind !== undefined && name.toLowerCase().endsWith(FOLDERS[kind].ending);
  const problem = "a file in this place is not read";
  const remedy = fits
    ? `Move it to ${FOLDERS[kind].folder}/${name}.`
    : "Move it to one of the places allowed, or out of this folder.";
  return {
    ...faultOf(path, name, problem, remedy),
    allowed: ALLOWED,
    ...(fits ? { nearest: FOLDERS[kind].folder } : {}),
  };
}

function twice(file: SourceFile, other: SourceFile | undefined): Fault {
  const problem = `another file has the same name: ${other?.path ?? ""}`;
  return faultOf(
    file.path,
    idOfFile(file.path),
    problem,
    "Rename one of the two; other files call them by this name.",
  );
}

const faultOf = (path: string, found: string, problem: string, remedy: string): Fault => ({
  place: { file: path, line: 1, column: 1 },
  found,
  problem,
  remedy,
  severity: "fault",
});
