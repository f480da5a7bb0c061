import { describe, expect, it } from "vitest";
import { briefText } from "../../../src/cli/brief-text.ts";
import type { Plan } from "../../../src/models/plan/plan.ts";
import { plansOf, table } from "../../support/advice-situations.ts";
import { contradictionsIn, rules } from "../../support/contradictions.ts";
import { generatedSituations } from "../../support/generated-situations.ts";

const generated = generatedSituations(128, 15);
const plans = plansOf(generated);
const told = plansOf(table.situations);

/** The rules that find something in a plan, or in a text in the place of its own. */
const foundBy = (plan: Plan, text = briefText(plan)): readonly string[] =>
  rules.filter(({ find }) => find(plan, text).length > 0).map(({ id }) => id);

/** The first plan of which something holds, with that. */
function firstWith<T>(find: (plan: Plan) => T | undefined): readonly [Plan, T] {
  for (const plan of [...plans, ...told]) {
    const found = find(plan);
    if (found !== undefined) return [plan, found];
  }
  throw new Error("no situation is like that");
}

describe("what a brief advises agrees with its plan", () => {
  it.each(generated.map((situation, at) => [situation.is, situation, at] as const))(
    "%s",
    (_is, situation, at) => {
      const plan = plans[at];
      if (!plan) throw new Error("there is a plan for each situation");
      expect({ situation: situation.written, wrong: contradictionsIn(plan) }).toEqual({
        situation: situation.written,
        wrong: [],
      });
    },
  );

  it("also in the situations of the table", () => {
    const wrong = told.flatMap((plan, at) =>
      contradictionsIn(plan).map((each) => `${table.situations[at]?.is ?? ""}: ${each}`),
    );
    expect(wrong).toEqual([]);
  });
});

type Part = Plan["parts"][number];
type Pacing = NonNullable<Part["pacing"]>;
type Row = Pacing["rows"][number];

const withParts = (plan: Plan, change: (pacing: Pacing) => Pacing): Plan => ({
  ...plan,
  parts: plan.parts.map((part) => (part.pacing ? { ...part, pacing: change(part.pacing) } : part)),
});
const withRows = (plan: Plan, change: (row: Row) => Row): Plan =>
  withParts(plan, (pacing) => ({
    ...pacing,
    rows: pacing.rows.map((row) => (row.kind === "work" ? change(row) : row)),
  }));
const allWorkIn = (plan: Plan, test: (row: Row) => boolean): boolean => {
  const rows = plan.parts.flatMap((part) => part.pacing?.rows ?? []).filter(({ kind }) => kind === "work");
  return rows.length > 1 && rows.every(test);
};

describe("a contradiction is found", () => {
  it("when sets are broken that a choice takes in one go", () => {
    const [plan] = firstWith(({ choices }) =>
      choices.find(({ id, pick }) => id === "double-under-rhythm" && pick.id === "one-set"),
    );
    const broken = withRows(plan, (row) => ({
      ...row,
      sets: [
        { amount: row.amount / 2, restAfter: 5 },
        { amount: row.amount / 2, restAfter: 0 },
      ],
    }));
    expect(foundBy(broken)).toContain("a choice takes other sets for granted than the plan has");
  });

  it("when a bar is dropped after each rep and planned in fives", () => {
    const [plan] = firstWith(({ choices }) =>
      choices.find(
        ({ id, pick, changesAt }) => id === "bar-cycling" && pick.id === "touch-and-go" && !changesAt,
      ),
    );
    const ones = withRows(plan, (row) => ({
      ...row,
      sets: Array.from({ length: Math.max(2, row.amount) }, () => ({ amount: 1, restAfter: 4 })),
    }));
    expect(foundBy(ones)).toContain("a choice takes other sets for granted than the plan has");
  });

  it("when one steps out of the burpee and flies over the box", () => {
    const [plan, step] = firstWith(({ choices }) =>
      choices.find(({ id, pick }) => id === "burpee-footwork" && pick.id === "step"),
    );
    const over = { ...step, id: "box-crossing", pick: { ...step.pick, id: "over" } };
    expect(foundBy({ ...plan, choices: [...plan.choices, over] })).toContain(
      "two choices of one movement exclude each other",
    );
  });

  it("when something used is not set out, and when something is set out for nothing", () => {
    const [plan] = firstWith(({ parts }) => {
      const rows = parts.flatMap(({ pacing }) => (pacing?.ending === "finishes" ? pacing.rows : []));
      return rows.find(({ kind, load }) => kind === "work" && load !== undefined);
    });
    const id = "what is used is not set out, or what is set out is not used";
    expect(foundBy({ ...plan, setUp: [] })).toContain(id);
    const more = { kind: "equipment" as const, things: [{ what: "pegboard", loads: [], heights: [] }] };
    expect(foundBy({ ...plan, setUp: [...plan.setUp, more] })).toContain(id);
  });

  it("when a caution speaks of a rope nobody climbs", () => {
    const [plan] = firstWith((each) =>
      each.cautions.every(({ id }) => id !== "falls") && each.parts.some((part) => part.lifting)
        ? true
        : undefined,
    );
    const falls = {
      id: "falls",
      title: "Height",
      say: "Climb down.",
      weight: "care" as const,
      onSheet: false,
    };
    expect(foundBy({ ...plan, cautions: [...plan.cautions, falls] })).toContain(
      "a caution speaks of what is not done",
    );
  });

  it("when helpers are told for a bar nobody changes", () => {
    const [plan] = firstWith((each) =>
      each.parts.every((part) => !part.lifting && !part.pacing?.rows.some(({ load }) => load))
        ? true
        : undefined,
    );
    const line = { kind: "loading" as const, who: "help-allowed" as const };
    expect(foundBy({ ...plan, setUp: [...plan.setUp, line] })).toContain(
      "loaders, plates or a floor are told for what nobody changes",
    );
  });

  it("when chalk once stands beside chalk on the way", () => {
    const [plan] = firstWith(({ choices }) => choices.find(({ pick }) => pick.id === "chalk-once"));
    expect(foundBy({ ...plan, setUp: [...plan.setUp, { kind: "chalk" }] })).toContain(
      "chalk once beside chalk on the way",
    );
  });

  it("when a forecast goes the wrong way, or nothing is left to change", () => {
    const [plan, one] = firstWith((each) =>
      each.parts
        .flatMap(({ pacing }) => (pacing?.score === "time" ? pacing.ifThen : []))
        .find(({ when }) => when === "later-than"),
    );
    const id = "a threshold has nothing left to change, or its forecast goes the wrong way";
    const better = withParts(plan, (pacing) => ({ ...pacing, ifThen: [{ ...one, projected: 1 }] }));
    expect(foundBy(better)).toContain(id);
    const late = withParts(plan, (pacing) => ({ ...pacing, ifThen: [{ ...one, planned: pacing.duration }] }));
    expect(foundBy(late)).toContain(id);
  });

  it("when short work is told to hold", () => {
    const [plan, one] = firstWith((each) =>
      each.parts.flatMap(({ pacing }) => (pacing && pacing.duration < 400 ? pacing.ifThen : [])).at(0),
    );
    const held = withParts(plan, (pacing) => ({
      ...pacing,
      ifThen: [{ ...one, when: "earlier-than", action: { kind: "hold" } }],
    }));
    expect(foundBy(held)).toContain("short work is told to hold back when ahead");
  });

  it("when a build falls", () => {
    const [plan] = firstWith(({ warmUp }) =>
      (warmUp?.steps ?? []).flatMap(({ sets }) => sets).length > 2 ? true : undefined,
    );
    const { warmUp } = plan;
    if (!warmUp) throw new Error("there is a warm-up");
    const steps = warmUp.steps.map((step) => ({ ...step, sets: step.sets.toReversed() })).toReversed();
    expect(foundBy({ ...plan, warmUp: { ...warmUp, steps } })).toContain(
      "a build falls, or loads one load in two ways",
    );
  });

  it("when a newcomer known by level alone is told to kip", () => {
    const [plan, choice] = firstWith(({ athlete, choices, basis }) =>
      athlete.level === "new" && basis.some(({ kind, about }) => kind === "level" && about === "pull-up")
        ? choices.find(({ id }) => id === "pull-up-style")
        : undefined,
    );
    const kip = { ...choice, decidedBy: "numbers" as const, pick: { ...choice.pick, id: "kipping" } };
    expect(foundBy({ ...plan, choices: [{ ...kip, reason: { say: "So.", values: [] } }] })).toContain(
      "a newcomer is told to swing",
    );
  });

  it("when a load above the build is rehearsed, and when heat is told on a cool day", () => {
    const [plan] = firstWith((each) =>
      each.warmUp?.steps.find(({ efforts }) => efforts?.some(({ unit }) => unit === "reps")),
    );
    const heavy = withRows(plan, (row) => ({
      ...row,
      load: { mass: { value: 90, unit: "kg" }, kilograms: 90, pieces: 1, shareOfBest: 0.9 },
    }));
    expect(foundBy(heavy)).toContain("a load the build stops short of is rehearsed");
    const { warmUp } = plan;
    if (!warmUp) throw new Error("there is a warm-up");
    const hot = { ...warmUp, moved: { ...warmUp.moved, isHot: true } };
    expect(foundBy({ ...plan, warmUp: hot })).toContain("heat or a film is told where there is none");
  });

  it("when what is left out is planned all the same", () => {
    const [plan, movement] = firstWith(
      (each) => each.parts.flatMap((part) => part.pacing?.rows ?? []).find((row) => row.movement)?.movement,
    );
    const out = { what: "movement" as const, movement, reason: { kind: "limit" as const } };
    expect(foundBy({ ...plan, withheld: [out] })).toContain("something that is left out is advised");
  });

  it("when a choice tells another length than the plan", () => {
    const [plan] = firstWith(({ choices }) =>
      choices.find(({ reason }) => reason?.values.some(({ gap }) => gap === "minutes")),
    );
    expect(foundBy(withParts(plan, (pacing) => ({ ...pacing, duration: pacing.duration + 600 })))).toContain(
      "a choice tells another length than the plan",
    );
  });

  it("when a load near the best is called light", () => {
    const [plan, choice] = firstWith((each) =>
      allWorkIn(each, ({ load }) => load !== undefined)
        ? each.choices.find(({ changesAt }) => !changesAt)
        : undefined,
    );
    const heavy = withRows(plan, (row) => ({
      ...row,
      ...(row.load && { load: { ...row.load, shareOfBest: 0.9 } }),
    }));
    const light = { ...choice, reason: { say: "The bar is light.", values: [] } };
    expect(foundBy({ ...heavy, choices: [light] })).toContain("a load near the best is called light");
  });

  it.each([
    ["a tie-break nobody has", "a tie-break is told where there is none", "Agree on the tie-break."],
    ["a doubled word", "a word is doubled, missing or raw", "Take the the bar."],
    ["a number that is none", "a word is doubled, missing or raw", "Round 1 in NaN s."],
    ["a mark of a text format", "a word is doubled, missing or raw", "*level: new:* slowly."],
    ["one of many", "a word is doubled, missing or raw", "There are 1 reps left."],
    ["a single rep in one go", "a single rep is called unbroken", "1 muscle-up: unbroken"],
  ])("when a text holds %s", (_what, id, words) => {
    const [plan] = firstWith((each) => (/tie.?break/i.test(briefText(each)) ? undefined : true));
    expect(foundBy(plan)).not.toContain(id);
    expect(foundBy(plan, `${briefText(plan)}\n${words}`)).toContain(id);
  });

  it("when a sentence stands twice, or a name in the wrong number", () => {
    const [plan, row] = firstWith((each) =>
      each.parts
        .flatMap((part) => part.pacing?.rows ?? [])
        .find(({ name, plural = name, kind }) => kind === "work" && plural !== name),
    );
    const text = briefText(plan);
    const twice = " Walk out to the rig and back with the others.";
    expect(foundBy(plan, `${text}${twice}${twice}`)).toContain("the same sentence stands twice");
    expect(foundBy(plan, `${text} 1 ${row.plural ?? ""}`)).toContain("a name stands in the wrong number");
  });

  it("when a reader of kilograms is told pounds", () => {
    const [plan, choice] = firstWith((each) => (each.athlete.units === "kg" ? each.choices[0] : undefined));
    const pounds = { ...choice, switchWhen: "Go down to 95 lb." };
    expect(foundBy({ ...plan, choices: [pounds] })).toContain(
      "a mass stands in a unit the reader does not use",
    );
  });
});
