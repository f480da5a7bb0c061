import { describe, expect, it } from "vitest";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { checkSources, readSources } from "../../../src/site/load-data.ts";
import { ROOT } from "../../support/run-command.ts";

const sources = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });
function told(entry: string): string {
  const file = { path: "athletes/zed.yaml", text: `name: Zed\nlevel: regular\n${entry}\n` };
  const checked = checkSources({ ...sources, own: [...sources.own, file] });
  return checked.ok ? "" : sayFaults(checked.faults).split("\n").slice(2).join("\n");
}
const WHEN = "a date with a time of day, such as `2026-11-28 18:40`";
const ONE_TIME = [
  "Question",
  "this does not say one time at which to start",
  WHEN,
  "Write the one time to plan for.",
];

describe("what nobody's profile holds", () => {
  it.each([
    [
      "heat: {wbgt: 999}",
      14,
      "999",
      "Fault",
      "999 cannot be a wet bulb globe temperature in degrees Celsius",
      "a number from -5 to 36",
      "Write a number from -5 to 36.",
    ],
    [
      "heat: {wbgt: -40}",
      14,
      "-40",
      "Fault",
      "-40 cannot be a wet bulb globe temperature in degrees Celsius",
      "a number from -5 to 36",
      "Write a number from -5 to 36.",
    ],
    [
      "heat: {wbgt: 38}",
      14,
      "38",
      "Question",
      "38 is unusual for a wet bulb globe temperature in degrees Celsius",
      "a number from -5 to 36",
      "Write `38 checked` if that is meant.",
    ],
    [
      "unbroken: {pull-up: 3000}",
      21,
      "3000",
      "Fault",
      "nobody has done 3000 without a break",
      "a whole number up to 150",
      "Write a whole number up to 150.",
    ],
    [
      "unbroken: {pull-up: 200}",
      21,
      "200",
      "Question",
      "200 without a break is more than the best do",
      "a whole number up to 150",
      "Write `200 checked` if that is meant.",
    ],
    [
      "warm up: 900 min",
      10,
      "900 min",
      "Fault",
      "nobody warms up for so long or so short",
      "a time from 3 to 90 minutes",
      "Write a time from 3 to 90 minutes.",
    ],
    [
      "lifts: {snatch: {best: 60 kg, tested: 2100-01-01}}",
      39,
      "2100-01-01",
      "Fault",
      "a year lies between 1950 and 2040",
      "a date such as `2026-11-28`",
      "Write a date such as `2026-11-28`.",
    ],
    [
      "height: 0 cm",
      9,
      "0 cm",
      "Fault",
      "a length is more than nothing",
      "a height such as `170 cm`, `1.70 m` or `5'7\"`",
      "Write a number with m, km, mile, ft, in or cm, such as `500 m` or `24 in`.",
    ],
    ["starts: {tide-mill: 2026-11-26 18:40 or 19:10}", 21, "2026-11-26 18:40 or 19:10", ...ONE_TIME],
    [
      "starts: {tide-mill: between 2026-11-26 18:40 and 19:10}",
      21,
      "between 2026-11-26 18:40 and 19:10",
      ...ONE_TIME,
    ],
    ["starts: {tide-mill: not before 2026-11-26 18:40}", 21, "not before 2026-11-26 18:40", ...ONE_TIME],
    ["starts: {tide-mill: from 2026-11-26 18:40}", 21, "from 2026-11-26 18:40", ...ONE_TIME],
    [
      "starts: {tide-mill: 2026-11-26 heat 3:10}",
      21,
      "2026-11-26 heat 3:10",
      "Fault",
      "this is not a date",
      WHEN,
      "Write a date such as `2026-11-28 03:10`.",
    ],
    [
      'starts: {tide-mill: "cancelled, was 2026-11-26 18:40"}',
      21,
      '"cancelled, was 2026-11-26 18:40"',
      "Fault",
      "this is not a date",
      WHEN,
      "Write a date such as `2026-11-28 18:40`.",
    ],
  ])("is refused or asked about: %s", (entry, column, found, kind, problem, allowed, remedy) => {
    const why = kind === "Fault" ? "wrong   " : "because ";
    expect(told(entry)).toBe(`athletes/zed.yaml:3:${column}: ${kind}
  found    ${found}
  ${why} ${problem}
  allowed  ${allowed}
  to do    ${remedy}`);
  });

  it.each([
    ["RX+", "women", "sex: female"],
    ["40-44", undefined, "habits: [starts too fast]"],
    ["F", "women", "habits: [starts too fast]"],
    ["M35", "men", "habits: [starts too fast]"],
  ])("is a division no workout has: %s", (division, nearest, more) => {
    expect(told(`division: ${division}\n${more}`)).toBe(`athletes/zed.yaml:3:11: Question
  found    ${division}
  because  no workout has a division of this name
  allowed  men, women, masters men
${nearest === undefined ? "" : `  nearest  ${nearest}\n`}  to do    ${nearest === undefined ? "Write one of the divisions allowed." : `Write \`${nearest}\`.`}`);
  });

  it("is a name that nobody can see, or one from another encoding", () => {
    expect(told('share name: "\\u200B\\u3164"')).toBe(`athletes/zed.yaml:3:13: Fault
  found    "\\u200B\\u3164"
  wrong    nothing of the name can be seen
  allowed  a name in any script
  to do    Write the name.`);
    expect(told("share name: JosÃ©")).toBe(`athletes/zed.yaml:3:13: Question
  found    JosÃ©
  because  the name comes from another encoding of letters
  allowed  a name in any script
  nearest  José
  to do    Write \`José\`, and save tables as UTF-8.`);
  });

  it.each(["heat: {wbgt: 38 checked}", "unbroken: {pull-up: 200 checked}", "warm up: 100 min checked"])(
    "may be rare and said to be right: %s",
    (entry) => {
      expect(told(entry)).toBe("");
    },
  );
});
