import type { Fault } from "../../models/fault.ts";
import { idOfFile } from "../files/id-of-file.ts";
import type { Library } from "../../models/library.ts";
import { comparable, nearestName } from "../../models/nearest.ts";
import type { SourceFile } from "../files/source-file.ts";
import { spaced } from "../fields/word-field.ts";
import { STRESSES } from "../../models/vocabulary.ts";
import { placeOfWord } from "./place-of-word.ts";
import type { SortedFiles } from "./sort-files.ts";

/** What one entry of the library says of another: the other exists, and no two movements have the same name. */
export function checkLibrary(
  library: Library,
  ids: ReadonlySet<string>,
  files: SortedFiles["of"],
): readonly Fault[] {
  const unknown = (
    file: SourceFile | undefined,
    id: string,
    kind: "movement" | "stress",
    allowed: Iterable<string>,
  ): readonly Fault[] => {
    if (!file) return [];
    const nearest = nearestName(id, allowed);
    return [
      {
        place: placeOfWord(file, id),
        found: spaced(id),
        problem: `there is no ${kind} of this name`,
        ...(nearest === undefined ? {} : { nearest: spaced(nearest) }),
        remedy:
          nearest === undefined
            ? `Write the name of a ${kind} that there is.`
            : `Write \`${spaced(nearest)}\`.`,
        severity: "fault",
      },
    ];
  };
  const fileOf = (list: readonly SourceFile[], id: string) => list.find((file) => idOfFile(file.path) === id);
  const movement = (list: readonly SourceFile[], owner: string, id: string): readonly Fault[] =>
    ids.has(id) ? [] : unknown(fileOf(list, owner), id, "movement", ids);
  const stress = (owner: string, word: string): readonly Fault[] =>
    STRESSES.some((each) => each === word)
      ? []
      : unknown(fileOf(files.cautions, owner), word, "stress", STRESSES);
  return [
    ...[...library.movements.values()].flatMap(({ id, easier, styleOf, withoutKipping, loading }) =>
      [
        ...easier,
        ...(styleOf === undefined ? [] : [styleOf]),
        ...(withoutKipping === undefined ? [] : [withoutKipping]),
        ...(loading?.ratios ?? []).map(({ of }) => of),
      ].flatMap((other) => movement(files.movements, id, other)),
    ),
    ...library.recovery.flatMap(({ id, work = [] }) =>
      work.flatMap((each) => movement(files.recovery, id, each.movement)),
    ),
    ...library.cautions.flatMap(({ id, withholds }) =>
      withholds.flatMap(({ what, word }) => {
        if (word === undefined) return [];
        if (what === "movement") return movement(files.cautions, id, word);
        return what === "stress" ? stress(id, word) : [];
      }),
    ),
    ...sameNames(library, files.movements),
  ];
}

/** Two movements called the same would be taken for one another. */
function sameNames(library: Library, files: readonly SourceFile[]): readonly Fault[] {
  const byName = new Map<string, string>();
  return [...library.movements.values()].flatMap((movement): readonly Fault[] => {
    const key = comparable(movement.name);
    const other = byName.get(key);
    byName.set(key, movement.id);
    const file = files.find(({ path }) => idOfFile(path) === movement.id);
    if (other === undefined || !file) return [];
    const problem = `the movement in content/movements/${other}.mdx has the same name`;
    return [
      {
        place: placeOfWord(file, movement.name),
        found: movement.name,
        problem,
        remedy: "Give one of the two another name.",
        severity: "fault",
      },
    ];
  });
}
