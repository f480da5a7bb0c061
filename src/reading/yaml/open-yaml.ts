import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  type Document,
  type Node,
  type YAMLMap,
} from "yaml";
import type { Fault, Place } from "../../models/fault.ts";
import { joinDecimalCommas } from "./join-decimal-commas.ts";
import { placeInScalar } from "./place-in-scalar.ts";
import { yamlFault } from "./yaml-fault.ts";

/** Way from the top of a file to one entry: names of entries and, in lists, numbers from 0. */
export type Path = readonly PropertyKey[];

/**
 * How plain words and numbers arrive. `typed`: numbers as numbers, true and false as such. `text`: everything as
 * written, so that `7.10` is not taken for 7.1; entries left empty are null in both.
 */
export type Scalars = "typed" | "text";

/** A YAML text opened: its value, and where each entry of it stands. */
export type OpenedYaml = {
  /** Undefined when there are faults. */
  readonly value: unknown;
  readonly faults: readonly Fault[];
  /** Place of the value at a path, or of the nearest entry around it. `offset` counts characters inside a text. */
  readonly placeAt: (path: Path, offset?: number) => Place;
  /** Place of the name of the entry at a path. `offset` counts characters inside the name. */
  readonly placeOfName: (path: Path, offset?: number) => Place;
  /** The value at a path exactly as it is written; empty when there is none. */
  readonly writtenAt: (path: Path) => string;
};

/**
 * Opens YAML 1.2 (core schema). Beyond the standard, a decimal comma between digits inside braces is kept
 * (`{best: 82,5 kg}`). Refuses what people type by accident: repeated names, references (`*x`, `&x`), tags (`!x`),
 * more than one document. Never throws.
 */
export function openYaml(file: string, text: string, scalars: Scalars): OpenedYaml {
  const source = text.replace(/^\uFEFF/, "");
  const { document, lines } = parse(source);
  const placeOf = (offset: number): Place => {
    const { line, col } = lines.linePos(Math.min(Math.max(offset, 0), source.length));
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const faults = [...document.errors, ...document.warnings].map((error) => yamlFault(error, source, placeOf));
  const root = document.contents as Node | null;
  if (root !== null) joinDecimalCommas(root, source);
  const value =
    root === null
      ? null
      : valueOf(root, { source, scalars, placeOf, faults, readFaults: faults.length === 0 });
  const placeIn = (node: Node | undefined, offset: number): Place =>
    placeOf(isScalar(node) && offset > 0 ? placeInScalar(node, source, offset) : (node?.range?.[0] ?? 0));
  return {
    value: faults.length === 0 ? value : undefined,
    faults,
    placeAt: (path, offset = 0) => placeIn(nearestNode(root, path), offset),
    placeOfName: (path, offset = 0) => placeIn(nameOf(root, path) ?? nearestNode(root, path), offset),
    writtenAt: (path) => written(nodeAt(root, path), source),
  };
}

type Parsed = { readonly document: Document.Parsed; readonly lines: LineCounter };

/** A value that is only `-` or `?`, at the end of a line or before a comma or a closing bracket. */
const LONE_SIGN = /(:[ \t]+)[-?](?=[ \t]*(?:[,}\]]|(?:#.*)?\r?$))/gm;

/** Parses. Where that fails, values that are only `-` or `?`, which YAML cannot take, are read as `~`, an empty value. */
function parse(source: string): Parsed {
  const parsed = parseOnce(source);
  if (parsed.document.errors.length === 0) return parsed;
  const mended = parseOnce(source.replace(LONE_SIGN, "$1~"));
  return mended.document.errors.length < parsed.document.errors.length ? mended : parsed;
}

/**
 * The tree of a text that is to be changed and written again, read as {@link openYaml} reads it: written without the same
 * indulgence, `{best: 82,5 kg}` would come out as two entries. Nothing where the text cannot be read.
 */
export function openForEdit(text: string): Document.Parsed | undefined {
  const source = text.replace(/^\uFEFF/, "");
  const { document } = parse(source);
  const root = document.contents as Node | null;
  if (document.errors.length > 0) return undefined;
  if (root !== null) joinDecimalCommas(root, source);
  return document;
}

function parseOnce(source: string): Parsed {
  const lines = new LineCounter();
  const options = { lineCounter: lines, prettyErrors: false, uniqueKeys: false, logLevel: "error" } as const;
  return { document: parseDocument(source, options), lines };
}

type Reading = {
  readonly source: string;
  readonly scalars: Scalars;
  readonly placeOf: (offset: number) => Place;
  readonly faults: Fault[];
  /** False once the text itself is broken: what follows from that is not told. */
  readonly readFaults: boolean;
};

/** No entry needs more signs, and readers of words try many ways to cut them. */
const LONGEST_TEXT = 2000;
/** Signs of it that tell which one is meant. */
const SHOWN_OF_LONG = 40;

function valueOf(node: unknown, reading: Reading): unknown {
  if (isMap(node)) return mapValue(node, reading);
  if (isSeq(node)) return node.items.map((item) => valueOf(item, reading));
  if (isPair(node)) return valueOf(node.value, reading);
  if (isAlias(node)) {
    tell(
      reading,
      node,
      "a text that begins with * is taken for a reference",
      `Put it in quotes: "${written(node, reading.source)}".`,
    );
    return undefined;
  }
  if (!isScalar(node)) return null;
  if (node.anchor !== undefined && reading.readFaults) {
    const found = `&${node.anchor}`;
    const place = reading.placeOf(reading.source.lastIndexOf(found, node.range?.[0]));
    const problem = "a text that begins with & is taken for a reference";
    reading.faults.push({
      place,
      found,
      problem,
      remedy: `Put it in quotes: "${found} ...".`,
      severity: "fault",
    });
  }
  if (reading.readFaults && (node.source ?? String(node.value)).length > LONGEST_TEXT) {
    const problem = `this text has ${(node.source ?? String(node.value)).length} signs`;
    const found = `${written(node, reading.source).slice(0, SHOWN_OF_LONG)}…`;
    const remedy = `Keep an entry under ${LONGEST_TEXT} signs.`;
    const place = reading.placeOf(node.range?.[0] ?? 0);
    reading.faults.push({ place, found, problem, remedy, severity: "fault" });
    return undefined;
  }
  const plain = node.type === "PLAIN";
  if (reading.scalars === "typed" || !plain || node.source === "" || node.source === undefined)
    return node.value;
  return node.source;
}

function mapValue(map: YAMLMap, reading: Reading): Record<string, unknown> {
  const entries = new Map<string, { value: unknown; line: number }>();
  for (const { key, value } of map.items) {
    if (!isScalar(key)) {
      tell(
        reading,
        key as Node,
        "this cannot be the name of an entry",
        "Write a word, a colon and a space: `name: value`.",
      );
      continue;
    }
    const name =
      written(key, reading.source) === ""
        ? ""
        : isPlainName(key.source, key.type)
          ? (key.source ?? "")
          : String(key.value);
    const line = reading.placeOf(key.range?.[0] ?? 0).line;
    const earlier = entries.get(name);
    if (earlier !== undefined || name === "__proto__") {
      const problem = earlier
        ? `"${name}" already stands on line ${earlier.line}`
        : `"${name}" is no name for an entry`;
      tell(
        reading,
        key,
        problem,
        earlier ? "Keep one of the two lines, or join them." : "Choose another name.",
      );
      continue;
    }
    entries.set(name, { value: valueOf(value, reading), line });
  }
  return Object.fromEntries([...entries].map(([name, entry]) => [name, entry.value]));
}

const isPlainName = (source: string | undefined, type: string | undefined): boolean =>
  type === "PLAIN" && source !== undefined;

function tell(reading: Reading, node: Node, problem: string, remedy: string): void {
  if (!reading.readFaults) return;
  const place = reading.placeOf(node.range?.[0] ?? 0);
  reading.faults.push({ place, found: written(node, reading.source), problem, remedy, severity: "fault" });
}

function written(node: Node | undefined, source: string): string {
  return node?.range ? source.slice(node.range[0], node.range[1]).trim() : "";
}

function childOf(node: Node | undefined, step: PropertyKey): Node | undefined {
  if (isSeq(node)) return typeof step === "number" ? (node.items[step] as Node | undefined) : undefined;
  const pair = isMap(node) ? node.items.find(({ key }) => keyText(key) === String(step)) : undefined;
  if (pair) return pair.value as Node | undefined;
  // A list of one may be written as its only entry.
  return step === 0 ? node : undefined;
}

function keyText(key: unknown): string | undefined {
  if (!isScalar(key)) return undefined;
  return key.type === "PLAIN" ? (key.source ?? "") : String(key.value);
}

function nodeAt(root: Node | null, path: Path): Node | undefined {
  let node = root ?? undefined;
  for (const step of path) node = childOf(node, step);
  return node;
}

/** The node at a path; where the path leaves the file, the name of the last entry on it, else that entry itself. */
function nearestNode(root: Node | null, path: Path): Node | undefined {
  for (let length = path.length; length >= 0; length--) {
    const node = nodeAt(root, path.slice(0, length));
    if (node?.range && (length === path.length || length === 0)) return node;
    if (node?.range) return nameOf(root, path.slice(0, length)) ?? node;
  }
  return undefined;
}

function nameOf(root: Node | null, path: Path): Node | undefined {
  const last = path.at(-1);
  const parent = nodeAt(root, path.slice(0, -1));
  if (last === undefined || !isMap(parent)) return undefined;
  return parent.items.find((pair) => keyText(pair.key) === String(last))?.key as Node | undefined;
}
