import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fromBase64 } from "../lock/base64.ts";
import { type Bytes, fromUtf8 } from "../lock/bytes.ts";
import { findOpener, type LockKeys, openWith } from "../lock/envelope.ts";
import type { Data } from "../models/data.ts";
import type { LinkVersions } from "./link-versions.ts";
import { type PrivatePage, privatePages } from "./private-links.ts";
import type { Surroundings } from "./surroundings.ts";

/** A brief of an earlier build, which stays because it cannot be made now. */
export type KeptBrief = {
  readonly page: PrivatePage;
  /** The day it was made for, `2026-11-25`; absent where it does not say so. */
  readonly made?: string;
};

/** Every brief there may be a link to: of all athletes and workouts that have a file, whether they can be read or not. */
export async function pagesWithFiles(
  data: Data,
  secret: Bytes,
  versions: LinkVersions,
  place: Pick<Surroundings, "base" | "origin">,
): Promise<readonly PrivatePage[]> {
  const all = (kind: "athlete" | "workout", made: readonly { readonly id: string }[]) => [
    ...made,
    ...data.unmade.filter((one) => one.kind === kind),
  ];
  const named = { athletes: all("athlete", data.athletes), workouts: all("workout", data.workouts) };
  const pages = await privatePages(named, secret, versions, place);
  return pages.filter(({ athlete }) => athlete !== undefined);
}

/** Whether an earlier site holds a page, made for the same place on the host; else it would find nothing it needs. */
export function isIn(earlier: string, { address }: PrivatePage, base: string): boolean {
  const file = join(earlier, "b", address, "index.html");
  return existsSync(file) && readFileSync(file, "utf8").includes(`data-worker="${base}b/sw.js"`);
}

/** The day a page of an earlier site says it was made for. */
export async function madeFor(
  earlier: string,
  { address }: PrivatePage,
  { key, passcode }: LockKeys,
): Promise<string | undefined> {
  const html = readFileSync(join(earlier, "b", address, "index.html"), "utf8");
  const locked = fromBase64(/<template id="locked">([^<]*)</.exec(html)?.[1] ?? "");
  const found = locked && (await findOpener(locked, key, passcode?.stretched));
  if (!locked || found?.ok !== true) return undefined;
  const opened = await openWith(`${address}/page`, locked, found.opener);
  return opened.ok ? /data-made="([\d-]+)"/.exec(fromUtf8(opened.bytes))?.[1] : undefined;
}

/**
 * Takes over from an earlier site the pages that are not in the new one, with their files and whatever they load. Says how
 * many.
 */
export function takeOver(
  pages: readonly PrivatePage[],
  earlier: string,
  fresh: string,
  base: string,
): number {
  const kept = pages.filter(
    (page) => !existsSync(join(fresh, "b", page.address)) && isIn(earlier, page, base),
  );
  for (const { address } of kept) {
    cpSync(join(earlier, "b", address), join(fresh, "b", address), { recursive: true });
    takeAssets(readFileSync(join(fresh, "b", address, "index.html"), "utf8"), earlier, fresh);
  }
  return kept.length;
}

/** Styles, scripts and letters that a text names, and those that they name. */
function takeAssets(text: string, earlier: string, fresh: string): void {
  const folder = join(earlier, "_astro");
  const names = existsSync(folder) ? readdirSync(folder) : [];
  for (const name of names.filter((one) => text.includes(one))) {
    const to = join(fresh, "_astro", name);
    if (existsSync(to)) continue;
    mkdirSync(join(fresh, "_astro"), { recursive: true });
    cpSync(join(folder, name), to);
    if (/\.(?:css|js)$/.test(name)) takeAssets(readFileSync(to, "utf8"), earlier, fresh);
  }
}
