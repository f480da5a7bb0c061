import type { AthleteContext } from "./athlete-file/context.ts";
import type { Band } from "../models/band.ts";
import { type Collector, makeCollector } from "./data-folder/collect.ts";
import { readLibrary } from "./data-folder/read-library.ts";
import type { SortedFiles } from "./data-folder/sort-files.ts";
import type { Remember } from "./files/remember.ts";
import { athleteReader, bandReader } from "./read-athlete.ts";
import type { SourceFile } from "./files/source-file.ts";

/** The library with its faults and notices, read anew only where a file of it changed. */
export function rememberedLibrary(
  files: SortedFiles["of"],
  collector: Collector,
  remember: Remember,
): ReturnType<typeof readLibrary> {
  const from = [files.movements, files["warm-ups"], files.recovery, files.cautions];
  const { read, faults, notices } = remember("library", from, () => {
    const own = makeCollector();
    return { read: readLibrary(files, own), faults: own.faults, notices: own.notices };
  });
  collector.faults.push(...faults);
  collector.notices.push(...notices);
  return read;
}

/** Reads an athlete's file, or takes what was read of it before among the same other files. */
export function rememberingReader(
  files: SortedFiles,
  context: AthleteContext,
  remember: Remember,
): ReturnType<typeof athleteReader> {
  const read = athleteReader(context);
  const around = allButAthletes(files);
  return (file) => remember("athlete", [around, [file]], () => read(file));
}

const allButAthletes = ({ of, settings }: SortedFiles): readonly SourceFile[] => [
  ...Object.entries(of).flatMap(([kind, files]) => (kind === "athletes" ? [] : files)),
  ...(settings ? [settings] : []),
];

/** Typical athletes, read anew only where any file but an athlete's changed. */
export function rememberedBands(
  files: SortedFiles,
  context: AthleteContext,
  collector: Collector,
  remember: Remember,
): readonly Band[] {
  const read = remember("library", [allButAthletes(files)], () => files.of.bands.map(bandReader(context)));
  return read.flatMap((band) => collector.take(band) ?? []);
}
