import { expect, it } from "vitest";
import { sayGym } from "../../src/wording/gym-name.ts";

it("a gym is called by its name, and a usual one where none is known", () => {
  expect(sayGym({ name: "Kestrel Yard" })).toBe("Kestrel Yard");
  expect(sayGym({})).toBe("a usual gym");
});
