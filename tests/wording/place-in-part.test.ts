import { describe, expect, it } from "vitest";
import { sayVisit, sayWhichLoad } from "../../src/wording/place-in-part.ts";

type Row = Parameters<typeof sayVisit>[0];

const row = (index: number, name: string, amount: number, mass?: number): Row =>
  ({
    kind: "work",
    index,
    name,
    plural: `${name}s`,
    unit: "reps",
    amount,
    ...(mass !== undefined && { load: { mass: { value: mass, unit: "kg" }, kilograms: mass, pieces: 1 } }),
  }) as unknown as Row;

describe("a visit among others of the same movement", () => {
  const rows = [
    row(0, "clean", 12, 60),
    row(1, "burpee", 24),
    row(2, "clean", 9, 80),
    row(3, "burpee", 18),
    row(4, "clean", 6, 80),
    row(5, "pull-up", 10),
    row(6, "sit-up", 10),
    row(7, "sit-up", 10),
  ] as const;

  it("is told apart by its load, else by its amount, else by which time it is, and by its name where it is alone", () => {
    expect(sayVisit(rows[0], rows)).toBe("cleans at 60\u00a0kg");
    expect(sayVisit(rows[1], rows)).toBe("24 burpees");
    expect(sayVisit(rows[2], rows)).toBe("9 cleans");
    expect(sayVisit(rows[5], rows)).toBe("pull-ups");
    expect(sayVisit(rows[7], rows)).toBe("second sit-ups");
  });

  it("has its load said behind it only where there are several", () => {
    expect(sayWhichLoad(rows[2], rows)).toBe(" at 80\u00a0kg");
    expect(sayWhichLoad(rows[0], [rows[0], rows[1]])).toBe("");
  });
});
