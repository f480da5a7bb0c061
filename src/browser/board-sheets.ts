import { fromBase64 } from "../lock/base64.ts";
import type { Bytes } from "../lock/bytes.ts";
import { findOpener, openWith } from "../lock/envelope.ts";
import { readLinkKey } from "../lock/link-key.ts";
import { joinSheets } from "../sheet/join-sheets.ts";

/** A brief of the board whose sheet is wanted. */
type SheetWanted = {
  readonly name: string;
  /** The link of the brief, with its key. */
  readonly link: string;
  /** What the athlete's passcode is stretched to, in base 64, where one is asked for. */
  readonly opens: string | undefined;
};

/** The file, nothing where there is none to put into it, and whose sheets are not in it. */
type SheetsJoined = { readonly file: Bytes | undefined; readonly missing: readonly string[] };

/** Sheets fetched at the same time, as many as browsers ask a host for at once. */
const AT_ONCE = 6;

/** Fetches the locked sheets of some briefs, opens them, and puts them into one file in the order given. */
export async function fetchSheets(
  wanted: readonly SheetWanted[],
  file: string,
  progress: (done: number) => void,
): Promise<SheetsJoined> {
  const sheets: (Bytes | undefined)[] = [];
  let [next, done] = [0, 0];
  const fetchSome = async (): Promise<void> => {
    for (let at = next++; at < wanted.length; at = next++) {
      const one = wanted[at];
      sheets[at] = one && (await fetchSheet(one, file).catch(() => undefined));
      progress(++done);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, fetchSome));
  const opened = sheets.filter((sheet) => sheet !== undefined);
  return {
    file: opened.length > 0 ? joinSheets(opened) : undefined,
    missing: wanted.filter((_, at) => !sheets[at]).map(({ name }) => name),
  };
}

/** A sheet, opened; nothing where it is not there, does not open, or could not be made. */
async function fetchSheet({ link, opens }: SheetWanted, file: string): Promise<Bytes | undefined> {
  const page = new URL(link);
  const [address = ""] = page.pathname.split("/").slice(-2);
  const read = await readLinkKey(page.hash);
  const response = await fetch(new URL(`${file}.bin`, page));
  if (!read.ok || !response.ok) return undefined;
  const locked = new Uint8Array(await response.arrayBuffer());
  const found = await findOpener(locked, read.key, opens === undefined ? undefined : fromBase64(opens));
  const opened = found.ok ? await openWith(`${address}/${file}`, locked, found.opener) : undefined;
  return opened?.ok && opened.bytes.length > 0 ? opened.bytes : undefined;
}
