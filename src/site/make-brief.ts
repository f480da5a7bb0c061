import type { experimental_AstroContainer as AstroContainer } from "astro/container";
import BriefPage from "../components/BriefPage.astro";
import { toBase64 } from "../lock/base64.ts";
import { type Bytes, utf8 } from "../lock/bytes.ts";
import { type BriefCache, readCached, readEntry } from "./brief-cache.ts";
import { FILE_KINDS, type FileKind, filesOf } from "./brief-files.ts";
import type { BriefContent } from "./brief-of.ts";
import { type RowOfBrief, rowOf } from "./board-rows.ts";
import { digestOf } from "./digest.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import { lockFile, lockPage } from "./lock-files.ts";
import type { Site } from "./make-site.ts";
import { fillShell } from "./page-shell.ts";
import type { PrivatePage } from "./private-links.ts";
import { readerOf } from "./reader-of.ts";
import { sayDate } from "../wording/date.ts";

/** A component of a page. */
type Component = Parameters<AstroContainer["renderToString"]>[0];

/** Renders a component of a page with its props, and with what its words read. */
export type Render = (component: Component, props: object, locals?: object) => Promise<string>;

/** What a brief is made with. */
type BriefMeans = {
  readonly render: Render;
  /** The page from which every locked page is made. */
  readonly shell: string;
  /** The coach's text of messages. */
  readonly template: string;
  readonly cache: BriefCache;
  /** Mark of the program. */
  readonly code: string;
};

/** A brief as it is published, locked, with what its files were drawn from and its row of the board. */
type BriefMade = {
  readonly files: ReadonlyMap<string, Bytes>;
  readonly drawnFrom: Readonly<Record<string, string>>;
  readonly row: RowOfBrief;
  readonly failed: readonly FailedBrief[];
  /** Whether anything of it is another than it was. */
  readonly isNew: boolean;
};

/**
 * Makes a brief: of its page and its files those that would not be as they were. A day that changes nothing but itself makes
 * nothing anew: what is kept goes on to name the day on which it was made.
 */
export async function makeBrief(
  brief: BriefContent,
  page: PrivatePage,
  site: Site,
  means: BriefMeans,
): Promise<BriefMade> {
  const { athlete, plan, workout } = brief;
  const before = readEntry(means.cache, page.address);
  const kept = (name: string, from: string): Bytes | undefined =>
    before?.files[name]?.from === from ? readCached(means.cache, page.address, name) : undefined;
  const files = new Map<string, Bytes>();
  const failed: FailedBrief[] = [];
  const drawnFrom: Record<string, string> = {};
  let isNew = false;
  const html = await pageOf(brief, page, site, means);
  const shown = html.replace(`data-made="${plan.date}"`, "").replace(`made for ${sayDate(plan.date)}`, "");
  drawnFrom[PAGE] = digestOf([means.code, means.shell, site.data.settings.passcode, page.link, shown]);
  const same = kept(PAGE, drawnFrom[PAGE]);
  isNew ||= same === undefined;
  files.set(PAGE, same ?? utf8(fillShell(means.shell, page.address, await lockPage(html, page, site))));
  const from = digestOf([means.code, { ...plan, date: "" }, ...besidesPlan(brief, page, site)]);
  for (const kind of FILE_KINDS) {
    const name = `${kind.name}.bin`;
    const asBefore = kept(name, from);
    isNew ||= asBefore === undefined;
    const drawn = asBefore ? undefined : await draw(kind, brief, page, site);
    files.set(name, asBefore ?? (await lockFile(drawn?.bytes ?? new Uint8Array(), kind, page, site)));
    if (drawn?.problem === undefined) drawnFrom[name] = from;
    else failed.push({ athlete: athlete.id, workout: workout.id, file: kind.label, problem: drawn.problem });
  }
  const { passcode: own } = await site.keysOf(page);
  const row = rowOf(brief, page, site, means.template);
  return { files, drawnFrom, failed, isNew, row: own ? { ...row, opens: toBase64(own.stretched) } : row };
}

/** The page itself among the files of its folder. */
const PAGE = "index.html";

/** What files are drawn from besides the plan. */
const besidesPlan = ({ workout }: BriefContent, page: PrivatePage, { data }: Site): readonly unknown[] => [
  data.settings.readAt,
  data.settings.passcode,
  page.link,
  workout.divisions,
  workout.parts.map(({ name, prescription }) => [name, prescription]),
];

async function pageOf(
  { plan, athlete, workout, siblings }: BriefContent,
  page: PrivatePage,
  site: Site,
  { render }: BriefMeans,
): Promise<string> {
  const props = {
    plan,
    files: filesOf(plan, true),
    locked: true,
    address: page.address,
    siblings,
    text: workout.text,
  };
  return render(BriefPage, props, { reader: readerOf(athlete, plan, site.data) });
}

/**
 * Draws a file. One that cannot be drawn takes no other with it; it is locked empty, since its absence would tell something.
 */
async function draw(
  kind: FileKind,
  { plan }: BriefContent,
  page: PrivatePage,
  site: Site,
): Promise<{ readonly bytes: Bytes; readonly problem?: string }> {
  const url = site.surroundings.origin === undefined ? undefined : page.url;
  try {
    return { bytes: await kind.make(plan, { site, id: page.address, url }) };
  } catch (error) {
    return { bytes: new Uint8Array(), problem: error instanceof Error ? error.message : String(error) };
  }
}
