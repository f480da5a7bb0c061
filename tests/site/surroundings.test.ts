import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readSurroundings } from "../../src/site/surroundings.ts";

const read = (environment: Record<string, string>) => readSurroundings("/tool", environment, "2026-11-25");

describe("the surroundings", () => {
  it("are the tool's own folder, the top of a host, everybody and today where nothing is said", () => {
    expect(read({})).toEqual({
      root: resolve("/tool"),
      dataFolder: resolve("/tool"),
      base: "/",
      audience: "everyone",
      date: "2026-11-25",
    });
    expect(read({ RIGSHEET_DATA: "", RIGSHEET_BASE: "", RIGSHEET_SITE: "", RIGSHEET_DATE: "" })).toEqual(
      read({}),
    );
  });

  it("are what the environment says", () => {
    expect(
      read({
        RIGSHEET_DATA: "/coach",
        RIGSHEET_BASE: "gym/briefs",
        RIGSHEET_SITE: "https://example.org/",
        RIGSHEET_AUDIENCE: "gym",
        RIGSHEET_DATE: "2028-02-29",
        RIGSHEET_SECRET: "x",
      }),
    ).toMatchObject({
      dataFolder: resolve("/coach"),
      base: "/gym/briefs/",
      origin: "https://example.org",
      audience: "gym",
      date: "2028-02-29",
      secret: "x",
    });
  });

  it.each([
    [
      { RIGSHEET_BASE: "https://example.org/gym" },
      'RIGSHEET_BASE is "https://example.org/gym"; it is only the path on the host, such as /gym/. The host itself goes into RIGSHEET_SITE.',
    ],
    [
      { RIGSHEET_SITE: "https://example.org/gym" },
      'RIGSHEET_SITE is "https://example.org/gym"; write where the site stands without a path, such as https://example.org. A path goes into RIGSHEET_BASE.',
    ],
    [
      { RIGSHEET_SITE: "example.org" },
      'RIGSHEET_SITE is "example.org"; write where the site stands without a path, such as https://example.org. A path goes into RIGSHEET_BASE.',
    ],
    [{ RIGSHEET_AUDIENCE: "members" }, 'The audience is "members"; it can be everyone or gym.'],
    [
      { RIGSHEET_DATE: "2027-02-29" },
      'The date is "2027-02-29"; write a day of the calendar as year-month-day, such as 2026-11-25.',
    ],
    [
      { RIGSHEET_DATE: "25.11.2026" },
      'The date is "25.11.2026"; write a day of the calendar as year-month-day, such as 2026-11-25.',
    ],
  ])("refuse %j", (environment, message) => {
    expect(() => read(environment as Record<string, string>)).toThrow(new Error(message));
  });
});
