import { describe, expect, it } from "vitest";
import type * as z from "zod";
import { athleteSchema } from "../../../src/reading/athlete-file/athlete-schema.ts";
import { bandSchema } from "../../../src/reading/athlete-file/band-schema.ts";
import { competitionSchema } from "../../../src/reading/schemas/competition-schema.ts";
import { gymSchema } from "../../../src/reading/schemas/gym-schema.ts";
import { settingsSchema } from "../../../src/reading/schemas/settings-schema.ts";
import { contextForTests } from "../../support/athlete-context.ts";

const shapes = {
  athlete: athleteSchema(contextForTests).in,
  gym: gymSchema.in,
  competition: competitionSchema(contextForTests.findMovement).in,
  band: bandSchema(contextForTests),
  settings: settingsSchema([], new Map()).in,
};

describe("the schemas of what people write", () => {
  it.each(Object.entries(shapes))("say of every entry of a file what it is: %s", (_name, schema) => {
    const silent = Object.entries(schema.shape).filter(
      ([, field]) => ((field as z.ZodType).description ?? "") === "",
    );
    expect(silent.map(([name]) => name)).toEqual([]);
  });

  it.each(Object.entries(shapes))("refuse entries they do not know: %s", (_name, schema) => {
    const issues = schema.safeParse({ surprise: 1 }).error?.issues ?? [];
    expect(issues.some((issue) => issue.code === "unrecognized_keys")).toBe(true);
  });
});
