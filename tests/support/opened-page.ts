import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fromBase64 } from "../../src/lock/base64.ts";
import { fromUtf8 } from "../../src/lock/bytes.ts";
import { findOpener, openWith } from "../../src/lock/envelope.ts";
import { readLinkKey } from "../../src/lock/link-key.ts";
import type { FixtureLink } from "./fixture-site.ts";

/** What a reader sees of a private page of a built site, opened with its link as a browser does; undefined where a passcode is asked. */
export async function openedPage(site: string, { link }: FixtureLink): Promise<string | undefined> {
  const { pathname, hash } = new URL(link);
  const [, address = ""] = /\/b\/([^/]+)/u.exec(pathname) ?? [];
  const html = readFileSync(join(site, "b", address, "index.html"), "utf8");
  const [, sealed = ""] = /<template id="locked">([^<]*)</u.exec(html) ?? [];
  const locked = fromBase64(sealed.trim());
  const read = await readLinkKey(hash);
  if (!locked || !read.ok) throw new Error(`nothing locked stands on ${pathname}, or its link has no key`);
  const found = await findOpener(locked, read.key);
  if (!found.ok) {
    if (found.failure === "passcode-needed") return undefined;
    throw new Error(`${pathname}: ${found.failure}`);
  }
  const opened = await openWith(`${address}/page`, locked, found.opener);
  if (!opened.ok) throw new Error(`${pathname}: ${opened.failure}`);
  return textOf(fromUtf8(opened.bytes));
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  "#39": "'",
  nbsp: " ",
};

/** The text of a page without its marks, with single spaces. */
export const textOf = (html: string): string =>
  html
    .replaceAll(/<(script|style|svg)\b[\s\S]*?<\/\1>/gu, " ")
    .replaceAll(/<[^>]+>/gu, " ")
    .replaceAll(/&(amp|lt|gt|quot|#39|nbsp);/gu, (_, name: string) => ENTITIES[name] ?? " ")
    .replaceAll(/\s+/gu, " ");
