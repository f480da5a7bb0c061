import { describe, expect, it } from "vitest";
import type { Athlete, Limit, LiftResult, MaxEffort } from "../../../src/models/athlete.ts";
import { kilograms, seconds } from "../../../src/models/quantity.ts";
import type { Condition, Joint, Stress } from "../../../src/models/vocabulary.ts";
import { sayWhyLeftOut } from "../../../src/wording/left-out.ts";
import { aroundFor, type AroundOptions, marksOf } from "../../support/around-for.ts";
import { athlete, type PartSketch } from "../../support/hand-made.ts";
import { kiloGym } from "../../support/sample-gym.ts";
import { forbiddenWordsIn } from "../../support/tone.ts";

const place = { file: "hand-made.yaml", line: 1, column: 1 };
const lift = (movement: string, value: number): LiftResult => ({
  movement,
  load: { value, unit: "kg" },
  reps: 1,
  inReserve: 0,
  date: "2026-11-10",
  approximate: false,
});
const effort = (movement: string, amount: number, date = "2026-11-10"): MaxEffort => ({
  movement,
  amount,
  unit: "reps",
  time: seconds(120),
  date,
  approximate: false,
  place,
});
const lifts = [
  lift("back-squat", 110),
  lift("clean-and-jerk", 80),
  lift("snatch", 62),
  lift("deadlift", 140),
];
const states = (condition: Condition): { readonly limits: readonly Limit[] } => ({
  limits: [{ condition, avoid: [], without: [] }],
});
const limited = (joint: Joint, ...avoid: readonly Stress[]): { readonly limits: readonly Limit[] } => ({
  limits: [{ joint, avoid, without: [] }],
});
const starts = (...times: readonly string[]): { readonly starts: Athlete["starts"] } => ({
  starts: times.map((at) => ({ workout: "x", at })),
});

const max = (movement: string): PartSketch => ({
  clock: { kind: "max-load", order: "as-written", length: { kind: "for", time: seconds(480) } },
  lines: [{ movement }],
});
const rounds = (count: number, ...lines: PartSketch["lines"]): PartSketch => ({ rounds: count, lines });
const row = rounds(1, { movement: "row", amount: 2000, unit: "metres" });
const pulls = rounds(5, { movement: "pull-up", amount: 20 }, { movement: "air-squat", amount: 20 });
const few = rounds(1, { movement: "pull-up", amount: 12 });
const metcon = rounds(
  4,
  { movement: "thruster", amount: 12, kilograms: 30 },
  { movement: "burpee", amount: 10 },
);
const jumps = rounds(5, { movement: "box-jump-over", amount: 12 }, { movement: "double-under", amount: 40 });
const wall = rounds(
  4,
  { movement: "handstand-push-up", amount: 8 },
  { movement: "kettlebell-swing", amount: 15 },
);

type Row = {
  readonly who: string;
  readonly given?: Partial<Athlete>;
  readonly does: readonly PartSketch[];
  readonly options?: AroundOptions;
  readonly has?: readonly string[];
  readonly hasNot?: readonly string[];
};

const bumpers = { ...kiloGym, equipment: ["bumper plates"] };
const bare = { ...kiloGym, equipment: [] };
const pins = { ...kiloGym, equipment: ["bumper plates", "pins"] };
const withErgs = { ...kiloGym, ergs: { row: 2, "bike-erg": 1 } };

const table: readonly Row[] = [
  // Heat: Armstrong et al. 2007, Med Sci Sports Exerc 39(3):556-572, heat table (PMC5094838, table 3)
  {
    who: "27.0 C, not used to it",
    given: { heat: { wbgt: 27, acclimatised: false } },
    does: [row],
    has: ["caution:heat-under-28-not-used-to-it", "warm-up:short-in-the-heat", "after:cool-in-the-shade"],
    hasNot: ["withheld:workout"],
  },
  {
    who: "27.0 C, used to it",
    given: { heat: { wbgt: 27, acclimatised: true } },
    does: [row],
    has: ["caution:heat-under-28"],
    hasNot: ["caution:heat-under-28-not-used-to-it"],
  },
  {
    who: "29.0 C, not used to it",
    given: { heat: { wbgt: 29, acclimatised: false } },
    does: [row],
    has: ["caution:heat-28-not-used-to-it", "warm-up:rest-cool"],
    hasNot: ["withheld:workout", "warm-up:rest-warm"],
  },
  {
    who: "29.0 C, used to it",
    given: { heat: { wbgt: 29, acclimatised: true } },
    does: [row],
    has: ["caution:heat-28"],
    hasNot: ["withheld:workout"],
  },
  {
    who: "31.0 C, not used to it",
    given: { heat: { wbgt: 31, acclimatised: false } },
    does: [row],
    has: ["caution:heat-30-not-used-to-it", "withheld:workout"],
    hasNot: ["warm-up:rehearsal", "after:rest"],
  },
  {
    who: "31.0 C, used to it",
    given: { heat: { wbgt: 31, acclimatised: true } },
    does: [row],
    has: ["caution:heat-30"],
    hasNot: ["withheld:workout"],
  },
  {
    who: "33.0 C, not used to it",
    given: { heat: { wbgt: 33, acclimatised: false } },
    does: [row],
    has: ["caution:heat-over-32", "withheld:workout"],
  },
  {
    who: "33.0 C, used to it",
    given: { heat: { wbgt: 33, acclimatised: true } },
    does: [row],
    has: ["caution:heat-over-32", "withheld:workout"],
  },
  {
    who: "a cool day",
    given: { heat: { wbgt: 15, acclimatised: false } },
    does: [row],
    has: ["warm-up:rest-warm"],
    hasNot: ["caution:heat-under-28-not-used-to-it", "after:cool-in-the-shade"],
  },
  {
    who: "earlier trouble in the heat, on a warm day",
    given: { heat: { wbgt: 25, acclimatised: true }, ...states("past-heat-illness") },
    does: [row],
    has: ["caution:heat-illness-before"],
  },
  {
    who: "earlier trouble in the heat, no heat stated",
    given: states("past-heat-illness"),
    does: [row],
    hasNot: ["caution:heat-illness-before"],
  },
  // Volume of pulling
  {
    who: "a hundred pull-ups, nothing known of before",
    does: [pulls],
    has: ["caution:unaccustomed-pulling", "caution:hands"],
  },
  {
    who: "a hundred pull-ups, used to ninety",
    given: { efforts: [effort("pull-up", 90)] },
    does: [pulls],
    has: ["caution:unaccustomed-pulling"],
  },
  {
    who: "twelve pull-ups",
    does: [few],
    hasNot: ["caution:unaccustomed-pulling", "caution:hands", "caution:back-after-a-break"],
  },
  {
    who: "forty pull-ups, used to twenty",
    given: { efforts: [effort("pull-up", 20)] },
    does: [rounds(4, { movement: "pull-up", amount: 10 })],
    has: ["caution:unaccustomed-pulling"],
  },
  {
    who: "forty pull-ups, used to forty",
    given: { efforts: [effort("pull-up", 40)] },
    does: [rounds(4, { movement: "pull-up", amount: 10 })],
    hasNot: ["caution:unaccustomed-pulling"],
  },
  {
    who: "fifty pull-ups, last done five weeks ago",
    given: { efforts: [effort("pull-up", 50, "2026-10-20")] },
    does: [rounds(5, { movement: "pull-up", amount: 10 })],
    has: ["caution:back-after-a-break"],
  },
  {
    who: "breakdown of muscle in the past",
    given: states("past-rhabdomyolysis"),
    does: [few],
    has: ["caution:past-rhabdomyolysis"],
    hasNot: ["withheld:pull-up"],
  },
  {
    who: "a hundred burpees",
    does: [rounds(1, { movement: "burpee", amount: 100 })],
    hasNot: ["caution:unaccustomed-pulling"],
  },
  // Heavy lifts
  {
    who: "a squat for load, no pins",
    given: { lifts },
    does: [max("back-squat")],
    options: { gym: bumpers },
    has: ["caution:heavy-without-catch", "caution:two-misses", "caution:not-alone"],
    hasNot: ["caution:heavy-without-bumpers"],
  },
  {
    who: "a squat for load, pins",
    given: { lifts },
    does: [max("back-squat")],
    options: { gym: pins },
    has: ["caution:two-misses", "caution:heavy-without-catch"],
  },
  {
    who: "a clean and jerk for load, no bumpers",
    given: { lifts },
    does: [max("clean-and-jerk")],
    options: { gym: bare },
    has: ["caution:heavy-without-bumpers"],
    hasNot: ["caution:heavy-without-catch"],
  },
  {
    who: "light squats in a bare gym",
    given: { lifts },
    does: [rounds(3, { movement: "back-squat", amount: 15, kilograms: 40 })],
    options: { gym: bare },
    hasNot: ["caution:heavy-without-catch", "caution:heavy-without-bumpers", "caution:two-misses"],
  },
  {
    who: "squats near the best in a bare gym",
    given: { lifts },
    does: [rounds(1, { movement: "back-squat", amount: 3, kilograms: 100 })],
    options: { gym: bare },
    has: ["caution:heavy-without-catch", "caution:heavy-without-bumpers"],
    hasNot: ["caution:two-misses"],
  },
  {
    who: "only rowing",
    does: [row],
    hasNot: [
      "caution:two-misses",
      "caution:heavy-without-bumpers",
      "caution:falls",
      "warm-up:build-the-lift",
    ],
  },
  // Age
  {
    who: "sixteen",
    given: { birthYear: 2010, lifts },
    does: [metcon, max("clean-and-jerk")],
    has: ["caution:under-18", "caution:no-stimulants", "warm-up:build-the-lift"],
    hasNot: ["withheld:b", "caution:under-13"],
  },
  {
    who: "twelve",
    given: { birthYear: 2014, lifts },
    does: [metcon, max("clean-and-jerk")],
    has: ["caution:under-13", "withheld:b"],
    hasNot: ["warm-up:build-the-lift"],
  },
  {
    who: "twelve, nothing for load",
    given: { birthYear: 2014 },
    does: [metcon],
    has: ["caution:under-18", "warm-up:rehearsal"],
    hasNot: ["withheld:a", "withheld:thruster"],
  },
  {
    who: "thirty",
    given: { birthYear: 1995 },
    does: [metcon],
    hasNot: ["caution:under-18", "caution:over-60", "caution:no-stimulants"],
  },
  {
    who: "sixty-five",
    given: { birthYear: 1960 },
    does: [metcon],
    has: ["caution:over-60", "warm-up:longer-easy"],
    hasNot: ["caution:under-18"],
  },
  // Pregnancy and after
  {
    who: "pregnant, a lift for load",
    given: { lifts, ...states("pregnancy") },
    does: [row, max("clean-and-jerk")],
    has: ["caution:pregnancy", "caution:pregnancy-stop", "caution:no-stimulants", "withheld:b"],
    hasNot: ["warm-up:build-the-lift"],
  },
  {
    who: "pregnant, burpees and thrusters",
    given: states("pregnancy"),
    does: [metcon],
    has: ["withheld:burpee", "warm-up:build-to-the-load"],
    hasNot: ["withheld:thruster"],
  },
  {
    who: "pregnant, box jumps",
    given: states("pregnancy"),
    does: [jumps],
    has: ["withheld:box-jump-over"],
    hasNot: ["withheld:double-under"],
  },
  {
    who: "pregnant, rowing only",
    given: states("pregnancy"),
    does: [row],
    has: ["caution:pregnancy"],
    hasNot: ["withheld:row", "withheld:workout", "after:coffee-you-know"],
  },
  {
    who: "pregnant, sit-ups",
    given: states("pregnancy"),
    does: [rounds(3, { movement: "sit-up", amount: 20 })],
    has: ["withheld:sit-up"],
    hasNot: ["warm-up:trunk-brace"],
  },
  {
    who: "after a birth",
    given: { lifts, ...states("after-birth") },
    does: [metcon, max("deadlift")],
    has: ["caution:after-birth", "withheld:b", "caution:no-stimulants"],
    hasNot: ["withheld:burpee"],
  },
  // Conditions
  {
    who: "a heart condition",
    given: { lifts, ...states("heart") },
    does: [metcon, max("deadlift")],
    has: ["caution:heart", "withheld:b"],
    hasNot: ["withheld:workout", "withheld:burpee"],
  },
  {
    who: "high blood pressure",
    given: { lifts, ...states("high-blood-pressure") },
    does: [max("deadlift")],
    has: ["caution:high-blood-pressure"],
    hasNot: ["withheld:a"],
  },
  {
    who: "asthma",
    given: states("asthma"),
    does: [row],
    has: ["caution:asthma"],
    hasNot: ["caution:diabetes", "withheld:workout"],
  },
  { who: "diabetes", given: states("diabetes"), does: [row], has: ["caution:diabetes"] },
  {
    who: "epilepsy, climbing",
    given: states("epilepsy"),
    does: [rounds(3, { movement: "rope-climb", amount: 3 })],
    has: ["caution:epilepsy", "withheld:rope-climb"],
  },
  {
    who: "epilepsy, rowing",
    given: states("epilepsy"),
    does: [row],
    has: ["caution:epilepsy"],
    hasNot: ["withheld:row"],
  },
  {
    who: "a hernia",
    given: { lifts, ...states("hernia") },
    does: [max("deadlift")],
    has: ["caution:hernia", "withheld:a"],
  },
  {
    who: "a concussion",
    given: states("concussion"),
    does: [row],
    has: ["caution:concussion", "withheld:workout"],
    hasNot: ["warm-up:rehearsal"],
  },
  {
    who: "ill of late",
    given: states("recent-illness"),
    does: [row],
    has: ["caution:recent-illness"],
    hasNot: ["withheld:workout"],
  },
  {
    who: "sickle cell trait",
    given: states("sickle-cell-trait"),
    does: [row],
    has: ["caution:sickle-cell-trait"],
  },
  {
    who: "advised by a doctor",
    given: states("advised-by-doctor"),
    does: [row],
    has: ["caution:doctors-advice"],
  },
  // Joints
  {
    who: "a shoulder, pull-ups, nothing to avoid",
    given: limited("shoulder"),
    does: [few],
    has: ["caution:shoulder-or-arm", "warm-up:gentle-range"],
    hasNot: ["withheld:pull-up"],
  },
  {
    who: "a shoulder, no kipping",
    given: limited("shoulder", "kipping"),
    does: [few],
    has: ["withheld:pull-up", "caution:shoulder-or-arm"],
    hasNot: ["warm-up:hang-and-swing", "warm-up:easy-reps-on-the-bar-pull-up"],
  },
  {
    who: "a shoulder, rowing",
    given: limited("shoulder", "kipping"),
    does: [row],
    has: ["warm-up:gentle-range"],
    hasNot: ["caution:shoulder-or-arm", "withheld:row"],
  },
  {
    who: "a knee, squats",
    given: limited("knee"),
    does: [metcon],
    has: ["caution:leg-joints"],
    hasNot: ["caution:back", "withheld:thruster"],
  },
  {
    who: "a knee, no jumping",
    given: limited("knee", "impact"),
    does: [jumps],
    has: ["withheld:box-jump-over", "withheld:double-under", "caution:leg-joints"],
    hasNot: ["warm-up:calf-bounces", "warm-up:low-hops"],
  },
  {
    who: "a knee that is well again",
    given: { limits: [{ joint: "knee", avoid: ["impact"], without: [], until: "2026-11-01" }] },
    does: [jumps],
    hasNot: ["withheld:box-jump-over", "caution:leg-joints"],
  },
  {
    who: "a back, deadlifts",
    given: { lifts, ...limited("back") },
    does: [rounds(3, { movement: "deadlift", amount: 10, kilograms: 80 })],
    has: ["caution:back"],
    hasNot: ["caution:leg-joints"],
  },
  {
    who: "a wrist, upside down",
    given: limited("wrist", "bent-wrist"),
    does: [wall],
    has: ["withheld:handstand-push-up"],
    hasNot: ["warm-up:wrist-rocks", "withheld:kettlebell-swing"],
  },
  { who: "a neck", given: limited("neck"), does: [row], has: ["caution:neck"] },
  {
    who: "an ankle, squats",
    given: limited("ankle"),
    does: [metcon],
    hasNot: ["warm-up:ankle-rocks"],
    has: ["warm-up:gentle-range"],
  },
  // Workout
  {
    who: "three minutes of work",
    does: [rounds(1, { movement: "burpee", amount: 50 })],
    has: ["warm-up:first-minute-ready"],
    hasNot: ["caution:long-effort"],
  },
  {
    who: "forty-five minutes of work",
    does: [rounds(30, { movement: "burpee", amount: 30 })],
    has: ["caution:long-effort"],
    hasNot: ["warm-up:first-minute-ready"],
  },
  {
    who: "stopped by a cap of twenty minutes",
    does: [
      {
        ...rounds(30, { movement: "burpee", amount: 30 }),
        clock: { kind: "for-time", cap: { kind: "for", time: seconds(1200) } },
      },
    ],
    has: ["caution:long-and-stopped"],
  },
  {
    who: "done before the cap",
    does: [
      {
        ...rounds(3, { movement: "burpee", amount: 10 }),
        clock: { kind: "for-time", cap: { kind: "for", time: seconds(1200) } },
      },
    ],
    hasNot: ["caution:long-and-stopped"],
  },
  { who: "climbing", does: [rounds(3, { movement: "rope-climb", amount: 3 })], hasNot: ["caution:box"] },
  {
    who: "handstand push-ups",
    does: [wall],
    has: ["warm-up:upper-back", "caution:upside-down"],
    hasNot: ["caution:falls"],
  },
  {
    who: "a gym with a rower",
    does: [metcon],
    options: { gym: withErgs },
    has: ["warm-up:easy-bike"],
    hasNot: ["warm-up:easy-jog"],
  },
  {
    who: "a gym without machines",
    does: [metcon],
    has: ["warm-up:easy-jog"],
    hasNot: ["warm-up:easy-bike", "warm-up:easy-row"],
  },
  // Time
  {
    who: "twenty minutes to warm up",
    given: { lifts, warmUpTime: seconds(1200) },
    does: [metcon, max("clean-and-jerk")],
    has: ["warm-up:build-the-lift", "warm-up:rest-warm"],
  },
  {
    who: "two starts a day, the second",
    given: { ...starts("2026-11-26T09:00", "2026-11-26T11:00") },
    does: [row],
    options: { at: "2026-11-26T11:00" },
    has: ["caution:again-today", "warm-up:still-warm"],
    hasNot: ["after:eat-soon"],
  },
  {
    who: "two starts a day, the first",
    given: { ...starts("2026-11-26T09:00", "2026-11-26T14:00") },
    does: [row],
    options: { at: "2026-11-26T09:00" },
    has: [
      "caution:again-today",
      "after:eat-soon",
      "after:drink-back-soon",
      "after:short-nap",
      "after:coffee-you-know",
    ],
    hasNot: ["warm-up:still-warm"],
  },
  {
    who: "the first of two, sixteen",
    given: { birthYear: 2010, ...starts("2026-11-26T09:00", "2026-11-26T14:00") },
    does: [row],
    options: { at: "2026-11-26T09:00" },
    has: ["after:eat-soon"],
    hasNot: ["after:coffee-you-know"],
  },
  {
    who: "a late start",
    does: [row],
    options: { at: "2026-11-26T20:00" },
    has: ["after:late-start"],
    hasNot: ["caution:again-today"],
  },
  {
    who: "another try planned",
    given: { lifts, retry: "planned" },
    does: [row],
    has: ["after:look-at-the-film", "after:rest"],
    hasNot: ["after:squat-touch", "after:overhead-touch"],
  },
  {
    who: "no other try",
    // A load is taken from a lift of one's own alone.
    given: { lifts: [...lifts, lift("push-press", 72)], retry: "no", trainingHours: 12 },
    does: [rounds(1, { movement: "sit-up", amount: 50 })],
    has: ["after:rest", "after:overhead-touch"],
    hasNot: ["after:look-at-the-film"],
  },
  {
    who: "a snatch may still come",
    // Who has not said how much is usual for them is given a light day.
    given: { lifts, trainingHours: 12 },
    does: [row],
    options: { mayCome: ["snatch"] },
    has: ["after:snatch-positions"],
    hasNot: ["after:rope-rhythm"],
  },
  {
    who: "a snatch may still come, nothing overhead",
    given: { lifts, ...limited("shoulder", "overhead") },
    does: [row],
    options: { mayCome: ["snatch"] },
    hasNot: ["after:snatch-positions"],
  },
  {
    who: "rope may still come, calves just worked",
    does: [jumps],
    options: { mayCome: ["double-under"] },
    hasNot: ["after:rope-rhythm"],
  },
];

describe("what a brief holds", () => {
  it("is told for sixty situations and more", () => {
    expect(table.length).toBeGreaterThanOrEqual(60);
    expect(new Set(table.map((each) => each.who)).size).toBe(table.length);
  });

  it.each(table.map((each) => [each.who, each] as const))("%s", (_who, each) => {
    const marks = marksOf(aroundFor(athlete(each.given), each.does, each.options));
    expect(marks).toEqual(expect.arrayContaining([...(each.has ?? [])]));
    expect(marks.filter((mark) => each.hasNot?.includes(mark) === true)).toEqual([]);
  });

  it.each(table.map((each) => [each.who, each] as const))(
    "%s: stop signs, what prevails, rest, calm words",
    (_who, each) => {
      const around = aroundFor(athlete(each.given), each.does, each.options);
      const stops = around.cautions
        .filter((caution) => caution.weight === "stop")
        .map((caution) => caution.say);
      for (const sign of [/chest/, /faint/, /sharp pain/]) expect(stops.join(" ")).toMatch(sign);
      const rules = around.cautions.filter((caution) => caution.weight === "rule" && caution.onSheet);
      expect(rules.map((caution) => caution.say).join(" ")).toMatch(
        /Event rules, local codes and the advice of licensed professionals/,
      );
      const isWithheld = around.withheld.some((part) => part.what === "workout");
      expect(around.after === undefined).toBe(isWithheld);
      if (!isWithheld) expect(around.after?.day.pieces.map((piece) => piece.id)).toContain("rest");
      for (const entry of around.withheld) {
        expect(sayWhyLeftOut([entry])).toMatch(/^[A-Z].+\. Ask .+\.$/);
      }
      expect(forbiddenWordsIn(JSON.stringify(around).replaceAll("!", ""))).toEqual([]);
      const same = aroundFor(athlete(each.given), each.does, each.options);
      expect(same).toEqual(around);
    },
  );
});

/** The parts of a brief in which two of them differ. */
function differences(
  one: ReturnType<typeof aroundFor>,
  other: ReturnType<typeof aroundFor>,
): readonly string[] {
  const [before, after] = [marksOf(one), marksOf(other)];
  const moved = [
    ...before.filter((mark) => !after.includes(mark)),
    ...after.filter((mark) => !before.includes(mark)),
  ];
  return [...new Set(moved)].sort();
}

describe("a change of a stated limit changes the brief there and nowhere else", () => {
  const does = [
    rounds(3, { movement: "pull-up", amount: 10 }, { movement: "box-jump-over", amount: 10 }),
    max("clean-and-jerk"),
  ];
  const given = { lifts, bodyMass: kilograms(70), warmUpTime: seconds(2400) };
  const plain = aroundFor(athlete(given), does);

  it.each<[string, { readonly limits: readonly Limit[] }, readonly string[]]>([
    [
      "a joint with nothing to avoid",
      limited("shoulder"),
      ["caution:shoulder-or-arm", "warm-up:gentle-range", "warm-up:shoulder-circles"],
    ],
    [
      "a joint the workout spares",
      limited("neck"),
      ["caution:neck", "warm-up:gentle-range", "warm-up:shoulder-circles"],
    ],
    ["asthma", states("asthma"), ["caution:asthma"]],
    ["high blood pressure", states("high-blood-pressure"), ["caution:high-blood-pressure"]],
    ["advice of a doctor", states("advised-by-doctor"), ["caution:doctors-advice"]],
  ])("%s", (_name, limits, expected) => {
    const limited = aroundFor(athlete({ ...given, ...limits }), does);
    expect(differences(plain, limited).filter((mark) => !mark.startsWith("after:"))).toEqual(expected);
    // And rest comes first on the day.
    expect(limited.after?.day.pieces[0]?.id).toBe("rest");
  });

  it("a movement to keep away from goes, with its primer and standards, and its stand-in comes", () => {
    const without = aroundFor(
      athlete({ ...given, limits: [{ avoid: [], without: ["box-jump-over"] }] }),
      does,
    );
    const moved = differences(plain, without);
    expect(moved).toContain("withheld:box-jump-over");
    expect(moved.filter((mark) => mark.startsWith("withheld:"))).toEqual(["withheld:box-jump-over"]);
    expect(without.withheld[0]?.instead).toBe("box step overs");
    expect(without.standards.map((each) => each.movement)).not.toContain("box-jump-over");
    expect(without.standards.map((each) => each.movement)).toContain("box-step-over");
    expect(without.warmUp?.build).toEqual(plain.warmUp?.build);
    expect(without.after?.steps).toEqual(plain.after?.steps);
  });

  it("keeping away from maxima takes the lift and its build, and leaves the ladder alone", () => {
    const without = aroundFor(
      athlete({ ...given, limits: [{ avoid: ["maximal-lift"], without: [] }] }),
      does,
    );
    expect(without.withheld.map((each) => [each.what, each.part])).toEqual([["part", "b"]]);
    expect(without.warmUp?.build).toBeUndefined();
    const standards = plain.standards.filter((each) => each.movement === "pull-up").map((each) => each.say);
    expect(without.standards.filter((each) => each.movement === "pull-up").map((each) => each.say)).toEqual(
      standards,
    );
    // Food and sleep stay; without the lift what is left is a sprint, and after one nobody lies down.
    const fed = (plan: typeof plain) => plan.after?.steps.filter(({ kind }) => kind !== "cool-down");
    expect(fed(without)).toEqual(fed(plain));
  });

  it("a limit that has ended changes nothing", () => {
    const ended = aroundFor(
      athlete({ ...given, limits: [{ joint: "knee", avoid: ["impact"], without: [], until: "2026-11-25" }] }),
      does,
    );
    expect(ended).toEqual(plain);
  });
});
