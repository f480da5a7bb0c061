import { describe, expect, it } from "vitest";
import { athleteReader } from "../../src/reading/read-athlete.ts";
import { readField } from "../../src/reading/read-field.ts";
import { answerWord } from "../../src/reading/quantities/answer-word.ts";
import { readMass } from "../../src/reading/quantities/mass.ts";
import { contextForTests } from "../support/athlete-context.ts";

/**
 * How athlete data comes in from sheets and notes, and what a careful person makes of it: taken, asked about or refused.
 * The cells and the verdicts were collected from public results, self-reported profiles and training logs before the
 * reader was written; names are invented.
 */
const readFile = athleteReader(contextForTests);

const verdict = (entry: string): "accept" | "ask" | "refuse" => {
  const text = `name: Ada\nlevel: regular\n${entry}`;
  const result = readFile({ path: "athletes/ada.yaml", text });
  if (result.ok) return "accept";
  return result.faults.some((fault) => fault.severity === "fault") ? "refuse" : "ask";
};
/** What to do, as it is told, put together. */
const remedies = (entry: string): string => {
  const result = readFile({ path: "athletes/ada.yaml", text: `name: Ada\nlevel: regular\n${entry}` });
  return (result.ok ? result.notices : result.faults).map((fault) => fault.remedy).join(" ");
};
const lift = (name: string, cell: string): string => `lifts:\n  ${name}: "${cell.replaceAll('"', '\\"')}"`;
const cell = (name: string, text: string): string => `${name}: '${text.replaceAll("'", "''")}'`;

describe("data as it comes in", () => {
  it.each([
    ["a pound sign", lift("back squat", "315#"), "accept"],
    ["a label and no unit", lift("clean and jerk", "1RM: 102,5"), "ask"],
    ["a label, the unit in the heading", lift("clean and jerk (kg)", "1RM: 102,5"), "accept"],
    ["a bare 180 among two units", lift("deadlift", "180"), "ask"],
    ["405 lb", lift("deadlift", "405 lb"), "accept"],
    ["190kg", lift("deadlift", "190kg"), "accept"],
    ["a bare 395", lift("deadlift", "395"), "ask"],
    ["182.5 Kg", lift("deadlift", "182.5 Kg"), "accept"],
    ["body weight and 20, no unit", lift("pull-up 3RM", "BW+20"), "ask"],
    ["body weight and 20 kg", lift("pull-up 3RM", "BW+20 kg"), "accept"],
    ["5'7\"", cell("height", "5'7\""), "accept"],
    ["5’ 7”", cell("height", "5’ 7”"), "accept"],
    ["5ft7", cell("height", "5ft7"), "accept"],
    ["5-7", cell("height", "5-7"), "ask"],
    ["67", cell("height", "67"), "ask"],
    ["1,70", cell("height", "1,70"), "accept"],
    ["511 in", cell("height", "511 in"), "ask"],
    ["510 in", cell("height", "510 in"), "ask"],
    ["176 in", cell("height", "176 in"), "ask"],
    ["5 in", cell("height", "5 in"), "refuse"],
    ["2 cm", cell("height", "2 cm"), "refuse"],
    ["83 lb", cell("body mass", "83 lb"), "ask"],
    ["175 kg", cell("body mass", "175 kg"), "ask"],
    ["6515 kg", cell("body mass", "6515 kg"), "ask"],
    ["65535 kg", cell("body mass", "65535 kg"), "refuse"],
    ["4 kg", cell("body mass", "4 kg"), "refuse"],
    ["kilograms as odd pounds", lift("snatch", "286.52000000000004 lb"), "accept"],
    ["666 lb", lift("snatch", "666 lb"), "refuse"],
    ["1000 lb", lift("snatch", "1000 lb"), "refuse"],
    ["999 lb", lift("snatch", "999 lb"), "refuse"],
    ["2225 lb", lift("snatch", "2225 lb"), "ask"],
    ["1 lb", lift("snatch", "1 lb"), "refuse"],
    ["-5 lb", lift("snatch", "-5 lb"), "refuse"],
    ["7:32", cell("efforts", "2k row 7:32"), "accept"],
    ["7.32 min", cell("efforts", "2k row 7.32 min"), "ask"],
    ["7,32", cell("efforts", "2k row 7,32"), "ask"],
    ["7m32s", cell("efforts", "2k row 7m32s"), "accept"],
    ["7'32\"", cell("efforts", "2k row 7'32\""), "accept"],
    ["several facts, a month without its year", cell("efforts", "2k row 7:05.4 (Jan), 5k ~19:50, 500 1:31"), "ask"],
    ["several facts, a month with its year", cell("efforts", "2k row 7:05.4 (Jan 2026), 5k ~19:50, 500 1:31"), "accept"],
    ["0:59:00 for 400 m", cell("efforts", "run 400 m in 0:59:00"), "ask"],
    ["59:00 for 400 m", cell("efforts", "run 400 m in 59:00"), "ask"],
    ["1:02 for 400 m", cell("efforts", "run 400 m in 1:02"), "accept"],
    ["a range", lift("front squat", "90-95"), "ask"],
    ["a range with unit", lift("front squat", "90-95 kg"), "ask"],
    ["x", "unbroken: {ring muscle-up: x}", "ask"],
    ["no MU", "unbroken: {ring muscle-up: no MU}", "accept"],
    ["5x85", lift("back squat", "5x85"), "ask"],
    ["150KGx5@8", lift("squat", "150KGx5@8"), "accept"],
    ["225 5x5", lift("squat", "225 5x5"), "ask"],
    ["115: 6, 5, 5 @8", lift("thruster", "115: 6, 5, 5 @8"), "ask"],
    ["3x5@80%", lift("squat", "3x5@80%"), "refuse"],
    ["3/4/24", "lifts: {snatch: {best: 80 kg, tested: 3/4/24}}", "ask"],
    ["2024-04-03", "lifts: {snatch: {best: 80 kg, tested: 2024-04-03}}", "accept"],
    ["3. April 24", "lifts: {snatch: {best: 80 kg, tested: 3. April 24}}", "accept"],
    ["04.03.2024", "lifts: {snatch: {best: 80 kg, tested: 04.03.2024}}", "ask"],
    ["45385", "lifts: {snatch: {best: 80 kg, tested: 45385}}", "accept"],
    ["C&J", lift("C&J", "80 kg"), "accept"],
    ["c+j", lift("c+j", "80 kg"), "accept"],
    ["CJ (kg)", lift("CJ (kg)", "80"), "accept"],
    ["Clean & Jerk", lift("Clean & Jerk", "80 kg"), "accept"],
    ["clean and jerk 1RM", lift("clean and jerk 1RM", "80 kg"), "accept"],
    ["candj", lift("candj", "80 kg"), "accept"],
    ["épaulé-jeté", lift("épaulé-jeté", "80 kg"), "accept"],
    ["arraché+", lift("arraché+", "80 kg"), "ask"],
    ["G2O", lift("G2O", "80 kg"), "ask"],
    ["an injury in a note", cell("note", "L shoulder cranky since Oct, no kipping for now!! cleared by physio 12/1 for strict only. RPE up"), "ask"],
    ["an injury among the limits", cell("limits", "L shoulder cranky since Oct, no kipping for now!!"), "ask"],
  ] as const)("%s: %s is %s", (_case, entry, expected) => {
    expect(verdict(entry)).toBe(expected);
  });

  it.each([
    ["a height without separator", cell("height", "511 in"), "5'11\""],
    ["inches that are centimetres", cell("height", "176 in"), "176 cm"],
    ["pounds that are kilograms", cell("body mass", "83 lb"), "83 kg"],
    ["kilograms that are pounds", cell("body mass", "175 kg"), "175 lb"],
    ["a lost decimal sign", cell("body mass", "6515 kg"), "65.15 kg"],
    ["a slip in a lift", lift("snatch", "2225 lb"), "222.5 lb` or `225 lb"],
    ["minutes typed as hours", cell("efforts", "run 400 m in 0:59:00"), "400 m run in 0:59"],
    ["both readings of 7.32", cell("efforts", "2k row 7.32 min"), "7:32` or `7:19.2"],
    ["the lower end of a range", lift("front squat", "90-95 kg"), "~90 kg"],
    ["both orders of a date", "lifts: {snatch: {best: 80 kg, tested: 3/4/24}}", "2024-04-03` or `2024-03-04"],
    ["kilograms as odd pounds", lift("snatch", "264.48 lb"), "120 kg"],
  ])("%s: %s proposes %s", (_case, entry, proposal) => {
    expect(remedies(entry)).toContain(`\`${proposal}\``);
  });

  it("keeps not known, cannot and unclear apart", () => {
    const words = ["n/a", "-", "--", "?", "", "none", "0", "no MU", "x"].map(answerWord);
    expect(words).toEqual(["unknown", "unknown", "unknown", "unknown", "unknown", "cannot", "cannot", "cannot", "unclear"]);
  });

  it("does not shorten 1,800 g silently", () => {
    expect(readMass("1,800 g")).toMatchObject({ ok: false, severity: "question", remedy: "Write `1800 g` or `1.8 g`, whichever is meant." });
  });

  it("reads a table with semicolons, decimal commas and an invisible mark in front", () => {
    const text = "\uFEFFload kg;count\r\n61,5;1\r\n82,5;2\r\n";
    expect(readField({ path: "content/fields/x.csv", text })).toMatchObject({ ok: true });
  });

  it("leaves scaled results out of the prescribed, and 0 out of both", () => {
    const text = "score\n16:14\n203 reps - s\n5:58 - s\n210 reps\n0\n";
    expect(readField({ path: "content/fields/x.csv", text })).toMatchObject({
      ok: true,
      value: [{ finished: [{ value: 974 }], capped: [{ value: 210 }], leftOut: [{ rows: 2 }, { rows: 1 }] }],
    });
  });

  it("asks once whether the number at the cap is left or done", () => {
    const text = "event 3\nCAP+28\nCAP + 28\n14:46\n12:00+28\nC+28\n";
    expect(readField({ path: "content/fields/x.csv", text })).toMatchObject({ ok: false, faults: [{ severity: "question" }] });
  });
});
