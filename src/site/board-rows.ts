import { boardPlan, type BoardRow, type GroupBoard, type SharedTest } from "../components/board-row.ts";
import { capitalised, sayTest } from "../wording/basis.ts";
import { sayGoal } from "../wording/goal.ts";
import type { Plan } from "../models/plan/plan.ts";
import { type BriefContent, briefOf } from "./brief-of.ts";
import { type Group, isInGroup } from "./groups.ts";
import type { Site } from "./make-site.ts";
import { messageTemplate } from "./message-template.ts";
import type { PrivatePage } from "./private-links.ts";
import { readerOf } from "./reader-of.ts";
import { markOf, readSent, type SentBriefs, sinceMarked } from "./sent-briefs.ts";
import { inStartOrder } from "./start-order.ts";
import { writeMessage } from "./write-message.ts";

/** What stands in a message in place of the link, which the page knows whole. */
const LINK = "{link}";

/** A row as it is made with its brief, before it is known whether the athlete has the brief as it is. */
export type RowOfBrief = Omit<BoardRow, "since"> & {
  /** The mark of the plan, which tells whether it was sent as it is. */
  readonly mark: string;
};

/** A link from the board to a page, with its key. */
export const linkOnBoard = ({ address, link }: PrivatePage): string =>
  `../${address}/#${link.split("#")[1] ?? ""}`;

/** The boards of groups as the board of everybody names them. */
export const boardsOfGroups = (pages: readonly PrivatePage[]): readonly GroupBoard[] =>
  pages.flatMap((page) => (page.group ? [{ name: page.group.name, link: linkOnBoard(page) }] : []));

/** The row of a brief. */
export function rowOf(
  { athlete, plan }: Pick<BriefContent, "athlete" | "plan">,
  page: PrivatePage,
  { data }: Pick<Site, "data">,
  template: string,
): RowOfBrief {
  return {
    plan: boardPlan(plan),
    goal: sayGoal(plan),
    link: linkOnBoard(page),
    groups: athlete.groups ?? [],
    gaps: gapsOf(plan),
    message: writeMessage(template, readerOf(athlete, plan, data), LINK),
    mark: markOf(plan),
  };
}

/** What the coach's board shows of rows that were made: each with whether it is new, in start order. */
export const rowsShown = (rows: readonly RowOfBrief[], sent: SentBriefs): readonly BoardRow[] =>
  inStartOrder(rows.map(({ mark, ...row }) => ({ ...row, since: sinceMarked(row.plan, mark, sent) })));

/** What a board shows: a row for every brief, or for those of a group, in start order. */
export function boardRows(site: Site, group?: Group): readonly BoardRow[] {
  const { dataFolder } = site.surroundings;
  const template = messageTemplate(dataFolder, site.data.library.movements);
  const rows = site.pages.flatMap((page): readonly RowOfBrief[] => {
    const brief = briefOf(page, site);
    if (!brief || (group && !isInGroup(brief.athlete, group, site.data.settings))) return [];
    return [rowOf(brief, page, site, template)];
  });
  return rowsShown(rows, readSent(dataFolder));
}

/** Tests that would tell most, each said once for everybody it would help. */
export function sharedTests(rows: readonly BoardRow[]): readonly SharedTest[] {
  const tests = Map.groupBy(
    rows.filter(({ plan }) => plan.sharpen !== undefined),
    ({ plan }) => (plan.sharpen ? sayTest(plan.sharpen.test) : ""),
  );
  return [...tests]
    .map(([test, all]) => ({ test, names: [...new Set(all.map(({ plan }) => plan.athlete.name))] }))
    .toSorted((one, other) => other.names.length - one.names.length);
}

/** What is not known of an athlete: everything that rests on the level alone. */
const gapsOf = ({ basis }: Plan): readonly string[] =>
  basis.filter(({ kind }) => kind === "level" || kind === "assumed").map(({ about }) => capitalised(about));
