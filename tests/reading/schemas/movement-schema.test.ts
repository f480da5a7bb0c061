import { describe, expect, it } from "vitest";
import * as z from "zod";
import { readFrontMatter } from "../../../src/reading/yaml/read.ts";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { movementSchema, type WrittenMovement } from "../../../src/reading/schemas/movement-schema.ts";

/** A short movement file; `change` puts other lines in the place of some. */
const fileWith = (change: Readonly<Record<string, string>> = {}): string =>
  Object.entries(change).reduce((text, [line, instead]) => {
    if (!text.includes(line)) throw new Error(`no line ${line}`);
    return text.replace(line, instead);
  }, FILE);

const FILE = `---
name: crate lift
plural: crate lifts
short: crate lift
also: [CL, crate to shelf]
kind: odd object
counts: [reps]
taxes: { legs: 60%, hips and back: 90%, grip: 50% }
stresses: [loaded hinge]
pace:
  steady: { new: 9, regular: 6.5, competitor: 5, elite: 4 }
  fastest: { new: 3, regular: 2.5, competitor: 2, elite: 1.8 }
  unbroken: { new: 5, regular: 12, competitor: 20, elite: 30 }
  by sex: { female: 1.05, male: 1 }
  source: counted in a warehouse
  confidence: judgement
speeding up:
  power: 2.5
  source: counted in a warehouse
  confidence: judgement
set up:
  time: 4 s
  source: counted in a warehouse
  confidence: judgement
load:
  held: single
  best lift: yes
  reference: { female: 15 kg, male: 22,5 kg }
  from other lifts:
    - of: devil's press
      ratio: 0.7
      source: counted in a warehouse
      confidence: measured
  typical best: { new: 0.5, regular: 0.8, competitor: 1, elite: 1.2 }
  lands on the lifter: no
choices:
  - id: crate-grip
    question: Where do you hold it?
    options:
      - id: under
        name: from below
        say: Take it from below.
        when: [load-share at least 60%, not limit-joint wrist]
        switch when: Take the handles when your fingers open.
        adds: [hard grip]
      - id: handles
        name: by the handles
        say: Take the handles.
standards:
  - The crate stands on the shelf
easier: [kettlebell swing]
---
Lift it close.
`;

const read = (text: string) =>
  readFrontMatter({ path: "content/movements/crate-lift.mdx", text }, movementSchema, { scalars: "text" });
const valueOf = (text: string): WrittenMovement => {
  const movement = read(text);
  if (!movement.ok) throw new Error(sayFaults(movement.faults));
  return movement.value;
};
const saidOf = (text: string): string => {
  const movement = read(text);
  return movement.ok ? "" : sayFaults(movement.faults);
};

describe("a movement file", () => {
  it("says a movement, all of it", () => {
    const from = (confidence: "judgement" | "measured") => ({ source: "counted in a warehouse", confidence });
    expect(valueOf(fileWith())).toEqual({
      name: "crate lift",
      plural: "crate lifts",
      short: "crate lift",
      aliases: ["CL", "crate to shelf"],
      kind: "odd-object",
      counts: ["reps"],
      needs: [],
      taxes: { legs: 0.6, "hips-and-back": 0.9, grip: 0.5 },
      stresses: ["loaded-hinge"],
      pace: {
        steady: { new: 9, regular: 6.5, competitor: 5, elite: 4 },
        fastest: { new: 3, regular: 2.5, competitor: 2, elite: 1.8 },
        unbroken: { new: 5, regular: 12, competitor: 20, elite: 30 },
        bySex: { female: 1.05, male: 1 },
        ...from("judgement"),
      },
      kappa: { value: 2.5, ...from("judgement") },
      setUp: { value: 4, ...from("judgement") },
      loading: {
        held: "single",
        lift: true,
        reference: { female: { value: 15, unit: "kg" }, male: { value: 22.5, unit: "kg" } },
        ratios: [{ of: "devils-press", ratio: { value: 0.7, ...from("measured") } }],
        typical: { new: 0.5, regular: 0.8, competitor: 1, elite: 1.2 },
        needsCatching: false,
      },
      choices: [
        {
          id: "crate-grip",
          question: "Where do you hold it?",
          when: [],
          options: [
            {
              id: "under",
              name: "from below",
              say: "Take it from below.",
              when: [
                { kind: "number", metric: "load-share", is: "at-least", value: 0.6 },
                { kind: "fact", fact: "limit-joint", word: "wrist", holds: false },
              ],
              switchWhen: "Take the handles when your fingers open.",
              adds: ["hard-grip"],
            },
            { id: "handles", name: "by the handles", say: "Take the handles.", when: [], adds: [] },
          ],
        },
      ],
      standards: ["The crate stands on the shelf"],
      easier: ["kettlebell-swing"],
    });
  });

  it("takes paces over a distance where metres come first", () => {
    const { pace, metresPerRep, height } = valueOf(
      fileWith({
        "counts: [reps]":
          "counts: [metres, reps]\ndistance per rep: 80 cm\nheight: { female: 20 in, male: 24 in }",
        "steady: { new: 9, regular: 6.5, competitor: 5, elite: 4 }":
          "steady: { new: 10:00 per km, regular: 4:00 per 500 m, competitor: 0.4, elite: 0.3 s }",
        "fastest: { new: 3, regular: 2.5, competitor: 2, elite: 1.8 }":
          "fastest: { new: 0.3, regular: 0.25, competitor: 0.2, elite: 0.18 }",
      }),
    );
    // 600 s over 1000 m, 240 s over 500 m
    expect(pace.steady).toEqual({ new: 0.6, regular: 0.48, competitor: 0.4, elite: 0.3 });
    expect(metresPerRep).toBeCloseTo(0.8, 12);
    expect(height).toEqual({ female: { value: 20, unit: "in" }, male: { value: 24, unit: "in" } });
  });

  it("tells all that contradicts itself at once", () => {
    const text = fileWith({
      "short: crate lift": "short: the heavy crate lift",
      "steady: { new: 9, regular: 6.5,": "steady: { new: 9, regular: 11,",
      "fastest: { new: 3,": "fastest: { new: 9,",
      "power: 2.5": "power: 1",
    });
    expect(saidOf(text)).toBe(`4 faults in 1 file.

content/movements/crate-lift.mdx:4:8: Fault
  found    the heavy crate lift
  wrong    the short form has 20 signs
  allowed  at most 12 signs
  to do    Shorten it.

content/movements/crate-lift.mdx:11:30: Fault
  found    11
  wrong    regular is slower than new
  to do    Write the seconds so that they do not grow from new to regular.

content/movements/crate-lift.mdx:12:19: Fault
  found    9
  wrong    the fastest cycle (new) is not quicker than the steady pace
  to do    Write fewer seconds here, or more under \`steady\`.

content/movements/crate-lift.mdx:18:10: Fault
  found    1
  wrong    going faster would cost no more than going slowly
  allowed  a number over 1
  to do    Write a number over 1, such as 2.`);
  });

  it("refuses a pace over a distance for what is counted otherwise", () => {
    expect(
      saidOf(
        fileWith({
          "new: 9, regular": "new: 10:00 per km, regular",
          "regular: 6.5": "regular: 0.5",
          "competitor: 5,": "competitor: 0.4,",
          "elite: 4 }": "elite: 0.3 }",
          "{ new: 3, regular: 2.5, competitor: 2, elite: 1.8 }":
            "{ new: 0.2, regular: 0.2, competitor: 0.2, elite: 0.2 }",
        }),
      ),
    ).toBe(
      `1 fault in 1 file.

content/movements/crate-lift.mdx:7:9: Fault
  found    [reps]
  wrong    a pace is written over a distance, but metres do not come first here
  to do    Put \`metres\` first, or write the paces in seconds for one unit.`,
    );
  });

  it("refuses a movement without a unit", () => {
    expect(saidOf(fileWith({ "counts: [reps]": "counts: []" }))).toBe(`1 fault in 1 file.

content/movements/crate-lift.mdx:7:9: Fault
  found    []
  wrong    no unit is given
  allowed  reps, calories, metres, seconds
  to do    Write the unit it is usually counted in.`);
  });

  it("refuses multiples of nought and less, and of more than bodies differ by", () => {
    const said = saidOf(
      fileWith({ "regular: 0.8": "regular: -0.8", "ratio: 0.7": "ratio: 70", "female: 1.05": "female: 0" }),
    );
    expect(said.match(/no two of these differ by so much/g)).toHaveLength(3);
    expect(said).toContain("found    -0.8");
  });

  it("refuses a choice that gives some athletes no option", () => {
    const text = fileWith({
      "        say: Take the handles.\n": "        say: Take the handles.\n        when: [level new]\n",
    });
    expect(saidOf(text)).toBe(`1 fault in 1 file.

content/movements/crate-lift.mdx:49:15: Fault
  found    [level new]
  wrong    the last option has conditions, so an athlete who meets none would be given no option
  to do    Put the option that suits anybody last and leave its \`when\` out.`);
  });

  it("names the nearest word for a wrong one, and the nearest entry for an unknown one", () => {
    const said = saidOf(fileWith({ "kind: odd object": "kind: odd objekt", "set up:": "setup:" }));
    expect(said).toContain("odd object");
    expect(said).toContain("set up");
  });

  it("has a sentence for every entry", () => {
    const undescribed: string[] = [];
    const visit = (field: unknown, path: string): void => {
      if (!(field instanceof z.ZodType)) return;
      const { def } = field._zod as unknown as { def: Record<string, unknown> };
      for (const inner of ["in", "innerType", "element"]) visit(def[inner], path);
      // What is read first and then turned into a value is described behind the turning.
      if (def["type"] === "pipe") visit(def["out"], path);
      for (const [name, entry] of Object.entries(
        (def["shape"] as Record<string, z.ZodType> | undefined) ?? {},
      )) {
        if (describedIn(entry) === undefined) undescribed.push(`${path}${name}`);
        visit(entry, `${path}${name}.`);
      }
    };
    visit(movementSchema, "");
    expect(undescribed).toEqual([]);
  });
});

/** The sentence of a field, or of what it wraps. */
function describedIn(field: z.ZodType): string | undefined {
  const { def } = field._zod as unknown as { def: Record<string, unknown> };
  const inner = [def["innerType"], def["in"]].find((each) => each instanceof z.ZodType);
  return field.description ?? (inner instanceof z.ZodType ? describedIn(inner) : undefined);
}
