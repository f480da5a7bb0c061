import type { NotMade } from "../components/board-row.ts";
import { heldBack, type Unmade } from "../models/data.ts";
import { sayDate } from "../wording/date.ts";
import { type Group, isInGroup } from "./groups.ts";
import type { KeptBrief } from "./kept-briefs.ts";
import type { Site } from "./make-site.ts";

/** Of what something could not be made, and what is left from before. */
type NotMadeOf = Pick<Site, "data" | "failed" | "kept">;

/**
 * What concerns a group alone: its athletes, and workouts. Of a file that cannot be read nobody knows the group, so it stands
 * on the board of everybody only.
 */
export function ofGroup({ data, failed, kept }: NotMadeOf, group: Group): NotMadeOf {
  const athletes = data.athletes.filter((one) => isInGroup(one, group, data.settings));
  const isOwn = (id: string | undefined): boolean => athletes.some((one) => one.id === id);
  const unmade = data.unmade.filter(({ kind, id }) => kind === "workout" || (kind === "brief" && isOwn(id)));
  return {
    data: { ...data, athletes, unmade },
    failed: failed.filter(({ athlete }) => isOwn(athlete)),
    kept: kept.filter(({ page }) => isOwn(page.athlete)),
  };
}

/** What the board says of everything that could not be made, and where the last good briefs are. */
export function notMade(site: NotMadeOf): readonly NotMade[] {
  const { data, failed } = site;
  const told = data.unmade.map((one): NotMade => {
    const why = one.why.map(
      ({ place, problem }) => `${place.file}:${place.line}:${place.column}: ${problem}`,
    );
    return { name: one.name, file: one.file, why: [...new Set(why)], kept: keptOf(one, site) };
  });
  const pairs = failed.map(({ athlete, workout, problem }): NotMade => {
    const kept = site.kept.filter(({ page }) => page.athlete === athlete && page.workout === workout);
    return {
      name: `${nameOf(athlete, site)}, ${titleOf(workout, site)}`,
      file: "",
      why: [`the program failed: ${problem}`],
      kept: kept.map((each) => say(each, titleOf(workout, site))),
    };
  });
  return [...told, ...pairs];
}

/** Of an athlete all briefs that are left, of one brief itself; of a workout those of athletes who have no line of their own. */
function keptOf(one: Unmade, site: NotMadeOf): NotMade["kept"] {
  const isOf: Readonly<Record<Unmade["kind"], (page: KeptBrief["page"]) => boolean>> = {
    athlete: (page) => page.athlete === one.id && !waits(page, site),
    brief: (page) => page.athlete === one.id && page.workout === one.workout,
    workout: (page) =>
      page.workout === one.id &&
      site.data.athletes.some(({ id }) => id === page.athlete) &&
      !waits(page, site),
  };
  const title = ({ page }: KeptBrief): string =>
    one.kind === "workout" ? nameOf(page.athlete ?? "", site) : titleOf(page.workout ?? "", site);
  return site.kept.filter(({ page }) => isOf[one.kind](page)).map((each) => say(each, title(each)));
}

const waits = ({ athlete = "", workout = "" }: KeptBrief["page"], { data }: NotMadeOf): boolean =>
  heldBack(data, { athlete, workout }) !== undefined;

const say = ({ page, made }: KeptBrief, title: string): NotMade["kept"][number] => ({
  title,
  link: `../${page.address}/#${page.link.split("#")[1] ?? ""}`,
  made: made === undefined ? "an earlier day" : sayDate(made),
});

const nameOf = (id: string, { data }: NotMadeOf): string =>
  (
    data.athletes.find((one) => one.id === id) ??
    data.unmade.find((one) => one.kind === "athlete" && one.id === id)
  )?.name ?? id;

const titleOf = (id: string, { data }: NotMadeOf): string =>
  data.workouts.find((one) => one.id === id)?.title ??
  data.unmade.find((one) => one.kind === "workout" && one.id === id)?.name ??
  id;
