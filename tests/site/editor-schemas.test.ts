import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import * as z from "zod";
import { readFiles } from "../../src/reading/read-data.ts";
import { splitFrontMatter } from "../../src/reading/yaml/front-matter.ts";
import { editorSchemas, SCHEMA_KINDS, type SchemaKind, schemaLine } from "../../src/site/editor-schemas.ts";
import { readSources } from "../../src/site/load-data.ts";
import { startingFile } from "../../src/site/starting-file.ts";
import { ROOT } from "../support/run-command.ts";

const { builtIn, own } = readSources({ root: ROOT, dataFolder: ROOT, audience: "everyone" });
const schemas = editorSchemas(readFiles(builtIn, own));
const FOLDERS: Readonly<Record<Exclude<SchemaKind, "settings">, string>> = {
  athlete: "athletes",
  workout: "content/workouts",
  gym: "content/gyms",
  competition: "content/competitions",
  band: "content/bands",
  movement: "content/movements",
  "warm-up": "content/warm-ups",
  recovery: "content/recovery",
  caution: "content/cautions",
};

/** What is wrong with a text beside a schema, read as an editor reads YAML. */
function troubles(kind: SchemaKind, path: string, text: string): readonly string[] {
  const split = splitFrontMatter({ path, text });
  // Between braces a decimal comma parts two entries for an editor; the reader joins them.
  const joined = (yaml: string): string => yaml.replace(/(\d),(\d)/g, "$1.$2");
  const yaml = path.endsWith(".mdx") && split.ok ? split.value.yaml : text;
  const read = z
    .fromJSONSchema(schemas[kind] as Parameters<typeof z.fromJSONSchema>[0])
    .safeParse(parse(joined(yaml)));
  return read.success
    ? []
    : read.error.issues.map(({ path: at, message }) => `${basename(path)} ${at.join(".")}: ${message}`);
}

describe("the schemas editors read", () => {
  it.each(Object.entries(FOLDERS))("take the %s files of the demonstration", (kind, folder) => {
    const files = readdirSync(join(ROOT, folder)).filter((name) => /\.(?:yaml|mdx)$/.test(name));
    expect(files.length).toBeGreaterThan(0);
    const told = files.flatMap((name) =>
      troubles(kind as SchemaKind, name, readFileSync(join(ROOT, folder, name), "utf8")),
    );
    expect(told).toEqual([]);
  });

  it("take the settings and the files one starts from", () => {
    const settings = readFileSync(join(ROOT, "content/settings.yaml"), "utf8");
    expect(troubles("settings", "settings.yaml", settings)).toEqual([]);
    expect(troubles("athlete", "a.yaml", startingFile("athlete", "Zoë Ångström"))).toEqual([]);
    expect(troubles("workout", "w.mdx", startingFile("workout", "Weir"))).toEqual([]);
  });

  it("refuse an entry nobody knows, in every kind", () => {
    for (const kind of SCHEMA_KINDS)
      expect(troubles(kind, "x.yaml", "no such entry: 1\n"), kind).not.toEqual([]);
  });

  it("offer the names there are, with what each entry means", () => {
    const { lifts, level } = schemas.athlete.properties ?? {};
    expect(JSON.stringify(lifts)).toContain('"front squat":');
    expect(JSON.stringify(level)).toContain('["new","regular","competitor","elite"]');
    expect(level?.description).toContain("how experienced");
    expect(JSON.stringify(schemas.workout.properties?.["coach sets"])).toContain(
      "the first round is not done faster",
    );
  });

  it("are named by the first line of files", () => {
    expect(startingFile("athlete", "Bo").startsWith(schemaLine("athlete", "../"))).toBe(true);
    expect(startingFile("workout", "Weir").split("\n")[1]).toBe(schemaLine("workout", "../../").trim());
  });
});
