import { expect, test } from "vitest";
import { isShownOpenly } from "../../src/site/shown-openly.ts";

test("pages are locked unless the command for developing says otherwise, whatever mode a shell is set to", () => {
  expect(isShownOpenly({})).toBe(false);
  expect(isShownOpenly({ NODE_ENV: "development", MODE: "test" })).toBe(false);
  expect(isShownOpenly({ RIGSHEET_SHOWN_OPENLY: "" })).toBe(false);
  expect(isShownOpenly({ RIGSHEET_SHOWN_OPENLY: "yes" })).toBe(true);
});
