import { type BriefCache, publishEntry, readEntry } from "./brief-cache.ts";
import { boardsOfGroups, linkOnBoard, type RowOfBrief } from "./board-rows.ts";
import type { BoardOrder } from "./brief-maker.ts";
import { digestOf } from "./digest.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import { isInGroup } from "./groups.ts";
import { isIn, type KeptBrief, madeFor } from "./kept-briefs.ts";
import type { BriefsGiven } from "./briefs-given.ts";
import type { MakerPool } from "./maker-pool.ts";
import { notMade, ofGroup } from "./not-made.ts";
import { lockKeysOf, type PrivatePage } from "./private-links.ts";
import { readSent } from "./sent-briefs.ts";

/** What boards are made of, and with. */
type BoardGiven = {
  readonly given: BriefsGiven;
  readonly cache: BriefCache;
  readonly pages: readonly PrivatePage[];
  readonly rows: readonly RowOfBrief[];
  readonly failed: readonly FailedBrief[];
  readonly open: () => Promise<MakerPool>;
};

/** Puts the board of everybody and those of groups into a site; drawn anew where anything on it is another. */
export async function putBoards(fresh: string, board: BoardGiven): Promise<void> {
  const { given, pages, rows, failed } = board;
  const { data } = given;
  const kept = await keptOf(given, new Set(rows.map(({ link }) => link)));
  const all = { data, failed, kept };
  for (const page of pages.filter(({ athlete }) => athlete === undefined)) {
    const { group } = page;
    if (!group) {
      await putBoard(fresh, board, { page, rows, left: notMade(all), boards: boardsOfGroups(pages) });
      continue;
    }
    const members = new Set(
      data.athletes.filter((one) => isInGroup(one, group, data.settings)).map(({ id }) => id),
    );
    const own = rows.filter(({ plan }) => members.has(plan.athlete.id));
    await putBoard(fresh, board, { page, rows: own, left: notMade(ofGroup(all, group)), boards: [] });
  }
}

async function putBoard(
  fresh: string,
  { given, cache, open }: BoardGiven,
  shown: Omit<BoardOrder, "base" | "sent">,
): Promise<void> {
  const { data, surroundings, shell, code } = given;
  const { page, rows, left, boards } = shown;
  const sent = readSent(surroundings.dataFolder);
  const base = digestOf([
    code,
    shell,
    page.link,
    page.group?.name ?? "",
    data.settings,
    rows,
    sent,
    left,
    boards,
  ]);
  const before = readEntry(cache, page.address);
  if (before?.base !== base) await (await open()).makeBoard({ ...shown, base, sent });
  const entry = before?.base === base ? before : readEntry(cache, page.address);
  if (!entry) throw new Error("The board could not be kept after it was made.");
  publishEntry(cache, page.address, entry, fresh);
}

/** Briefs of the site before of which there is no row now; they stay, and the board says of which day they are. */
async function keptOf(
  { earlier, data, secret, versions, surroundings, withFiles }: BriefsGiven,
  made: ReadonlySet<string>,
): Promise<readonly KeptBrief[]> {
  if (earlier === undefined) return [];
  const keysOf = lockKeysOf({ secret, versions, asksPasscode: data.settings.passcode });
  const missing = withFiles.filter(
    (page) => !made.has(linkOnBoard(page)) && isIn(earlier, page, surroundings.base),
  );
  return Promise.all(
    missing.map(async (page): Promise<KeptBrief> => {
      const day = await madeFor(earlier, page, await keysOf(page));
      return { page, ...(day === undefined ? {} : { made: day }) };
    }),
  );
}
