import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { checkEfforts } from "../compute/capacity/check-efforts.ts";
import { SETTABLE } from "../compute/model-tables.ts";
import { checkEarlySplits } from "../compute/early-splits/check-early-splits.ts";
import type { IsoDate } from "../models/athlete.ts";
import type { Data, DataRead, Usable } from "../models/data.ts";
import type { Checked, Fault } from "../models/fault.ts";
import { askDates } from "../reading/data-folder/ask-dates.ts";
import { askDivisions } from "../reading/data-folder/ask-divisions.ts";
import { leaveOut } from "../reading/data-folder/leave-out.ts";
import type { Remember } from "../reading/files/remember.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import { type FilesRead, readFiles } from "../reading/read-data.ts";
import { inReadingOrder } from "../reading/say-fault.ts";
import { earlyFault } from "../wording/early-fault.ts";
import { effortFault } from "../wording/effort-fault.ts";
import { checkMessage } from "./check-message.ts";
import { LIBRARY_FOLDERS, readFolder, type SourceFolder } from "./read-folder.ts";
import { openReadMemory } from "./read-memory.ts";
import { readTexts } from "./read-texts.ts";
import { sourcesForOne } from "./sources-for-one.ts";
import type { Surroundings } from "./surroundings.ts";

/** Everything people wrote, as files: what the tool brings along, and what stands in the data folder. */
export type Sources = {
  readonly builtIn: readonly SourceFile[];
  readonly own: readonly SourceFile[];
  readonly faults: readonly Fault[];
};

type Places = Pick<Surroundings, "root" | "dataFolder" | "audience"> & Partial<Pick<Surroundings, "date">>;

/**
 * Reads the files of the built-in library and of the data folder. For the audience `gym` the folder of athletes is not
 * even opened.
 */
export function readSources({ root, dataFolder, audience }: Places): Sources {
  const library = LIBRARY_FOLDERS.map((folder) => `content/${folder}`);
  const builtIn = readFolder(root, library);
  const ownFolders = [
    ...contentOf(dataFolder).filter((path) => dataFolder !== root || !library.includes(path)),
    ...(audience === "gym" ? [] : ["athletes"]),
  ];
  const own: SourceFolder = readFolder(dataFolder, ownFolders);
  return { builtIn: builtIn.files, own: own.files, faults: [...builtIn.faults, ...own.faults] };
}

function contentOf(folder: string): readonly string[] {
  const content = join(folder, "content");
  if (!existsSync(content)) return [];
  return readdirSync(content)
    .filter((name) => !name.startsWith(".") && name !== "README.md")
    .sort()
    .map((name) => `content/${name}`);
}

/**
 * Checks everything people wrote, the texts of workouts and of the library included; all faults of all files at once, also
 * those of a text whose entries have faults of their own.
 */
export function checkSources(sources: Sources, date?: IsoDate): Checked<Data> {
  const { read, faults } = readEverything(sources, date);
  const { notices } = read;
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { ...read, unmade: [] }, notices };
}

/** What can be used though some files have faults, and all faults of all files. */
export function usableSources(sources: Sources, date?: IsoDate, remember?: Remember): Usable {
  const everything = readEverything(sources, date, remember);
  const { read, files, faults, consequences } = everything;
  const value = leaveOut({ read, files, faults: [...faults, ...consequences] });
  return { ...(value ? { value } : {}), faults, notices: read.notices };
}

function readEverything(sources: Sources, date: IsoDate | undefined, remember?: Remember): FilesRead {
  const everything = readFiles(sources.builtIn, sources.own, SETTABLE, remember);
  const { read, faults } = everything;
  const texts = readTexts(everything);
  const asked = new Set(faults.map(({ place }) => place.file));
  const year = date === undefined ? undefined : Number(date.slice(0, 4));
  return {
    ...everything,
    read: { ...read, workouts: texts.workouts },
    faults: inReadingOrder([
      ...sources.faults,
      ...faults,
      ...texts.faults,
      ...(everything.message ? checkMessage(everything.message, read.library.movements) : []),
      ...effortsOf(read),
      ...earlySplitsOf(read),
      ...(date === undefined ? [] : askDates(read.athletes, everything.files.athletes, date)),
      ...askDivisions(read.athletes, read.workouts, everything.files.athletes, { year, asked }),
    ]),
  };
}

/** Max efforts that cannot be right, of every athlete and every typical one. */
const effortsOf = ({ athletes, bands, library }: DataRead): readonly Fault[] =>
  [...athletes, ...bands.map((band) => band.profile)].flatMap((athlete) =>
    checkEfforts(athlete, library.movements).map(effortFault),
  );

/** Early performances whose clocks cannot belong to their workout. */
const earlySplitsOf = ({ workouts, library }: DataRead): readonly Fault[] =>
  workouts.flatMap((workout) => checkEarlySplits(workout, library.movements).map(earlyFault));

/** Reads and checks the data folder. */
export const loadData = (places: Places): Checked<Data> => checkSources(readSources(places), places.date);

/**
 * Reads the data folder and takes what can be used of it; what was read of the same files before is taken as it was. Where one
 * athlete is named, only what that one's plans rest on is read.
 */
export function loadUsable(places: Surroundings, athlete?: string): Usable {
  const sources = readSources(places);
  const wanted = athlete === undefined ? sources : sourcesForOne(sources, athlete);
  const memory = openReadMemory(places, wanted === sources);
  const usable = usableSources(wanted, places.date, memory.remember);
  memory.save();
  return usable;
}
