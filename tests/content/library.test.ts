import { describe, expect, it } from "vitest";
import { allHold } from "../../src/compute/conditions/holds.ts";
import type { Situation } from "../../src/compute/conditions/situation.ts";
import { type Fact, type Metric, singlesOf } from "../../src/models/condition.ts";
import { WARM_UP_STAGES } from "../../src/models/library.ts";
import { cautions, recovery, warmUps } from "../support/library.ts";
import { forbiddenWordsIn, unclearIn } from "../support/tone.ts";

const all = [...warmUps, ...recovery, ...cautions];
const named = all.map((entry) => [entry.id, entry] as const);
const wordsOf = (entry: (typeof all)[number]): string =>
  [entry.title, entry.say, "less" in entry ? entry.less : ""].join(" ");

/** What is known before anything is planned, so that what it withholds can be left out of the plan. */
const KNOWN_BEFOREHAND: readonly (Metric | Fact)[] = [
  "age",
  "wbgt",
  "acclimatised",
  "limit-joint",
  "limit-condition",
  "limit-stress",
  "movement",
  "stress",
  "format",
  "has-lift",
];

describe("the library", () => {
  it("holds enough to choose from", () => {
    expect(warmUps.length).toBeGreaterThanOrEqual(25);
    expect(recovery.length).toBeGreaterThanOrEqual(14);
    expect(cautions.length).toBeGreaterThanOrEqual(22);
    expect(new Set(warmUps.map((block) => block.stage))).toEqual(new Set(WARM_UP_STAGES));
  });

  it.each(named)("%s speaks calmly: no diagnosis, no promise, no shouting", (_id, entry) => {
    expect(forbiddenWordsIn(wordsOf(entry))).toEqual([]);
  });

  it.each(named)("%s is short enough to read aloud, in whole sentences", (_id, entry) => {
    expect(unclearIn(entry.say)).toEqual([]);
    expect(entry.title.length).toBeLessThanOrEqual(40);
  });

  it.each(named)("%s says what it rests on", (_id, entry) => {
    expect(entry.source.length).toBeGreaterThan(20);
  });

  it("asks of a gym only what gyms list", () => {
    const known = ["row", "ski", "bike-erg", "air-bike", "barbell", "pins", "spotters", "bumper plates"];
    const asked = all
      .flatMap((entry) => entry.when.flatMap(singlesOf))
      .filter((single) => single.kind === "fact" && single.fact === "gym-has");
    for (const single of asked) expect(known).toContain(single.kind === "fact" && single.word);
  });
});

describe("the warm-up blocks", () => {
  it.each(warmUps.map((block) => [block.id, block] as const))("%s has times and gaps that fit", (_id, block) => {
    expect(block.time.shortest).toBeLessThanOrEqual(block.time.usual);
    const gaps = block.say.match(/\{\w+\}/g) ?? [];
    const ofMovement = block.perMovement ? ["{amount}", "{movement}"] : [];
    const allowed = block.stage === "rehearsal" ? ["{efforts}"] : [...ofMovement, "{joints}"];
    expect(allowed).toEqual(expect.arrayContaining(gaps));
  });
});

describe("the recovery options", () => {
  const suggesting = recovery.filter(
    (option) => /caffeine|coffee/i.test(wordsOf(option)) && !/nothing with caffeine/i.test(option.say),
  );
  const evening: Situation = {
    numbers: { age: 30, "hours-to-next": 4, "start-hour": 10 },
    facts: { "limit-condition": [] },
  };

  it("suggest caffeine somewhere, and never to the young, to an unknown age, or in and after pregnancy", () => {
    expect(suggesting.map((option) => option.id)).toEqual(["coffee-you-know"]);
    for (const option of suggesting) {
      expect(allHold(option.when, evening).holds).toBe(true);
      for (const condition of ["pregnancy", "after-birth", "heart"]) {
        const stated = { ...evening, facts: { "limit-condition": [condition] } };
        expect(allHold(option.when, stated).holds).toBe(false);
      }
      const ageless = { "hours-to-next": 4, "start-hour": 10 };
      expect(allHold(option.when, { ...evening, numbers: ageless }).holds).toBe(false);
      expect(allHold(option.when, { ...evening, numbers: { ...ageless, age: 17 } }).holds).toBe(false);
    }
  });

  it("always hold rest", () => {
    expect(recovery.filter((option) => option.kind === "rest").map((option) => option.when)).toEqual([[]]);
  });

  it("plan loads light enough to be forgotten by the morning, but for singles before a second try", () => {
    for (const { work, setShare, id } of recovery.flatMap((option) =>
      (option.work ?? []).map((each) => ({ work: each, setShare: each.setShare, id: option.id })),
    )) {
      expect(setShare ?? 0).toBeLessThanOrEqual(0.4);
      if (setShare !== undefined) continue;
      expect(work.share).toBeLessThanOrEqual(id === "heavy-touch" ? 0.8 : 0.7);
      expect(work.sets * work.reps).toBeLessThanOrEqual(10);
    }
  });
});

describe("the cautions", () => {
  it("hold stop signs and what prevails for every brief", () => {
    const always = cautions.filter((entry) => entry.when.length === 0);
    expect(always.filter((entry) => entry.weight === "stop").length).toBeGreaterThanOrEqual(3);
    const rules = always.filter((entry) => entry.weight === "rule").map((entry) => entry.say);
    expect(rules.join(" ")).toMatch(/event rules, local codes and the advice of licensed professionals/i);
    expect(rules.join(" ")).toMatch(/emergency number/i);
  });

  it("withhold only by what is known before anything is planned, and say whom to ask", () => {
    const withholding = cautions.filter((entry) => entry.withholds.length > 0);
    expect(withholding.length).toBeGreaterThan(0);
    for (const entry of withholding) {
      const asked = entry.when
        .flatMap(singlesOf)
        .map((single) => (single.kind === "number" ? single.metric : single.fact));
      expect(KNOWN_BEFOREHAND).toEqual(expect.arrayContaining(asked));
      for (const each of entry.withholds) expect(each.ask).toMatch(/^Ask .+\.$/);
    }
  });

  it("withhold a maximum in pregnancy, after birth and with a stated heart condition", () => {
    for (const id of ["pregnancy", "after-birth", "heart"]) {
      const entry = cautions.find((each) => each.id === id);
      expect(entry?.withholds.map((each) => each.what)).toContain("max-lift");
    }
  });
});
