import type { Fault, Place } from "../fault.ts";
import type { Field } from "../field.ts";
import { idOfFile } from "../file-name.ts";
import { nearestName } from "../nearest.ts";
import type { SourceFile } from "../read.ts";
import type { ScoreKind } from "../vocabulary.ts";
import type { Workout } from "../workout.ts";
import { splitFrontMatter } from "../yaml/front-matter.ts";
import { openYaml, type OpenedYaml } from "../yaml/open-yaml.ts";

/** Names that exist, whether or not their files could be read. */
export type Names = { readonly competitions: readonly string[]; readonly fields: readonly string[] };

const AS_FIELD: Readonly<Partial<Record<ScoreKind, Field["kind"]>>> = {
  time: "time",
  reps: "reps",
  "rounds-and-reps": "reps",
  load: "load",
  calories: "calories",
  metres: "metres",
};

/** The competition and the field that a workout's file names exist; also told where the workout itself has faults. */
export function checkNames(file: SourceFile, names: Names): readonly Fault[] {
  const opened = openEntries(file);
  const entries = opened.value as Readonly<Record<string, unknown>> | null | undefined;
  const named = (entry: string): string | undefined => {
    const text = entries?.[entry];
    return typeof text === "string" ? text.trim() : undefined;
  };
  return [
    ...nameFault(opened.placeAt(["competition"]), "competition", named("competition"), names.competitions),
    ...nameFault(opened.placeAt(["field"]), "field", named("field"), names.fields),
    ...addressFault(file),
  ];
}

function nameFault(
  place: Place,
  entry: "competition" | "field",
  name: string | undefined,
  names: readonly string[],
): readonly Fault[] {
  if (name === undefined || names.includes(name)) return [];
  const folder = `content/${entry}s`;
  const nearest = nearestName(name, names);
  return [
    {
      place,
      found: name,
      problem: `there is no ${entry} of this name`,
      allowed: names.length === 0 ? `none yet: ${folder} holds no file` : names.join(", "),
      ...(nearest === undefined ? {} : { nearest }),
      remedy:
        nearest === undefined
          ? `Write the name of a file in ${folder}, without its ending.`
          : `Write \`${nearest}\`.`,
      severity: "fault",
    },
  ];
}

/** The field holds results of a kind in which some part of the workout is scored. */
export function checkField(
  workout: Workout,
  file: SourceFile,
  fields: ReadonlyMap<string, Field>,
): readonly Fault[] {
  const field = workout.field === undefined ? undefined : fields.get(workout.field);
  const kinds = workout.parts.map((part) => AS_FIELD[part.score.kind]);
  if (!field || kinds.includes(field.kind) || kinds.includes(undefined)) return [];
  return [
    {
      place: openEntries(file).placeAt(["field"]),
      found: field.id,
      problem: `the field holds ${field.kind}, and no part of the workout is scored so`,
      allowed: `a field of ${[...new Set(kinds)].join(" or ")}`,
      remedy: "Name a field of results of this workout, or leave the entry out.",
      severity: "fault",
    },
  ];
}

/** The name of the file becomes part of the page's address. */
function addressFault(file: SourceFile): readonly Fault[] {
  const id = idOfFile(file.path);
  if (/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(id)) return [];
  const plain = id
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return [
    {
      place: { file: file.path, line: 1, column: 1 },
      found: id,
      problem: "the name of the file becomes part of an address, and cannot be used there",
      allowed: "small letters a to z, digits and hyphens",
      remedy: plain === "" ? "Rename the file." : `Rename the file to ${plain}.mdx.`,
      severity: "fault",
    },
  ];
}

function openEntries(file: SourceFile): OpenedYaml {
  const split = splitFrontMatter(file);
  return openYaml(file.path, split.ok ? split.value.yaml : "", "text");
}
