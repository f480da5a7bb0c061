import { describe, expect, it } from "vitest";
import * as z from "zod";
import { workoutSchema } from "../../../src/reading/notation/workout-schema.ts";

describe("the form of a workout's file", () => {
  it("describes every entry, so that the form is its own manual", () => {
    const described = z.toJSONSchema(workoutSchema, { io: "input", unrepresentable: "any" });
    const entries = Object.entries(described.properties ?? {});
    expect(entries.length).toBeGreaterThan(20);
    for (const [name, field] of entries) {
      const { description } = field as { readonly description?: string };
      // The list of early performances has its sentence inside, one for each entry.
      if (name !== "early") expect(description, name).toBeTruthy();
    }
  });

  it("refuses entries it does not know", () => {
    const written = { title: "Weir", "for time": null, work: [], warmup: "x" };
    const read = workoutSchema.safeParse(written);
    expect(read.error?.issues.map((issue) => issue.code)).toEqual(["unrecognized_keys"]);
  });

  it("fills in the divisions and the lists that are left out", () => {
    const written: z.input<typeof workoutSchema> = { title: "Weir", "for time": null, work: ["10 burpee"] };
    expect(workoutSchema.parse(written)).toMatchObject({
      divisions: ["men", "women"],
      standards: [],
      equipment: [],
      early: [],
    });
  });
});
