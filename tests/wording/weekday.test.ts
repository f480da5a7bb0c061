import { expect, it } from "vitest";
import { sayWeekday } from "../../src/wording/weekday.ts";

it("names the day of a date and of a moment", () => {
  // From printed calendars of 2026 and of the leap year 2028.
  expect(sayWeekday("2026-11-27")).toBe("Friday, 27 November");
  expect(sayWeekday("2026-03-01T18:30")).toBe("Sunday, 1 March");
  expect(sayWeekday("2028-02-29")).toBe("Tuesday, 29 February");
  expect(sayWeekday("2026-01-01")).toBe("Thursday, 1 January");
  expect(sayWeekday("soon")).toBe("soon");
});
