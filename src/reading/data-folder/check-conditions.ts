import { type Condition, type Fact, singlesOf } from "../../models/condition.ts";
import type { Fault } from "../../models/fault.ts";
import { idOfFile } from "../files/id-of-file.ts";
import type { Library } from "../../models/library.ts";
import { nearestName } from "../../models/nearest.ts";
import type { SourceFile } from "../files/source-file.ts";
import { spaced } from "../fields/word-field.ts";
import type { SortedFiles } from "./sort-files.ts";

/** What a fact's word is the name of, where it is a name of something else in the library. */
const NAMES_OF: Readonly<Partial<Record<Fact, "movement" | "option">>> = {
  movement: "movement",
  cannot: "movement",
  "may-come": "movement",
  prefers: "option",
};

/**
 * The names conditions of the library speak about: movements by their id, options of choices by theirs, written with
 * spaces or hyphens. A condition on a name that does not exist would never hold, and nobody would notice.
 */
export function checkConditions(
  library: Library,
  movementIds: ReadonlySet<string>,
  files: SortedFiles["of"],
): readonly Fault[] {
  const movements = [...library.movements.values()];
  const options = movements.flatMap(({ choices }) => choices.flatMap((choice) => choice.options));
  const known = { movement: movementIds, option: new Set(options.map(({ id }) => id)) };
  const of = (
    list: readonly SourceFile[],
    entries: readonly { readonly id: string; readonly when: readonly Condition[] }[],
  ): readonly Fault[] =>
    entries.flatMap(({ id, when }) => {
      const file = list.find(({ path }) => idOfFile(path) === id);
      return file === undefined ? [] : when.flatMap((each) => faultsIn(each, file, known));
    });
  return [
    ...of(files["warm-ups"], library.warmUps),
    ...of(files.recovery, library.recovery),
    ...of(files.cautions, library.cautions),
    ...of(
      files.movements,
      movements.map(({ id, choices }) => ({
        id,
        when: choices.flatMap((choice) => choice.options.flatMap((option) => option.when)),
      })),
    ),
  ];
}

function faultsIn(
  condition: Condition,
  file: SourceFile,
  known: Readonly<Record<"movement" | "option", ReadonlySet<string>>>,
): readonly Fault[] {
  return singlesOf(condition).flatMap((single) => {
    if (single.kind !== "fact") return [];
    const kind = NAMES_OF[single.fact];
    if (kind === undefined || known[kind].has(asId(single.word))) return [];
    const nearest = nearestName(single.word, known[kind]);
    return [
      {
        place: placeOfFact(file, single.fact, single.word),
        found: single.word,
        problem: `there is no ${kind} of this name, so the condition would never hold`,
        ...(nearest === undefined ? {} : { nearest: spaced(nearest) }),
        remedy:
          nearest === undefined
            ? `Write the name of ${kind === "movement" ? "a movement" : "an option"} that there is.`
            : `Write \`${single.fact} ${spaced(nearest)}\`.`,
        severity: "fault",
      } as const,
    ];
  });
}

/** Where the word of a fact stands in a file; its first line where it is written in another way. */
function placeOfFact(file: SourceFile, fact: string, word: string): Fault["place"] {
  const escaped = word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/\s+/g, "\\s+");
  const found = new RegExp(`${fact}\\s+(?=${escaped}(?![\\w-]))`).exec(file.text);
  const at = found === null ? 0 : found.index + found[0].length;
  const before = file.text.slice(0, at).split("\n");
  return { file: file.path, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

const asId = (word: string): string => word.toLowerCase().replaceAll(/\s+/g, "-");
