/** A piece of a file that may hold references: a string or a name in signs, which hold none, a stream's beginning, a reference. */
const PIECE = /\((?:\\[\s\S]|[^()\\])*\)|<[0-9A-Fa-f\s]*>|\bstream\r?\n|\b(\d+) 0 R\b/g;
/** Numbers of the two objects every file begins with. */
const [CATALOG, PAGES] = [1, 2];

/** A sheet as it was written: its objects by number, each without its frame, and the number of its catalog. */
type Opened = { readonly objects: ReadonlyMap<number, string>; readonly root: number };

/**
 * Puts sheets into one file, their pages in the order given. It joins the files this program writes and no others: they have
 * a plain table of objects and nothing encrypted (ISO 32000-1, 7.5). What several sheets hold alike is written once; what
 * belongs to a file as a whole, such as its structure for reading aloud, is left behind.
 *
 * @throws Error where a file is none of ours.
 */
export function joinSheets(sheets: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const objects: string[] = [];
  const known = new Map<string, number>();
  const kids = sheets.flatMap((sheet) => {
    const opened = openSheet(sheet);
    return pagesOf(opened).map((page) => copyInto(objects, known, opened, page));
  });
  const catalog = `<< /Type /Catalog /Pages ${PAGES} 0 R >>`;
  const pages = `<< /Type /Pages /Count ${kids.length} /Kids [${kids.map((kid) => `${kid} 0 R`).join(" ")}] >>`;
  return written([catalog, pages, ...objects]);
}

function openSheet(bytes: Uint8Array): Opened {
  const text = textOf(bytes);
  const table = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text)?.[1]);
  const [, count = "", lines = "", trailer = ""] =
    /^xref\n0 (\d+)\n((?:\d{10} \d{5} [fn] ?\r?\n)+)trailer\s([\s\S]*)/.exec(text.slice(table)) ?? [];
  const root = /\/Root (\d+) 0 R/.exec(trailer)?.[1];
  if (!text.startsWith("%PDF-") || root === undefined || /\/Encrypt\b/.test(trailer))
    throw new Error("A file that was to be joined is no sheet of this program.");
  const places = lines
    .split("\n")
    .slice(1, Number(count))
    .map((line, at) => ({ number: at + 1, from: Number(line.slice(0, 10)) }));
  const ends = [...places.map(({ from }) => from), table].toSorted((one, other) => one - other);
  const objects = places.map(({ number, from }) => {
    const whole = text.slice(
      from,
      ends.find((end) => end > from),
    );
    return [number, whole.slice(whole.indexOf("obj") + 3, whole.lastIndexOf("endobj")).trim()] as const;
  });
  return { objects: new Map(objects), root: Number(root) };
}

function pagesOf({ objects, root }: Opened): readonly number[] {
  const pages = Number(/\/Pages (\d+) 0 R/.exec(objects.get(root) ?? "")?.[1]);
  const kids = /\/Kids \[([^\]]*)\]/.exec(objects.get(pages) ?? "")?.[1] ?? "";
  return [...kids.matchAll(/(\d+) 0 R/g)].map(([, number]) => Number(number));
}

/** Copies a page with all it refers to; gives its number in the new file. */
function copyInto(
  objects: string[],
  known: Map<string, number>,
  { objects: own }: Opened,
  page: number,
): number {
  // Numbered after the catalog and the pages.
  const add = (body: string): number => objects.push(body) + PAGES;
  const copied = new Map<number, number>();
  const copy = (from: number): number => {
    const before = copied.get(from);
    if (before !== undefined) return before;
    const body = withReferences(own.get(from) ?? "null", copy);
    const number = known.get(body) ?? add(body);
    known.set(body, number);
    copied.set(from, number);
    return number;
  };
  const plain = (own.get(page) ?? "").replace(/\/(?:Parent \d+ 0 R|StructParents \d+)/g, "");
  return add(withReferences(plain, copy).replace(/^<</, `<<\n/Parent ${PAGES} 0 R`));
}

/** An object with other numbers where it refers to others; nothing in a stream or a string is a reference. */
function withReferences(body: string, numberOf: (from: number) => number): string {
  let isData = false;
  return body.replace(PIECE, (piece, number?: string) => {
    isData ||= piece.startsWith("stream");
    return isData || number === undefined ? piece : `${numberOf(Number(number))} 0 R`;
  });
}

function written(objects: readonly string[]): Uint8Array<ArrayBuffer> {
  // The signs beyond ASCII say that the file is not text.
  const parts = ["%PDF-1.7\n%\u00FF\u00FF\u00FF\u00FF\n"];
  let at = parts[0]?.length ?? 0;
  const places = objects.map((body, index) => {
    const part = `${index + 1} 0 obj\n${body}\nendobj\n`;
    parts.push(part);
    at += part.length;
    return `${String(at - part.length).padStart(10, "0")} 00000 n \n`;
  });
  const size = objects.length + 1;
  parts.push(`xref\n0 ${size}\n0000000000 65535 f \n${places.join("")}`);
  parts.push(`trailer\n<< /Size ${size} /Root ${CATALOG} 0 R >>\nstartxref\n${at}\n%%EOF\n`);
  return bytesOf(parts.join(""));
}

const PIECE_BYTES = 0x8000;

/** Uint8Array as signs of the same number, so that places in the text are places in the file. */
function textOf(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += PIECE_BYTES)
    parts.push(String.fromCharCode(...bytes.subarray(at, at + PIECE_BYTES)));
  return parts.join("");
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at);
  return bytes;
}
