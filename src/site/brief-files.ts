import { makeCalendar } from "../calendar/make-calendar.ts";
import type { CardSize } from "../card/card-page.ts";
import { makeCard } from "../card/make-card.ts";
import type { BriefFile } from "../components/brief-file.ts";
import { likelySheet } from "../components/board-row.ts";
import { canRunLive, dayOf } from "../live/day-plan.ts";
import { type Bytes, utf8 } from "../lock/bytes.ts";
import type { Plan } from "../models/plan/plan.ts";
import { makeSheet } from "../sheet/make-sheet.ts";
import { readCardFonts, readSheetFonts } from "./fonts.ts";
import type { Site } from "./make-site.ts";

/** A file that goes with a plan: how it is offered, how it is made, and how far its length is filled up when locked. */
export type FileKind = Pick<BriefFile, "name" | "label" | "type" | "share"> & {
  readonly ending: "pdf" | "png" | "ics" | "json";
  readonly step: number;
  readonly make: (plan: Plan, given: FileGiven) => Promise<Bytes>;
};

/** What files are made from besides the plan. */
type FileGiven = {
  readonly site: Site;
  /** Stays the same from edition to edition and names nobody. */
  readonly id: string;
  /** The whole address of the page without its key, where the host is known. */
  readonly url?: string | undefined;
};

const KIB = 1024;

const sheet = (paper: "a4" | "letter", label: string): FileKind => ({
  name: `sheet-${paper}`,
  label,
  type: "application/pdf",
  share: false,
  ending: "pdf",
  step: 32 * KIB,
  make: async (plan, { site, url }) =>
    Uint8Array.from(
      await makeSheet(plan, {
        paper,
        readAt: site.data.settings.readAt,
        fonts: readSheetFonts(site.surroundings),
        link: url,
      }),
    ),
});

const card = (size: CardSize, label: string): FileKind => ({
  name: `card-${size}`,
  label,
  type: "image/png",
  share: true,
  ending: "png",
  // An upright card with a full table comes to more than 32 KiB.
  step: (size === "portrait" ? 64 : 32) * KIB,
  make: async (plan, { site }) =>
    Uint8Array.from(
      await makeCard(plan, {
        size,
        fonts: readCardFonts(site.surroundings),
        ofAll: site.data.workouts.find(({ id }) => id === plan.workout.id),
      }),
    ),
});

/** Every kind of file, in the order in which a page offers them. */
export const FILE_KINDS: readonly FileKind[] = [
  sheet("a4", "Sheet for the rig, A4"),
  sheet("letter", "Sheet for the rig, Letter"),
  card("portrait", "Image to share, upright"),
  card("landscape", "Image to share, wide"),
  {
    name: "calendar",
    label: "Calendar",
    type: "text/calendar",
    share: false,
    ending: "ics",
    step: 4 * KIB,
    // Where the start is not known an empty file is locked all the same: its absence would tell something.
    make: (plan, { id }) => Promise.resolve(utf8(makeCalendar(plan, id) ?? "")),
  },
  {
    // What the page runs the day from; nobody saves it.
    name: "day",
    label: "The day",
    type: "application/json",
    share: false,
    ending: "json",
    step: 8 * KIB,
    make: (plan) => Promise.resolve(utf8(canRunLive(plan) ? JSON.stringify(dayOf(plan)) : "")),
  },
];

/** Whether a plan has something to offer in a file of a kind. */
export const hasFile = ({ name }: FileKind, plan: Plan): boolean =>
  name !== "day" && (name !== "calendar" || plan.start !== undefined);

const isLikely = ({ name }: FileKind, { athlete }: Plan): number =>
  Number(name === likelySheet(athlete.units));

/**
 * The files of a plan as a page offers them, the sheet on the reader's paper first. Inside a lock they are saved under a name
 * that says what they are.
 */
export const filesOf = (plan: Plan, locked: boolean): readonly BriefFile[] =>
  FILE_KINDS.filter((kind) => hasFile(kind, plan))
    .toSorted((one, other) => isLikely(other, plan) - isLikely(one, plan))
    .map(({ name, label, type, share, ending }) => ({
      name,
      label,
      type,
      share,
      saveAs: `${plan.workout.id}-${name}.${ending}`,
      address: locked ? `${name}.bin` : `${name}.${ending}`,
    }));
