import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { checkEfforts } from "../compute/capacity/check-efforts.ts";
import { checkEarlySplits } from "../compute/early-splits/check-early-splits.ts";
import type { Data } from "../models/data.ts";
import type { Checked, Fault } from "../models/fault.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import { readData } from "../reading/read-data.ts";
import { checkWords } from "./check-words.ts";
import { LIBRARY_FOLDERS, readFolder, type SourceFolder } from "./read-folder.ts";
import type { Surroundings } from "./surroundings.ts";

/** Everything people wrote, as files: what the tool brings along, and what stands in the data folder. */
export type Sources = {
  readonly builtIn: readonly SourceFile[];
  readonly own: readonly SourceFile[];
  readonly faults: readonly Fault[];
};

type Places = Pick<Surroundings, "root" | "dataFolder" | "audience">;

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

/** Checks everything people wrote, the words in the texts of workouts included; all faults of all files at once. */
export function checkSources(sources: Sources): Checked<Data> {
  const data = readData(sources.builtIn, sources.own);
  const faults = [...sources.faults, ...(data.ok ? [] : data.faults)];
  if (!data.ok) return { ok: false, faults };
  const words = checkWords(sources.own, data.value);
  const efforts = effortsOf(data.value);
  const early = earlySplitsOf(data.value);
  const stopping = [...faults, ...words, ...efforts, ...early];
  return stopping.length > 0 ? { ok: false, faults: stopping } : data;
}

/** Max efforts that cannot be right, of every athlete and every typical one. */
const effortsOf = ({ athletes, bands, library }: Data): readonly Fault[] =>
  [...athletes, ...bands.map((band) => band.profile)].flatMap((athlete) =>
    checkEfforts(athlete, library.movements),
  );

/** Early performances whose clocks cannot belong to their workout. */
const earlySplitsOf = ({ workouts, library }: Data): readonly Fault[] =>
  workouts.flatMap((workout) => checkEarlySplits(workout, library.movements));

/** Reads and checks the data folder. */
export const loadData = (places: Places): Checked<Data> => checkSources(readSources(places));
