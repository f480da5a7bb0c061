import type { AthleteContext } from "./athlete-file/context.ts";
import { onceForDates, orderOfDates } from "./athlete-file/date-order.ts";
import type { Athlete } from "../models/athlete.ts";
import type { Band } from "../models/band.ts";
import type { Checked } from "../models/fault.ts";
import { idOfFile } from "./files/id-of-file.ts";
import type { DateOrder } from "./quantities/date.ts";
import { MASS_UNITS, type MassUnit } from "../models/quantity.ts";
import type { SourceFile } from "./files/source-file.ts";
import { checkOpened } from "./yaml/read.ts";
import { athleteSchema, type WrittenAthlete } from "./athlete-file/athlete-schema.ts";
import { bandSchema } from "./athlete-file/band-schema.ts";
import { strayResults } from "./athlete-file/stray-results.ts";
import { openYaml, type OpenedYaml } from "./yaml/open-yaml.ts";

type ReadAthlete = (file: SourceFile) => Checked<Athlete>;

/**
 * Makes the reader of athlete files, `athletes/*.yaml`. The schema is made once for many files. Every fault and question
 * of a file is told at once; one about the order of day and month stands for all its dates. Never throws.
 */
export function athleteReader(context: AthleteContext): ReadAthlete {
  const schemas = new Map<string, ReturnType<typeof athleteSchema>>();
  const schemaFor = (dates: DateOrder | undefined, units: MassUnit | undefined) => {
    const key = `${dates ?? ""} ${units ?? ""}`;
    const ofFile = { ...(dates === undefined ? {} : { dates }), ...(units === undefined ? {} : { units }) };
    const known = schemas.get(key) ?? athleteSchema({ ...context, ...ofFile });
    schemas.set(key, known);
    return known;
  };
  return (file) => {
    const opened = openYaml(file.path, file.text, "text");
    const checked = checkOpened(
      opened,
      schemaFor(context.dates ?? orderOfDates(file.text), unitsOf(opened.value)),
    );
    const stray = strayResults(file.path, opened);
    if (!checked.ok) return { ok: false, faults: [...onceForDates(checked.faults), ...stray] };
    if (stray.length > 0) return { ok: false, faults: stray };
    return { ...checked, value: placed(checked.value, checked.value.name, file, opened, []) };
  };
}

/** The unit the file says the athlete reads loads in. */
function unitsOf(value: unknown): MassUnit | undefined {
  const written = typeof value === "object" && value !== null && "units" in value ? value.units : undefined;
  return MASS_UNITS.find((unit) => unit === written);
}

/** Makes the reader of typical athletes, `content/bands/*.yaml`; the title stands in for the name. */
export function bandReader(context: AthleteContext): (file: SourceFile) => Checked<Band> {
  const schema = bandSchema(context);
  return (file) => {
    const opened = openYaml(file.path, file.text, "text");
    const checked = checkOpened(opened, schema);
    if (!checked.ok) return checked;
    const { title, order, profile } = checked.value;
    const athlete = placed(profile, title, file, opened, ["profile"]);
    return { ...checked, value: { id: athlete.id, title, order, profile: athlete } };
  };
}

/** An athlete as written, with the file's name as id and places in the file. */
function placed(
  written: WrittenAthlete,
  name: string,
  file: SourceFile,
  opened: OpenedYaml,
  path: readonly string[],
): Athlete {
  return {
    ...written,
    id: idOfFile(file.path),
    name,
    place: opened.placeAt(path),
    efforts: written.efforts.map(({ entry, ...effort }) => ({
      ...effort,
      place: opened.placeAt([...path, "efforts", entry]),
    })),
  };
}
