import { expect, it } from "vitest";
import { readPort } from "../../src/cli/command.ts";

it("a port is a whole number, 0 for any free one", () => {
  expect([readPort("4321"), readPort("0"), readPort("65535")]).toEqual([4321, 0, 65_535]);
});

it.each(["abc", "-1", "80.5", "65536", "", "1e3", " 80"])(
  "a port of %j is refused in plain words",
  (written) => {
    expect(() => readPort(written)).toThrow(
      `The port is "${written}"; write a whole number from 1 to 65535, such as --port 4321.`,
    );
  },
);
