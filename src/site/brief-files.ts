import { makeCalendar } from "../calendar/make-calendar.ts";
import type { BriefFile } from "../components/brief-file.ts";
import { type Bytes, utf8 } from "../lock/bytes.ts";
import type { Plan } from "../models/plan/plan.ts";
import { makeSheet } from "../sheet/make-sheet.ts";
import { readSheetFonts } from "./fonts.ts";
import type { Site } from "./make-site.ts";

/** A file that goes with a plan: how it is offered, how it is made, and how far its length is filled up when locked. */
export type FileKind = Pick<BriefFile, "name" | "label" | "type" | "share"> & {
  readonly ending: "pdf" | "png" | "ics";
  readonly step: number;
  /** Nothing where the plan has no such file. */
  readonly make: (plan: Plan, given: FileGiven) => Promise<Bytes | undefined>;
};

/** What files are made from besides the plan. */
export type FileGiven = {
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

export const FILE_KINDS: readonly FileKind[] = [
  sheet("a4", "Sheet for the rig, A4"),
  sheet("letter", "Sheet for the rig, Letter"),
  {
    name: "calendar",
    label: "Calendar",
    type: "text/calendar",
    share: false,
    ending: "ics",
    step: 4 * KIB,
    make: (plan, { id }) => {
      const text = makeCalendar(plan, id);
      return Promise.resolve(text === undefined ? undefined : utf8(text));
    },
  },
];

/** Whether a plan has a file of a kind, without making it. */
export const hasFile = ({ name }: FileKind, plan: Plan): boolean =>
  name !== "calendar" || plan.start !== undefined;

/** The files of a plan as a page offers them. Inside a lock they are saved under a name that says what they are. */
export const filesOf = (plan: Plan, locked: boolean): readonly BriefFile[] =>
  FILE_KINDS.filter((kind) => hasFile(kind, plan)).map(({ name, label, type, share, ending }) => ({
    name,
    label,
    type,
    share,
    saveAs: `${plan.workout.id}-${name}.${ending}`,
    address: locked ? `${name}.bin` : `${name}.${ending}`,
  }));
