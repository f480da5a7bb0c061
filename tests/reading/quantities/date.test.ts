import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { takeDateOff } from "../../../src/reading/quantities/date-behind.ts";
import { readDate, type DateOrder } from "../../../src/reading/quantities/date.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string, order?: DateOrder): string => tellReading(readDate(text, order));
const ONCE =
  "Or say once for all files, in content/settings.yaml, `dates: day first` or `dates: month first`.";

describe("a date", () => {
  it.each([
    ["2024-04-03", "2024-04-03"],
    ["2024-4-3", "2024-04-03"],
    ["20240403", "2024-04-03"],
    ["2024/04/03", "2024-04-03"],
    ["2024-04-03T10:00", "2024-04-03"],
    ["3. April 24", "2024-04-03"],
    ["April 3, 2024", "2024-04-03"],
    ["3rd of April 2024", "2024-04-03"],
    ["Wed 3 Apr 2024", "2024-04-03"],
    ["1 décembre 2025", "2025-12-01"],
    ["3. März 2026", "2026-03-03"],
    ["2026 Nov 5", "2026-11-05"],
  ])("is taken from %j as %s", (text, date) => {
    expect(tell(text)).toBe(`takes ${date}`);
  });

  it.each([
    // day 45385 of spreadsheets, counted from 1899-12-30
    ["45385", "2024-04-03 (a spreadsheet's number of a day; read as 2024-04-03)"],
    ["25/11/2026", "2026-11-25 (read as 2026-11-25)"],
    ["11/25/2026", "2026-11-25 (read as 2026-11-25)"],
    ["45385.75", "2024-04-03 (a spreadsheet's number of a day; read as 2024-04-03)"],
    ["04/2024", "2024-04-15 (a month without a day; read as the middle of April 2024)"],
    ["2024-04", "2024-04-15 (a month without a day; read as the middle of April 2024)"],
    ["Jan 2026", "2026-01-15 (a month without a day; read as the middle of January 2026)"],
  ])("is taken from %j and told", (text, told) => {
    expect(tell(text)).toBe(`takes ${told}`);
  });

  it.each([
    [
      "3/4/24",
      `day and month can be read in either order | Write \`2024-04-03\` or \`2024-03-04\`, whichever is meant. ${ONCE}`,
    ],
    [
      "04.03.2024",
      `day and month can be read in either order | Write \`2024-03-04\` or \`2024-04-03\`, whichever is meant. ${ONCE}`,
    ],
    ["Jan", "the year is missing | Write the date with its year, such as `2026-01-15`."],
    ["12/1", "the year is missing | Write the date with its year, such as `2026-01-15`."],
    ["2026", "the month is missing | Write `2026-07-01` if that is meant."],
    ["Mar 24", "the number may be the year or the day | Write `2024-03` if that is meant."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it("needs no question once the order is known", () => {
    expect(tell("3/4/24", "day-first")).toBe("takes 2024-04-03 (read as 2024-04-03)");
    expect(tell("3/4/24", "month-first")).toBe("takes 2024-03-04 (read as 2024-03-04)");
    expect(tell("4/4/24")).toBe("takes 2024-04-04 (read as 2024-04-04)");
  });

  it.each([
    ["2026-02-30", "there is no such day"],
    ["31/31/2026", "there is no such day"],
    ["1850-01-01", "a year lies between 1950 and 2040"],
    ["yesterday", "this is not a date"],
    ["", "this is not a date"],
  ])("is refused in %j", (text, problem) => {
    expect(tell(text)).toBe(`refuses: ${problem} | Write a date such as \`2026-11-28\`.`);
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readDate(text).ok === "boolean"));
  });
});

describe("a date behind a result", () => {
  it.each([
    ["110 kg (2026-09-01)", "110 kg", "takes 2026-09-01"],
    ["110 kg, tested 2026-09-01", "110 kg", "takes 2026-09-01"],
    ["110 kg on 3 April 2026", "110 kg", "takes 2026-04-03"],
    ["110 kg 2026-09-01", "110 kg", "takes 2026-09-01"],
    [
      "110 kg Jan 2025",
      "110 kg",
      "takes 2025-01-15 (a month without a day; read as the middle of January 2025)",
    ],
    [
      "110 kg 12/2023",
      "110 kg",
      "takes 2023-12-15 (a month without a day; read as the middle of December 2023)",
    ],
    ["PR 100 (2019)", "PR 100", "takes 2019-07-01 (a year without a day; read as the middle of 2019)"],
    [
      "7:05.4 (Jan)",
      "7:05.4",
      "asks: the year is missing | Write the date with its year, such as `2026-01-15`.",
    ],
  ])("is parted from %j", (text, core, date) => {
    const parted = takeDateOff(text);
    expect(parted.core).toBe(core);
    expect(parted.date && tellReading(parted.date)).toBe(date);
  });

  it.each(["82,5 kg", "110 kg (5RM)", "row 2000 m in 7:05", "110 kg (heavy)"])(
    "is not seen in %j",
    (text) => {
      expect(takeDateOff(text)).toEqual({ core: text });
    },
  );
});
