import { idOfFile } from "../reading/files/id-of-file.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import type { Sources } from "./load-data.ts";

const isAthlete = ({ path }: SourceFile): boolean => path.startsWith("athletes/");

/** The name in an athlete's file, where it is written on one line as names usually are. */
const nameIn = (text: string): string => /^name:\s*(["']?)(.*?)\1\s*(?:#.*)?$/m.exec(text)?.[2] ?? "";

/**
 * Of everything people wrote what one athlete's plans can rest on: of athlete files that one, those that tell of results,
 * which show how a workout goes, and those that a workout names. Everything where nobody is found, so that the nearest can be
 * named. The athlete is meant by the name of the file or by the name in it.
 */
export function sourcesForOne(sources: Sources, asked: string): Sources {
  const { own } = sources;
  const wanted = asked.toLowerCase();
  const isAsked = ({ path, text }: SourceFile): boolean =>
    idOfFile(path).toLowerCase() === wanted || nameIn(text).toLowerCase() === wanted;
  const athletes = own.filter(isAthlete);
  if (!athletes.some(isAsked)) return sources;
  const others = own.filter((file) => !isAthlete(file));
  const told = others
    .filter(({ path }) => path.startsWith("content/workouts/"))
    .map(({ text }) => text)
    .join("\n")
    .toLowerCase();
  const isNeeded = (file: SourceFile): boolean =>
    isAsked(file) || /result/i.test(file.text) || told.includes(idOfFile(file.path).toLowerCase());
  const kept = athletes.filter(isNeeded);
  return kept.length === athletes.length ? sources : { ...sources, own: [...others, ...kept] };
}
