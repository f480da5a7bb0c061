import type * as z from "zod";
import type { Fault } from "../../models/fault.ts";
import { comparable, nearestName } from "../../models/nearest.ts";
import type { IssueParams } from "./refuse.ts";
import type { OpenedYaml, Path } from "./open-yaml.ts";
import { ownEntry } from "../../models/own-entry.ts";

type Issue = z.core.$ZodIssue;

/** What a schema can tell about an issue only while it is raised; kept in the issue's message. */
export const describeIssue: z.core.$ZodErrorMap = (issue) => {
  // A check raises the issue in the name of the schema it belongs to.
  const inst = (issue.schema ?? issue.inst) as z.ZodType | undefined;
  if (issue.code === "unrecognized_keys") {
    const { shape } = (inst?._zod.def ?? {}) as { shape?: Record<string, z.ZodType> };
    const names: Names = { allowed: Object.keys(shape ?? {}), also: otherNames(shape ?? {}) };
    return JSON.stringify(names);
  }
  return inst?.description ?? "";
};

/** Names of the entries of a group, and what else people call them (`alsoCalled` in a field's meta data). */
type Names = { readonly allowed: readonly string[]; readonly also: Readonly<Record<string, string>> };

function otherNames(shape: Readonly<Record<string, z.ZodType>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(shape).flatMap(([name, field]) => {
      const also = field.meta()?.["alsoCalled"];
      return Array.isArray(also) ? also.map((other) => [comparable(String(other)), name]) : [];
    }),
  );
}

/** The issues with paths from the top of the file; a choice of forms is replaced by the issues of the likeliest form. */
export function flatIssues(issues: readonly Issue[], around: Path = []): readonly Issue[] {
  return issues.flatMap((issue) => {
    const path = [...around, ...issue.path];
    const branch = issue.code === "invalid_union" ? likeliestBranch(issue.errors) : undefined;
    return branch ? flatIssues(branch, path) : [{ ...issue, path }];
  });
}

/** Every fault that an issue, flattened before, stands for: one for each unknown name. */
export function issueFaults(issue: Issue, opened: OpenedYaml): readonly Fault[] {
  const { path } = issue;
  if (issue.code === "unrecognized_keys") {
    const names = JSON.parse(issue.message) as Names;
    return issue.keys.map((key) => unknownName(key, names, path, opened));
  }
  if (issue.code === "invalid_key" || issue.code === "invalid_element") {
    const found = String(path.at(-1) ?? "");
    const place = opened.placeOfName(path);
    return issue.issues.map((inner) => ({ ...faultOf(inner, path, opened), place, found }));
  }
  return [faultOf(issue, path, opened)];
}

function faultOf(issue: Issue, path: Path, opened: OpenedYaml): Fault {
  if (issue.code === "custom" && issue.params?.["remedy"] !== undefined) {
    const params = issue.params as IssueParams;
    const named = params.at === "name";
    return {
      place: named ? opened.placeOfName(path) : opened.placeAt(path, params.offset),
      found: params.found ?? (named ? String(path.at(-1) ?? "") : opened.writtenAt(path)),
      problem: params.problem,
      ...(params.allowed === undefined ? {} : { allowed: params.allowed }),
      ...(params.nearest === undefined ? {} : { nearest: params.nearest }),
      remedy: params.remedy,
      severity: params.severity,
    };
  }
  const found = opened.writtenAt(path);
  const place = opened.placeAt(path);
  if (issue.code === "invalid_value") {
    const words = issue.values.map(String);
    const nearest = nearestName(found, words);
    const missing = found === "";
    return {
      place,
      found,
      problem: missing
        ? `${nameAt(path)} is missing`
        : `this is not one of the words possible for ${nameAt(path)}`,
      allowed: words.join(", "),
      ...(nearest === undefined ? {} : { nearest }),
      remedy: missing ? `Add ${nameAt(path)} with one of these words.` : "Write one of the words allowed.",
      severity: "fault",
    };
  }
  const { problem, allowed, remedy } = saying(issue, path, found);
  return { place, found, problem, ...(allowed === "" ? {} : { allowed }), remedy, severity: "fault" };
}

type Saying = { readonly problem: string; readonly allowed: string; readonly remedy: string };

function saying(issue: Issue, path: Path, found: string): Saying {
  const name = nameAt(path);
  const allowed = issue.message;
  switch (issue.code) {
    case "invalid_type": {
      const kind = KINDS[issue.expected] ?? issue.expected;
      if (found === "" && path.length === 0) {
        return {
          problem: "nothing is written here yet",
          allowed,
          remedy: `Write ${kind}${HOW[issue.expected] ?? ""}.`,
        };
      }
      return found === ""
        ? {
            problem: `${name} is missing`,
            allowed: allowed || kind,
            remedy: allowed ? `Add ${name}.` : `Add ${name}, ${kind}.`,
          }
        : {
            problem: `${name} must be ${kind}`,
            allowed,
            remedy: `Write ${kind}${HOW[issue.expected] ?? ""}.`,
          };
    }
    case "too_small":
    case "too_big": {
      const [limit, word] = issue.code === "too_small" ? [issue.minimum, "least"] : [issue.maximum, "most"];
      const strictly = issue.inclusive === false ? ` and not ${limit} itself` : "";
      const thing = THINGS[issue.origin];
      const bound = `at ${word} ${limit}${thing === undefined ? "" : ` ${thing[limit === 1 ? 0 : 1]}`}${strictly}`;
      const problem = `${name} must ${thing === undefined ? "be" : "have"} ${bound}`;
      return { problem, allowed, remedy: `Write ${bound}.` };
    }
    case "not_multiple_of":
      return {
        problem: `${name} must be a multiple of ${issue.divisor}`,
        allowed,
        remedy: `Write a multiple of ${issue.divisor}.`,
      };
    case "invalid_format":
      return {
        problem: `${name} is not written as it should be`,
        allowed,
        remedy: "Write it in the form allowed.",
      };
    case "custom":
      return {
        problem: issue.message || `${name} cannot be right`,
        allowed: "",
        remedy: "Correct this entry.",
      };
    default:
      return { problem: `${name} cannot be read`, allowed, remedy: "Write it in one of the forms allowed." };
  }
}

const KINDS: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  int: "a whole number",
  boolean: "`true` or `false`",
  array: "a list",
  object: "a group of entries",
  record: "a group of entries",
  null: "empty",
  never: "left out",
};

const HOW: Readonly<Record<string, string>> = {
  string: ", in quotes if it looks like a number",
  array: ": `[one, two]`, or one `- entry` a line",
  object: ": one indented `name: value` a line, or `{name: value, name: value}`",
  record: ": one indented `name: value` a line, or `{name: value, name: value}`",
};

const THINGS: Readonly<Record<string, readonly [one: string, more: string]>> = {
  string: ["letter", "letters"],
  array: ["entry", "entries"],
};

const QUOTES_HINT = " If it belongs to the text before the comma, put that text in quotes.";

function unknownName(key: string, { allowed, also }: Names, path: Path, opened: OpenedYaml): Fault {
  const called = comparable(key);
  const nearest = ownEntry(also, called) ?? nearestName(key, allowed);
  // In braces a comma in a text begins a new entry.
  const cutOff = opened.writtenAt([...path, key]) === "" ? QUOTES_HINT : "";
  return {
    place: opened.placeOfName([...path, key]),
    found: key,
    problem: path.length === 0 ? "no entry has this name" : `no entry of ${nameAt(path)} has this name`,
    allowed: allowed.join(", "),
    ...(nearest === undefined ? {} : { nearest }),
    remedy:
      nearest === undefined
        ? `Delete the entry, or use one of the names allowed.${cutOff}`
        : `Write \`${nearest}:\`.${cutOff}`,
    severity: "fault",
  };
}

/** The branch whose fault lies deepest: the one that at least fits in kind. */
function likeliestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const fitting = branches.filter((issues) => issues.length > 0 && !issues.every(isWrongKind));
  return fitting.length > 0 ? fitting.toSorted((one, other) => one.length - other.length)[0] : undefined;
}

const isWrongKind = (issue: Issue): boolean => issue.code === "invalid_type" && issue.path.length === 0;

function nameAt(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return "the file";
  const list = path.at(-2);
  return typeof last === "number"
    ? `entry ${last + 1}${list === undefined ? "" : ` of \`${String(list)}\``}`
    : `\`${String(last)}\``;
}
