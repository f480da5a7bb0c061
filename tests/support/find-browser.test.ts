import { expect, test } from "vitest";
import { findBrowser } from "./find-browser.ts";

test("a browser that is named and not there is told with the remedy", () => {
  expect(() => findBrowser({ CHROMIUM: "/no/such/chromium" })).toThrow(
    new Error(
      "There is no browser at /no/such/chromium. Install Chromium or Chrome, or say where it is: CHROMIUM=/path/to/chromium",
    ),
  );
});
