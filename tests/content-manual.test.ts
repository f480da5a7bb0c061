import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import * as z from "zod";
import { MODEL_TABLES, SETTABLE } from "../src/compute/model-tables.ts";
import type { AthleteContext } from "../src/reading/athlete-file/context.ts";
import type { Checked } from "../src/models/fault.ts";
import { liftFinder, movementFinder } from "../src/reading/names/find-movement.ts";
import { answerWord } from "../src/reading/quantities/answer-word.ts";
import { readBodyMass } from "../src/reading/quantities/body-mass.ts";
import { readDateTime } from "../src/reading/quantities/date-time.ts";
import { readDate } from "../src/reading/quantities/date.ts";
import { readHeight } from "../src/reading/quantities/height.ts";
import { readLength } from "../src/reading/quantities/length.ts";
import { readMass } from "../src/reading/quantities/mass.ts";
import { readTime } from "../src/reading/quantities/time.ts";
import { athleteReader, bandReader } from "../src/reading/read-athlete.ts";
import { readData } from "../src/reading/read-data.ts";
import { readField } from "../src/reading/read-field.ts";
import { readWorkout } from "../src/reading/read-workout.ts";
import { readYaml } from "../src/reading/yaml/read.ts";
import { sayFaults } from "../src/reading/say-fault.ts";
import { athleteSchema } from "../src/reading/athlete-file/athlete-schema.ts";
import { competitionSchema } from "../src/reading/schemas/competition-schema.ts";
import { gymSchema } from "../src/reading/schemas/gym-schema.ts";
import { cautionSchema, recoverySchema, warmUpSchema } from "../src/reading/schemas/library-schema.ts";
import { movementSchema } from "../src/reading/schemas/movement-schema.ts";
import { FACTS, METRICS } from "../src/models/condition.ts";
import { REASON_GAPS } from "../src/models/movement.ts";
import { settingsSchema } from "../src/reading/schemas/settings-schema.ts";
import { spaced } from "../src/reading/fields/word-field.ts";
import {
  CONDITIONS,
  FEELINGS,
  HABITS,
  JOINTS,
  LEVELS,
  RECOVERIES,
  SHARED_FACTS,
  STRESSES,
} from "../src/models/vocabulary.ts";
import { readFolder } from "../src/site/read-folder.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const manual = readFileSync(`${root}content/README.md`, "utf8");

/** Schemas of the four kinds of the library. */
const LIBRARY: Readonly<Record<"movement" | "warm-up" | "recovery" | "caution", z.ZodType>> = {
  movement: movementSchema,
  "warm-up": warmUpSchema,
  recovery: recoverySchema,
  caution: cautionSchema,
};

type Example = { readonly kind: string; readonly text: string; readonly line: number };

const examples: readonly Example[] = [...manual.matchAll(/^```(?:yaml|csv) (\S+)\n(.*?)^```$/gms)].map(
  (match) => ({
    kind: match[1] ?? "",
    text: match[2] ?? "",
    line: manual.slice(0, match.index).split("\n").length,
  }),
);

const data = readData(readFolder(root, ["content/movements"]).files, []);
const movements = data.ok ? data.value.library.movements : new Map<string, never>();
const findMovement = movementFinder(movements);
const options = [...movements.values()].flatMap((movement) => movement.choices);
const context: AthleteContext = {
  findMovement,
  findLift: liftFinder(movements),
  choices: new Map(options.map((choice) => [choice.id, choice.options])),
  gyms: ["mill"],
  workouts: new Map(
    [
      { id: "low-water", title: "Low water", parts: ["a"], ofCompetition: true },
      { id: "slipway", title: "Slipway", parts: ["a", "b"], ofCompetition: true },
    ].map((workout) => [workout.id, workout]),
  ),
};

function run({ kind, text }: Example): Checked<unknown> {
  const file = { path: `manual.${kind}`, text };
  switch (kind) {
    case "workout":
      return readWorkout({ path: "manual.mdx", text: `---\n${text}---\n` }, movements);
    case "athlete":
      return athleteReader(context)(file);
    case "gym":
      return readYaml(file, gymSchema, { scalars: "text" });
    case "competition":
      return readYaml(file, competitionSchema(findMovement), { scalars: "text" });
    case "band":
      return bandReader(context)(file);
    case "settings":
      return readYaml(file, settingsSchema(context.gyms, SETTABLE), { scalars: "text" });
    case "field":
      return readField(file);
    case "movement":
    case "warm-up":
    case "recovery":
    case "caution":
      return readYaml(file, LIBRARY[kind], { scalars: "text" });
    default:
      throw new Error(`the manual has an example of an unknown kind, ${kind}`);
  }
}

describe("the manual", () => {
  it("has an example of every file that people write", () => {
    const kinds = new Set(examples.map((example) => example.kind));
    expect(kinds).toEqual(
      new Set([
        ...["workout", "athlete", "gym", "competition", "band", "field", "settings"],
        ...Object.keys(LIBRARY),
      ]),
    );
  });

  it.each(examples)("gives an example of a $kind that reads, on line $line", (example) => {
    const result = run(example);
    const faults = result.ok ? [] : result.faults;
    expect(sayFaults(faults)).toBe("No faults.");
  });

  it("needs no notice in its examples of athletes, gyms, competitions and bands", () => {
    const told = examples.filter(({ kind }) => !["workout", "field"].includes(kind)).map(run);
    expect(told.flatMap((result) => (result.ok ? result.notices : []))).toEqual([]);
  });

  it("labels every block of code, so that all of them are run", () => {
    // Words of a text are run by the test of the check that knows them.
    const fences = manual.match(/^```(?!mdx words)\S.*$/gm) ?? [];
    expect(fences).toHaveLength(examples.length);
  });

  it("names every entry of an athlete, a gym, a competition and the settings", () => {
    const shapes = [
      athleteSchema(context).in.shape,
      gymSchema.in.shape,
      competitionSchema(findMovement).in.shape,
      settingsSchema([], SETTABLE).in.shape,
    ];
    const missing = shapes
      .flatMap((shape) => Object.keys(shape))
      .filter((name) => !manual.includes(`${name}:`));
    expect(missing).toEqual([]);
  });

  it.each(Object.entries(LIBRARY))(
    "names every entry of a %s of the library, inner ones too",
    (_, schema) => {
      const library = manual.slice(manual.indexOf("## The library"), manual.indexOf("## Where files go"));
      const names = entriesIn(z.toJSONSchema(schema, { io: "input", unrepresentable: "any" }));
      expect(names.length).toBeGreaterThan(6);
      expect(names.filter((name) => !library.includes(`${name}:`))).toEqual([]);
    },
  );

  it("names every number and fact a condition may ask about, and every gap of a reason", () => {
    const gaps = Object.keys(REASON_GAPS).map((gap) => `{${gap}}`);
    const flowing = manual.replace(/\s+/g, " ");
    const named = [...[...METRICS, ...FACTS].map((name) => `\`${name}\``), ...gaps];
    expect(named.filter((name) => !flowing.includes(name))).toEqual([]);
  });

  it("lists every word of the closed lists", () => {
    const words = [
      ...JOINTS,
      ...CONDITIONS,
      ...STRESSES,
      ...LEVELS,
      ...RECOVERIES,
      ...SHARED_FACTS,
      ...FEELINGS,
      ...HABITS,
    ].map(spaced);
    const flowing = manual.replace(/\s+/g, " ");
    expect(words.filter((word) => !flowing.includes(word))).toEqual([]);
  });
});

/** Names of all entries of a JSON Schema, inner ones too. */
function entriesIn(schema: unknown): readonly string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const properties = "properties" in schema ? Object.keys(schema.properties ?? {}) : [];
  return [...new Set([...properties, ...Object.values(schema).flatMap(entriesIn)])];
}

/** The examples of one row of the table of quantities. */
function written(row: string): readonly string[] {
  const line = manual.split("\n").find((each) => each.startsWith(`| ${row} |`)) ?? "";
  return [...line.matchAll(/`([^`]+)`/g)].map((match) => match[1] ?? "");
}

describe("the quantities of the manual", () => {
  it.each([
    ["loads", readMass],
    ["times", readTime],
    ["distances", readLength],
    ["heights", readHeight],
    ["dates", readDate],
    ["start times", readDateTime],
  ] as const)("are taken as they stand there: %s", (row, read) => {
    expect(written(row).length).toBeGreaterThan(0);
    expect(written(row).filter((text) => !read(text).ok)).toEqual([]);
  });

  it("are approximate, unknown, impossible or checked as it says", () => {
    expect(readTime(written("not quite sure")[0] ?? "")).toMatchObject({ ok: true, approximate: true });
    expect(readMass(written("not quite sure")[1] ?? "")).toMatchObject({ ok: true, approximate: true });
    expect(written("not known").map(answerWord)).toEqual(["unknown", "unknown", "unknown"]);
    expect(written("cannot do it").map(answerWord)).toEqual(["cannot", "cannot", "cannot"]);
    expect(written("unusual, but right").map((text) => readBodyMass(text).ok)).toEqual([true]);
  });
});

describe("the numbers of the model that the manual names", () => {
  const rows = [...manual.matchAll(/^\| (`\w+`(?:, `\w+`)*) \| [^|]+ \| ([\d., ]+) \|$/gm)].flatMap(
    ([, names = "", values = ""]) =>
      names
        .split(", ")
        .map((name, at) => [name.replaceAll("`", ""), Number(values.split(", ")[at])] as const),
  );

  it("are there, and are as it says", () => {
    const numbers = new Map(
      MODEL_TABLES.flatMap(({ constants }) =>
        Object.entries(constants).map(([name, { value }]) => [name, value] as const),
      ),
    );
    expect(rows.length).toBeGreaterThan(8);
    expect(rows.filter(([name, value]) => numbers.get(name) !== value)).toEqual([]);
  });
});
