import { describe, expect, it } from "vitest";
import { chooseField } from "../../src/models/choose-field.ts";
import type { Field } from "../../src/models/field.ts";
import { sampleField } from "../support/sample-field.ts";

const parted = (...divisions: readonly string[]): readonly Field[] =>
  divisions.map((division) => sampleField({ 1: 1 }, { id: `wave/${division}`, division }));
const chosen = (fields: readonly Field[], division: string, lifts: readonly string[] = []) =>
  chooseField(fields, { division, lifts })?.id;

describe("the field that ranks a division", () => {
  it("is the one of its name, however the sex is called", () => {
    expect(chosen(parted("men", "women"), "women")).toBe("wave/women");
    expect(chosen(parted("M", "F"), "women")).toBe("wave/F");
    expect(chosen(parted("Men's", "Women's"), "men")).toBe("wave/Men's");
    expect(chosen(parted("women masters", "women"), "Masters Women")).toBe("wave/women masters");
  });

  it("is none of another division", () => {
    expect(chosen(parted("men", "women"), "masters women")).toBeUndefined();
    expect(chosen(parted("masters men"), "men")).toBeUndefined();
  });

  it("is that of the lift where the file is parted into lifts", () => {
    const lifts = parted("back squat", "clean & jerk", "women snatch");
    expect(chosen(lifts, "men", ["clean and jerk", "clean & jerk"])).toBe("wave/clean & jerk");
    expect(chosen(lifts, "women", ["Snatch"])).toBe("wave/women snatch");
    expect(chosen(lifts, "men", ["Snatch"])).toBeUndefined();
  });

  it("is everybody's where the file is not parted, unless one says more", () => {
    const all = sampleField({ 1: 1 }, { id: "wave" });
    expect(chosen([all], "men")).toBe("wave");
    expect(chosen([all, ...parted("men")], "men")).toBe("wave/men");
  });
});
