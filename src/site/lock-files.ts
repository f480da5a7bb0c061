import { toBase64 } from "../lock/base64.ts";
import { type Bytes, utf8 } from "../lock/bytes.ts";
import { lock } from "../lock/envelope.ts";
import type { FileKind } from "./brief-files.ts";
import type { Site } from "./make-site.ts";
import type { PrivatePage } from "./private-links.ts";

/** Pages are filled up to a multiple of this; most briefs then have one of two lengths. */
const PAGE_STEP = 16 * 1024;

/** The content of a page, locked, in base 64 as it stands inside the page. */
export async function lockPage(html: string, page: PrivatePage, site: Pick<Site, "keysOf">): Promise<string> {
  const content = { name: `${page.address}/page`, bytes: utf8(html), step: PAGE_STEP };
  return toBase64(await lock(content, await site.keysOf(page)));
}

/** A file beside a page, locked. */
export const lockFile = async (
  bytes: Bytes,
  { name, step }: Pick<FileKind, "name" | "step">,
  page: PrivatePage,
  site: Pick<Site, "keysOf">,
): Promise<Bytes> => lock({ name: `${page.address}/${name}`, bytes, step }, await site.keysOf(page));
