import type { BoardRow, SharedTest } from "../components/board-row.ts";
import { capitalised } from "../wording/basis.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Site } from "./make-site.ts";
import { messageTemplate } from "./message-template.ts";
import { readerOf } from "./reader-of.ts";
import { readSent, sinceSent } from "./sent-briefs.ts";
import { inStartOrder } from "./start-order.ts";
import { writeMessage } from "./write-message.ts";

/** What stands in a message in place of the link, which the page knows whole. */
const LINK = "{link}";

/** What the coach's board shows: a row for every brief, in start order. */
export function boardRows(site: Site): readonly BoardRow[] {
  const { data, surroundings } = site;
  const sent = readSent(surroundings.dataFolder);
  const template = messageTemplate(surroundings.dataFolder);
  const rows = site.pages.flatMap((page): readonly BoardRow[] => {
    const athlete = data.athletes.find(({ id }) => id === page.athlete);
    const workout = data.workouts.find(({ id }) => id === page.workout);
    if (!athlete || !workout) return [];
    const plan = site.planOf(athlete, workout);
    return [
      {
        plan,
        link: `../${page.address}/#${page.link.split("#")[1] ?? ""}`,
        gaps: gapsOf(plan),
        since: sinceSent(plan, sent),
        message: writeMessage(template, readerOf(athlete, plan, data), LINK),
      },
    ];
  });
  return inStartOrder(rows);
}

/** Tests that would tell most, each said once for everybody it would help. */
export function sharedTests(rows: readonly BoardRow[]): readonly SharedTest[] {
  const tests = Map.groupBy(
    rows.filter(({ plan }) => plan.sharpen !== undefined),
    ({ plan }) => plan.sharpen?.test ?? "",
  );
  return [...tests]
    .map(([test, all]) => ({ test, names: [...new Set(all.map(({ plan }) => plan.athlete.name))] }))
    .toSorted((one, other) => other.names.length - one.names.length);
}

/** What is not known of an athlete: everything that rests on the level alone. */
const gapsOf = ({ basis }: Plan): readonly string[] =>
  basis.filter(({ kind }) => kind === "level" || kind === "assumed").map(({ about }) => capitalised(about));
