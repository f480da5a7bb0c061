import { chooseField, fieldsOfFile, namesLifted } from "../../models/choose-field.ts";
import type { Fault, Place } from "../../models/fault.ts";
import type { Field } from "../../models/field.ts";
import { idOfFile } from "../files/id-of-file.ts";
import type { Movement } from "../../models/movement.ts";
import { nearestName } from "../../models/nearest.ts";
import type { SourceFile } from "../files/source-file.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import type { NamedField, Workout } from "../../models/workout.ts";
import { splitFrontMatter } from "../yaml/front-matter.ts";
import { openYaml, type OpenedYaml } from "../yaml/open-yaml.ts";
import { ownEntry } from "../../models/own-entry.ts";

/** Names that exist, whether or not their files could be read. */
type Names = { readonly competitions: readonly string[]; readonly fields: readonly string[] };

const AS_FIELD: Readonly<Partial<Record<ScoreKind, Field["kind"]>>> = {
  time: "time",
  reps: "reps",
  "rounds-and-reps": "reps",
  load: "load",
  calories: "calories",
  metres: "metres",
};

/** The competition and the fields that a workout's file names exist; also told where the workout itself has faults. */
export function checkNames(file: SourceFile, names: Names): readonly Fault[] {
  const opened = openEntries(file);
  const entries = (opened.value ?? {}) as Readonly<Record<string, unknown>>;
  const competition = entries["competition"];
  return [
    ...(typeof competition === "string"
      ? nameFault(opened.placeAt(["competition"]), "competition", competition.trim(), names.competitions)
      : []),
    ...fieldNames(entries["field"]).flatMap(({ path, name }) =>
      nameFault(opened.placeAt(path), "field", name, names.fields),
    ),
    ...addressFault(file),
  ];
}

type WrittenName = { readonly path: readonly string[]; readonly name: string };

/** Every field named in an entry, once for each place. */
function fieldNames(written: unknown, path: readonly string[] = ["field"]): readonly WrittenName[] {
  if (typeof written === "string") {
    const names = written.split("/").map((name) => name.trim());
    return [...new Set(names)]
      .filter((name) => name !== "" && name.toLowerCase() !== "nothing")
      .map((name) => ({ path, name }));
  }
  if (typeof written !== "object" || written === null || Array.isArray(written)) return [];
  return Object.entries(written).flatMap(([part, text]: readonly [string, unknown]) =>
    typeof text === "string" ? fieldNames(text, [...path, part]) : [],
  );
}

function nameFault(
  place: Place,
  entry: "competition" | "field",
  name: string,
  names: readonly string[],
): readonly Fault[] {
  if (names.includes(name)) return [];
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

/**
 * Every field a workout names counts the score of a part it is meant for and, where its file is parted into divisions or
 * lifts, one of them is the workout's.
 */
export function checkFields(
  workout: Workout,
  file: SourceFile,
  fields: ReadonlyMap<string, Field>,
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] {
  const opened = openEntries(file);
  return workout.fields.flatMap((named) => {
    const place = opened.placeAt(named.part === undefined ? ["field"] : ["field", named.part]);
    const parts = workout.parts.filter(({ name }) => named.part === undefined || name === named.part);
    return [...new Set(Object.values(named.files))].flatMap((id) => {
      const ofFile = fieldsOfFile(fields, id);
      if (ofFile.length === 0) return [];
      const found = { place, id, fields: ofFile };
      return kindFault(found, parts, named.part) ?? groupFault(found, named, workout, movements) ?? [];
    });
  });
}

/** The fields of a file that a workout names, and where. */
type FoundFields = { readonly place: Place; readonly id: string; readonly fields: readonly Field[] };

function kindFault(
  { place, id, fields }: FoundFields,
  parts: Workout["parts"],
  part: string | undefined,
): Fault | undefined {
  const kinds = parts.map((part) => AS_FIELD[part.score.kind]);
  const [first] = fields;
  if (!first || kinds.includes(first.kind) || kinds.includes(undefined)) return undefined;
  const which = part === undefined ? "no part of the workout is scored so" : `part ${part} is not scored so`;
  return {
    place,
    found: id,
    problem: `the field holds ${first.kind}, and ${which}`,
    allowed: `a field of ${[...new Set(kinds)].join(" or ")}`,
    remedy: "Name a field of results of this workout, or leave the entry out.",
    severity: "fault",
  };
}

function groupFault(
  { place, id, fields }: FoundFields,
  { files }: NamedField,
  { divisions, parts }: Workout,
  movements: ReadonlyMap<string, Movement>,
): Fault | undefined {
  const meant = divisions.filter((division) => ownEntry(files, division) === id);
  const isRanked = meant.some((division) =>
    parts.some((part) => chooseField(fields, { division, lifts: namesLifted(part, division, movements) })),
  );
  if (isRanked) return undefined;
  const groups = fields.flatMap(({ division }) => division ?? []);
  return {
    place,
    found: id,
    problem: `this field is of ${groups.join(", ")}, and the workout is of ${meant.join(", ")}`,
    allowed: `results of ${meant.join(", ")}; without a column \`division\` or \`lift\` they are taken for everybody's`,
    remedy: "Name the divisions of the field and of the workout alike, or name another field.",
    severity: "fault",
  };
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
