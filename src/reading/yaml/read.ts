import type * as z from "zod";
import type { Checked, Fault } from "../../models/fault.ts";
import type { SourceFile } from "../files/source-file.ts";
import type { IssueParams } from "./refuse.ts";
import { splitFrontMatter } from "./front-matter.ts";
import { describeIssue, flatIssues, issueFaults } from "./issue-faults.ts";
import { openYaml, type OpenedYaml, type Scalars } from "./open-yaml.ts";

/** What stands below the front matter, and the line of the file on which it begins. */
type Body = { readonly body: string; readonly bodyLine: number };

/** How plain words and numbers reach the schema; see {@link Scalars}. */
type ReadOptions = { readonly scalars?: Scalars };

/** Reads a whole YAML file by a schema. Every fault becomes one place with its words; none hides another. Never throws. */
export function readYaml<T>(file: SourceFile, schema: z.ZodType<T>, options: ReadOptions = {}): Checked<T> {
  return checkOpened(openYaml(file.path, file.text, options.scalars ?? "typed"), schema);
}

/** Reads the front matter of an MDX file (YAML between two lines `---`) by a schema, and hands on the body as it is. */
export function readFrontMatter<T>(
  file: SourceFile,
  schema: z.ZodType<T>,
  options: ReadOptions = {},
): Checked<T> & Body {
  const split = splitFrontMatter(file);
  if (!split.ok) return { ok: false, faults: split.faults, body: "", bodyLine: 1 };
  const opened = openYaml(file.path, split.value.yaml, options.scalars ?? "typed");
  return { ...checkOpened(opened, schema), body: split.value.body, bodyLine: split.value.bodyLine };
}

/** Longest chain of notices about one file; a schema that needs more repeats itself. */
const MOST_READINGS = 1000;

/**
 * Applies a schema to an opened file. Notices do not refuse: each doubtful text is replaced by the reading it was given
 * and the schema applied again, so that faults behind a notice are told as well.
 */
export function checkOpened<T>(opened: OpenedYaml, schema: z.ZodType<T>): Checked<T> {
  if (opened.faults.length > 0) return { ok: false, faults: opened.faults };
  const notices: Fault[] = [];
  let value = opened.value;
  let renamed: readonly Renaming[] = [];
  for (let reading = 0; reading < MOST_READINGS; reading++) {
    const result = schema.safeParse(value, { error: describeIssue });
    if (result.success) return { ok: true, value: result.data, notices };
    const issues = flatIssues(result.error.issues);
    const told = (issue: z.core.$ZodIssue): readonly Fault[] =>
      issueFaults({ ...issue, path: asWritten(issue.path, renamed) }, opened);
    const doubtful = issues.filter(isNotice);
    if (doubtful.length === 0) {
      return { ok: false, faults: issues.flatMap(told) };
    }
    for (const issue of doubtful) {
      notices.push(...told(issue).filter((notice) => !notices.some((other) => isSame(notice, other))));
      const { at, readAs = "" } = issue.params as IssueParams;
      value = at === "name" ? renameAt(value, issue.path, readAs) : replaceAt(value, issue.path, readAs);
      if (at === "name") renamed = [{ path: issue.path, readAs }, ...renamed];
    }
  }
  throw new Error("a schema gives notice of its own reading again and again");
}

/** A line with two doubtful facts is read twice, and each fact told once. */
const isSame = (one: Fault, other: Fault): boolean =>
  one.problem === other.problem &&
  one.place.line === other.place.line &&
  one.place.column === other.place.column;

const isNotice = (issue: z.core.$ZodIssue): issue is z.core.$ZodIssueCustom =>
  issue.code === "custom" && issue.params?.["severity"] === "notice";

/** An entry read under another name than the one written. */
type Renaming = { readonly path: readonly PropertyKey[]; readonly readAs: string };

/** The path in the file of a path in the value, with every entry under the name it is written with; latest change first. */
function asWritten(path: readonly PropertyKey[], renamed: readonly Renaming[]): PropertyKey[] {
  let written = [...path];
  for (const { path: from, readAs } of renamed) {
    const to = [...from.slice(0, -1), readAs];
    if (to.every((step, index) => step === written[index]))
      written = [...from, ...written.slice(from.length)];
  }
  return written;
}

function renameAt(value: unknown, path: readonly PropertyKey[], readAs: string): unknown {
  const [step, ...rest] = path;
  const group = value as Record<PropertyKey, unknown>;
  if (step === undefined) return value;
  if (rest.length > 0) return replaceAt(value, [step], renameAt(group[step], rest, readAs));
  return Object.fromEntries(
    Object.entries(group).map(([name, entry]) => [name === step ? readAs : name, entry]),
  );
}

function replaceAt(value: unknown, path: readonly PropertyKey[], by: unknown): unknown {
  const [step, ...rest] = path;
  // A list of one may be written as its only entry.
  if (step === undefined || typeof value !== "object" || value === null) return by;
  if (Array.isArray(value)) {
    return value.map((item: unknown, index) => (index === step ? replaceAt(item, rest, by) : item));
  }
  if (step === 0 && !(step in value)) return replaceAt(value, rest, by);
  const group = value as Record<PropertyKey, unknown>;
  return { ...group, [step]: replaceAt(group[step], rest, by) };
}
