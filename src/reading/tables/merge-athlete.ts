import { Document, isMap, isScalar, isSeq, type YAMLMap } from "yaml";
import { openForEdit } from "../yaml/open-yaml.ts";
import type { FindMovement } from "../names/find-movement.ts";
import type { Put } from "./cell-reading.ts";

/** What a cell of an earlier import put into the file: its text, and the values. */
type EarlierCell = { readonly raw: string; readonly puts: readonly Put[] };
/** Cells by their heading. */
export type EarlierCells = Readonly<Record<string, EarlierCell>>;

export type NewCell = EarlierCell & {
  readonly heading: string;
  readonly cell: string;
  /** Set where it only fills what the file leaves open. */
  readonly fills?: true;
};

/** A change made to a file, or one that was not made because a person wrote something else there meanwhile. */
export type Change = {
  readonly what: string;
  readonly from?: string;
  readonly to: string;
  readonly cell: string;
  readonly kind: "added" | "changed" | "kept";
};

type Merged = { readonly text: string; readonly changes: readonly Change[] };

type MergeContext = {
  readonly earlier: EarlierCells;
  readonly find: FindMovement;
  /** What somebody said of a value that stands otherwise in the file. */
  readonly counts: (kept: Change) => "table" | "file" | undefined;
};

/** The order of entries in a file as a person writes it. */
const ORDER = [
  "name",
  "share name",
  "level",
  "division",
  "sex",
  "units",
  "body mass",
  "height",
  "born",
  "gym",
  "group",
  "lifts",
  "efforts",
  "unbroken",
  "cannot",
  "recovery",
  "habits",
  "limits",
  "starts",
  "results",
  "note",
];

/**
 * Puts the cells of a table into an athlete's file. A cell that says what it said at the last import leaves the file alone,
 * whatever a person made of it since. Where the cell changed and the file still holds what the last import wrote, the file
 * changes; where a person wrote something else there, the file keeps it and that is told. Comments and order stay.
 */
export function mergeAthlete(
  name: string,
  existing: string | undefined,
  cells: readonly NewCell[],
  { earlier, find, counts }: MergeContext,
): Merged {
  const document = existing === undefined ? new Document({ name }) : openForEdit(existing);
  const changes: Change[] = [];
  if (!isMap(document?.contents)) return { text: existing ?? "", changes };
  const wasInOrder = isInOrder(document.contents);
  for (const { heading, cell, raw, puts, fills } of cells) {
    const before = earlier[heading];
    if (before?.raw === raw) continue;
    if (fills && before === undefined && puts.every(({ entry }) => document.has(entry))) continue;
    for (const put of before?.puts ?? []) if (put.listed && !puts[0]?.listed) takeOut(document, put);
    for (const put of before?.puts ?? []) if (isNoLonger(put, puts)) withdraw(document, put, find);
    puts.forEach((put, index) => {
      const at = before?.puts[index];
      const held = at && isNoLonger(at, puts) ? undefined : at;
      const change = put.listed ? applyToList(document, put, held) : apply(document, put, held, find);
      if (!change) return;
      const isSettled = change.kind === "kept" && counts({ ...change, cell }) === "table";
      if (isSettled) overwrite(document, put, find);
      changes.push({ ...change, cell, ...(isSettled ? { kind: "changed" } : {}) });
    });
  }
  if (wasInOrder) inOrder(document.contents);
  const text = document.toString({ lineWidth: 0, flowCollectionPadding: false });
  return {
    text: changes.some(({ kind }) => kind !== "kept") || existing === undefined ? text : existing,
    changes,
  };
}

/** A single value that the cell puts under another name now: `12` of pull-ups has become `12 strict`. */
const isNoLonger = (put: Put, puts: readonly Put[]): boolean =>
  !put.listed &&
  put.key !== undefined &&
  puts.length > 0 &&
  puts.every(({ entry, key }) => entry !== put.entry || key !== put.key);

/** Takes out what the last import put in, where nobody wrote something else there since. */
function withdraw(document: Document, put: Put, find: FindMovement): void {
  const path = [put.entry, keyInFile(document, put, find)];
  const held = document.getIn(path);
  if (held !== undefined && say(plain(held)) === say(put.value)) document.deleteIn(path);
}

/** Takes an item out of a list, and the list away with its last one. */
function takeOut(document: Document, { entry, value }: Put): void {
  const held = document.get(entry, true);
  if (!isSeq(held)) return;
  const at = held.items.findIndex((item) => say(plain(item)) === say(value));
  if (at >= 0) held.delete(at);
  if (held.items.length === 0) document.delete(entry);
}

function overwrite(document: Document, put: Put, find: FindMovement): void {
  if (put.listed) applyToList(document, put, undefined);
  else
    setIn(
      document,
      put.key === undefined ? [put.entry] : [put.entry, keyInFile(document, put, find)],
      put.value,
    );
}

type Applied = Omit<Change, "cell"> | undefined;

function apply(document: Document, put: Put, before: Put | undefined, find: FindMovement): Applied {
  const path = put.key === undefined ? [put.entry] : [put.entry, keyInFile(document, put, find)];
  const what = put.key ?? put.entry;
  const to = say(put.value);
  const held = document.getIn(path);
  const from = held === undefined ? undefined : say(plain(held));
  if (from === to) return undefined;
  if (from === undefined && (before === undefined || before.listed)) {
    setIn(document, path, put.value);
    return { kind: "added", what, to };
  }
  if (from !== undefined && before !== undefined && from === say(before.value)) {
    setIn(document, path, put.value);
    return { kind: "changed", what, from, to };
  }
  return { kind: "kept", what, ...(from === undefined ? {} : { from }), to };
}

function applyToList(document: Document, put: Put, before: Put | undefined): Applied {
  const to = say(put.value);
  const held = document.get(put.entry, true);
  const list = isSeq(held) ? held : undefined;
  const items = list
    ? list.items.map((item) => say(plain(item)))
    : held === undefined
      ? []
      : [say(plain(held))];
  if (items.includes(to)) return undefined;
  const at = before === undefined ? -1 : items.indexOf(say(before.value));
  if (before !== undefined && at === -1) return { kind: "kept", what: put.entry, to };
  if (list && at >= 0) {
    list.set(at, document.createNode(put.value));
    return { kind: "changed", what: put.entry, from: items[at] ?? "", to };
  }
  if (list) list.add(document.createNode(put.value));
  else
    document.set(put.entry, document.createNode([...(held === undefined ? [] : [plain(held)]), put.value]));
  return { kind: "added", what: put.entry, to };
}

/** The name under which a movement stands in the file already, however it is spelt there. */
function keyInFile(document: Document, { entry, key = "" }: Put, find: FindMovement): string {
  const group = document.get(entry);
  const wanted = find(key);
  if (!isMap(group) || wanted.kind !== "found") return key;
  const names = group.items.map((item) => String(plain(item.key)));
  return (
    names.find((one) => one === key) ??
    names.find((one) => {
      const found = find(one);
      return found.kind === "found" && found.movement.id === wanted.movement.id;
    }) ??
    key
  );
}

/** A number stands without quotes, as a person writes it. */
const asNumber = (value: unknown): unknown =>
  typeof value === "string" && /^[1-9]\d{0,5}$/.test(value) ? Number(value) : value;

function setIn(document: Document, path: readonly string[], given: unknown): void {
  const [entry = "", key] = path;
  const value = asNumber(given);
  const held = document.getIn(path, true);
  if (isScalar(held) && (typeof value === "string" || typeof value === "number")) {
    // The same place in the file, with the comment behind it.
    held.value = value;
    return;
  }
  if (key !== undefined && !isMap(document.get(entry)))
    document.set(entry, document.createNode({ [key]: value }));
  else document.setIn(path, document.createNode(value));
}

const plain = (node: unknown): unknown =>
  isScalar(node) ? node.value : isMap(node) || isSeq(node) ? node.toJSON() : node;

/** Values compared as people see them. */
const say = (value: unknown): string =>
  typeof value === "object" && value !== null ? JSON.stringify(value) : String(value).trim();

const rank = ({ key }: YAMLMap["items"][number]): number => {
  const at = ORDER.indexOf(String(plain(key)));
  return at === -1 ? ORDER.length : at;
};

/** A file in the usual order stays so; one in an order of somebody's own is left in it. */
const isInOrder = ({ items }: YAMLMap): boolean =>
  items.every((item, index) => index === 0 || rank(items[index - 1] ?? item) <= rank(item));

function inOrder(map: YAMLMap): void {
  map.items.sort((one, other) => rank(one) - rank(other));
}
