import { describe, expect, it } from "vitest";
import { athleteReader } from "../../../src/reading/read-athlete.ts";
import { contextForTests } from "../../support/athlete-context.ts";
import { lines, tellFaults } from "../../support/tell-faults.ts";

const readFile = athleteReader(contextForTests);
const read = (...entries: readonly string[]) =>
  readFile({ path: "athletes/ada.yaml", text: ["name: Ada", "level: new", ...entries].join("\n") });
const tell = (...entries: readonly string[]) => tellFaults(read(...entries));

const STRESSES =
  "overhead, kipping, impact, deep knee bend, loaded hinge, hard grip, bent wrist, lying on back, lying on front, upside down, maximal lift, breath holding, fall risk, high rep pulling";
const askToAvoid = (place: string, found: string, proposal: string): string =>
  lines(
    `${place}: Question`,
    `found    ${found}`,
    "because  words alone leave nothing out of a plan, and a plan must not go against them",
    `allowed  \`avoid\` with any of ${STRESSES}, or \`without\` with names of movements`,
    `to do    Write \`${proposal}\`, with \`avoid: none\` if nothing is to be left out.`,
  );

describe("a limit", () => {
  it.each([
    ["pregnancy", { condition: "pregnancy", avoid: [], without: [] }],
    ["high blood pressure", { condition: "high-blood-pressure", avoid: [], without: [] }],
    ["no kipping", { avoid: ["kipping"], without: [] }],
    ["{joint: knee, avoid: none, note: sore}", { joint: "knee", avoid: [], without: [], note: "sore" }],
    ["{avoid: [overhead, deep knee bend]}", { avoid: ["overhead", "deep-knee-bend"], without: [] }],
    [
      "{joint: shoulder, without: [ring muscle-up, pull-ups]}",
      { joint: "shoulder", avoid: [], without: ["ring-muscle-up", "pull-up"] },
    ],
    [
      "{condition: asthma, note: inhaler before}",
      { condition: "asthma", avoid: [], without: [], note: "inhaler before" },
    ],
  ])("is taken from %j", (text, limit) => {
    expect(read(`limits: ${text}`)).toMatchObject({ ok: true, value: { limits: [limit] } });
  });

  it("is none where the file says so", () => {
    expect(read("limits: none")).toMatchObject({ ok: true, value: { limits: [] } });
  });

  it("in free words is asked about, with a reading of them to correct, and never dropped", () => {
    const note =
      "L shoulder cranky since Oct, no kipping for now!! cleared by physio 12/1 for strict only. RPE up";
    expect(tell(`limits: ${note}`)).toEqual([
      askToAvoid("3:9", note, `{joint: shoulder, avoid: [kipping], note: "${note}"}`),
    ]);
    expect(tell("limits:", "  - knee sore after runs", "  - rode too much")).toEqual([
      askToAvoid(
        "4:5",
        "knee sore after runs",
        '{joint: knee, avoid: [impact], note: "knee sore after runs"}',
      ),
      askToAvoid("5:5", "rode too much", '{avoid: [...], note: "rode too much"}'),
    ]);
  });

  it("with a note that names a stress, but nothing to avoid, is asked about", () => {
    expect(tell('limits: {condition: asthma, note: "inhaler, no running"}')).toEqual([
      askToAvoid(
        "3:9",
        '{condition: asthma, note: "inhaler, no running"}',
        '{condition: asthma, avoid: [impact], note: "inhaler, no running"}',
      ),
    ]);
    expect(tell("limits: {joint: knee, note: sore}")).toEqual([
      askToAvoid("3:9", "{joint: knee, note: sore}", '{joint: knee, avoid: [...], note: "sore"}'),
    ]);
  });

  it("proposes the listed word for what people say", () => {
    expect(tell("limits: {condition: pregnant}")[0]).toContain(
      "\n  nearest  pregnancy\n  to do    Write `pregnancy`.",
    );
    expect(tell("limits: {avoid: jumping}")[0]).toContain("\n  nearest  impact\n  to do    Write `impact`.");
    expect(tell("limits: {joint: sholder}")[0]).toContain(
      "\n  nearest  shoulder\n  to do    Write `shoulder`.",
    );
  });
});

describe("a note", () => {
  const NOTE = "L shoulder cranky since Oct, no kipping for now!! cleared by physio 12/1 for strict only";

  it("that tells of harm is asked about while no limit speaks of it", () => {
    expect(tell(`note: ${NOTE}`)).toEqual([
      lines(
        "3:7: Question",
        `found    ${NOTE}`,
        "because  the note speaks of something that may limit training (shoulder, kipping, advised by doctor), but a note changes no plan",
        "allowed  an entry under `limits` that says what to keep away from, or `limits: none`",
        "to do    Add `limits: [{joint: shoulder, avoid: [kipping]}]`, corrected as needed, or `limits: none` if nothing is to be left out.",
      ),
    ]);
  });

  it.each(["limits: none", "limits: {joint: shoulder, avoid: none}", "limits: no kipping"])(
    "is kept beside %j",
    (limits) => {
      expect(read(`note: ${NOTE}`, limits)).toMatchObject({ ok: true, value: { note: NOTE } });
    },
  );

  it.each([
    "No pressure on the jumps, enjoy the squats",
    "Bring the belt for the deadlifts",
    "Back to back heats, eat in between",
    "Hands off the bar early, rest 10 s",
  ])("of other things is no question: %s", (note) => {
    expect(read(`note: ${note}`)).toMatchObject({ ok: true, value: { note } });
  });

  it.each([
    "Knee hurts after running",
    "doctor said no max lifts",
    "wrist surgery in May",
    "is pregnant, second trimester",
    "Schulter zwickt, kein Kipping",
    "épaule douloureuse, pas de kipping",
    "no heavy squats for now",
  ])("of harm is a question: %s", (note) => {
    expect(read(`note: ${note}`)).toMatchObject({ ok: false, faults: [{ severity: "question" }] });
  });
});
