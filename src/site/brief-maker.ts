import { experimental_AstroContainer as AstroContainer } from "astro/container";
import sharp from "sharp";
import BoardPage from "../components/BoardPage.astro";
import type { GroupBoard, NotMade } from "../components/board-row.ts";
import { makePlan } from "../compute/make-plan.ts";
import { reviewsOf } from "./reviews-of.ts";
import { seenOnce } from "../compute/seen-once.ts";
import { type Bytes, utf8 } from "../lock/bytes.ts";
import type { Data } from "../models/data.ts";
import { type BriefCache, writeEntry } from "./brief-cache.ts";
import { briefOf } from "./brief-of.ts";
import { type RowOfBrief, rowsShown, sharedTests } from "./board-rows.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import type { LinkVersions } from "./link-versions.ts";
import { lockPage } from "./lock-files.ts";
import { makeBrief, type Render } from "./make-brief.ts";
import { makeSite, type Site } from "./make-site.ts";
import { fillShell } from "./page-shell.ts";
import { lockKeysOf, type PrivatePage } from "./private-links.ts";
import type { SentBriefs } from "./sent-briefs.ts";
import type { Surroundings } from "./surroundings.ts";
import { digestsOf, type Tracing, traceData } from "./trace-data.ts";

/** What all briefs of a build are made from; handed to every thread once. */
export type MakerGiven = {
  readonly data: Data;
  readonly surroundings: Surroundings;
  readonly secret: Bytes;
  readonly versions: LinkVersions;
  /** The page from which every locked page is made. */
  readonly shell: string;
  /** The coach's text of messages. */
  readonly template: string;
  /** Where what is made is put. */
  readonly cache: BriefCache;
  /** Mark of the program. */
  readonly code: string;
};

/** An athlete's briefs that have to be made: the workouts, each with the mark of what its brief is made from. */
export type BriefOrder = {
  readonly athlete: string;
  readonly workouts: readonly { readonly id: string; readonly base: string }[];
};

/** What became of an athlete's briefs. */
export type OrderDone = {
  readonly failed: readonly FailedBrief[];
  /** Addresses of the pages that lie in the cache now. */
  readonly ready: readonly string[];
  /** How many of them are not as they were. */
  readonly made: number;
};

/** The board as it is to be drawn. */
export type BoardOrder = {
  readonly page: PrivatePage;
  readonly base: string;
  readonly rows: readonly RowOfBrief[];
  readonly sent: SentBriefs;
  readonly left: readonly NotMade[];
  /** Boards of groups to be named on it. */
  readonly boards: readonly GroupBoard[];
};

/** What makes briefs and the board of one build. */
export type Maker = {
  readonly makeBriefs: (order: BriefOrder) => Promise<OrderDone>;
  readonly makeBoard: (order: BoardOrder) => Promise<void>;
};

/**
 * Opens a maker. It renders the components of the pages without the site's framework around them, and plans, draws and
 * locks what belongs to a page; it holds one athlete's plans at a time.
 */
export async function openMaker(given: MakerGiven): Promise<Maker> {
  // Threads draw at the same time; each picture in several threads of its own would only take their turns.
  sharp.concurrency(1);
  const container = await AstroContainer.create();
  const render: Render = (component, props, locals = {}) =>
    container.renderToString(component, {
      props: props as Record<string, unknown>,
      locals: locals as App.Locals,
    });
  const { data, surroundings } = given;
  const means: Means = {
    ...given,
    render,
    digest: digestsOf(data),
    seenOf: seenOnce(data, surroundings.date),
  };
  return {
    makeBriefs: (order) => makeBriefsOf(order, means),
    makeBoard: (order) => makeBoardOf(order, given, render),
  };
}

/** What a maker has once it is open. */
type Means = MakerGiven & {
  readonly render: Render;
  /** Mark of something that was read of the data. */
  readonly digest: (used: string) => string;
  /** What was seen of a workout; the same for all athletes. */
  readonly seenOf: ReturnType<typeof seenOnce>;
};

async function makeBriefsOf({ athlete: id, workouts }: BriefOrder, given: Means): Promise<OrderDone> {
  const { data, cache, digest } = given;
  const traces = new Map<string, Tracing>(data.workouts.map((each) => [each.id, traceData(data)]));
  const site = await siteOf(id, given, traces);
  const failed = [...site.failed];
  const ready: string[] = [];
  let made = 0;
  for (const { id: workout, base } of workouts) {
    const trace = traces.get(workout);
    const page = site.pages.find((one) => one.athlete === id && one.workout === workout);
    const brief = page && briefOf(page, site);
    if (!brief || !trace) continue;
    const done = await makeBrief(brief, page, { ...site, data: trace.data }, given);
    failed.push(...done.failed);
    // A page names the athlete's other pages: where one is missing, or a file, the next build must look again.
    const isWhole = site.failed.length + done.failed.length === 0;
    const used = Object.fromEntries(trace.used().map((name) => [name, digest(name)]));
    const { row, drawnFrom, files } = done;
    writeEntry(cache, page.address, { base: isWhole ? base : "", used, row, drawnFrom }, files);
    ready.push(page.address);
    made += done.isNew ? 1 : 0;
  }
  return { failed, ready, made };
}

/** The site as far as it concerns one athlete; what is read for each workout is noted. */
function siteOf(id: string, given: Means, traces: ReadonlyMap<string, Tracing>): Promise<Site> {
  const { data, surroundings, secret, versions, seenOf } = given;
  const { date } = surroundings;
  return makeSite({
    data: { ...data, athletes: data.athletes.filter((one) => one.id === id) },
    surroundings,
    secret,
    versions,
    plans: "all-at-once",
    compute: {
      plan: (athlete, workout) =>
        makePlan({
          athlete,
          workout,
          data: traces.get(workout.id)?.data ?? data,
          date,
          // Made of all data; seenMark stands for it.
          seen: seenOf(workout),
        }),
      strategy: () => ({ plans: [] }),
    },
  });
}

async function makeBoardOf(
  { page, base, rows, sent, left, boards }: BoardOrder,
  { data, secret, versions, shell, cache }: MakerGiven,
  render: Render,
): Promise<void> {
  const shown = rowsShown(rows, sent);
  const html = await render(BoardPage, {
    of: page.group?.name,
    boards,
    rows: shown,
    tests: sharedTests(shown),
    left,
    reviews: reviewsOf(shown),
  });
  const keysOf = lockKeysOf({ secret, versions, asksPasscode: data.settings.passcode });
  const locked = await lockPage(html, page, { keysOf });
  const files = new Map([["index.html", utf8(fillShell(shell, page.address, locked))]]);
  writeEntry(cache, page.address, { base, used: {}, drawnFrom: {} }, files);
}
