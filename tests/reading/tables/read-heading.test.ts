import { expect, it } from "vitest";
import { readHeading } from "../../../src/reading/tables/read-heading.ts";
import { tableContext } from "../../support/table-verdicts.ts";

// Headings of sheets that coaches sent, and what a coach takes them for.
it.each([
  ["Burpees in 7 min", { kind: "effort", before: "", behind: " burpee in 7:00" }],
  ["Muscle-ups (ring)", { kind: "unbroken", movement: "ring muscle-up" }],
  ["Squat (front) kg", { kind: "lift", movement: "front squat", unit: "kg" }],
  ["Max UB T2B", { kind: "unbroken", movement: "toes-to-bar" }],
  ["5k row", { kind: "effort", before: "5k row in ", behind: "" }],
  ["1RM Clean (lbs)", { kind: "lift", movement: "clean", unit: "lb" }],
  ["BW", { kind: "entry", entry: "body mass" }],
  ["Snatch %", { kind: "passed over", why: "a goal or a share is no result" }],
  ["Age group", { kind: "entry", entry: "division" }],
  ["Tel", { kind: "passed over", why: "how to reach somebody is no part of a plan" }],
  ["Injuries?", { kind: "entry", entry: "limits" }],
  [
    "Lane",
    {
      kind: "passed over",
      why: "the number of a heat or a lane says no start time; that stands under the workout's title and `start`",
    },
  ],
  [
    "Start",
    { kind: "unclear", why: "the heading does not say of which workout", proposals: ["Mill Race start"] },
  ],
  ["FT", { kind: "unclear", why: "the heading says nothing that is known", proposals: [] }],
])("%s", (heading, meaning) => {
  expect(readHeading(heading, tableContext)).toEqual(meaning);
});
