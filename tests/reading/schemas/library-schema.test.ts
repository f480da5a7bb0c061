import { describe, expect, it } from "vitest";
import { readFrontMatter } from "../../../src/reading/yaml/read.ts";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { cautionSchema, recoverySchema, warmUpSchema } from "../../../src/reading/schemas/library-schema.ts";

const read = (schema: Parameters<typeof readFrontMatter>[1], yaml: string): unknown => {
  const file = { path: "content/x.mdx", text: `---\n${yaml.trim()}\n---\n\nWhy it is there.\n` };
  const checked = readFrontMatter(file, schema, { scalars: "text" });
  return checked.ok ? checked.value : sayFaults(checked.faults);
};

describe("a warm-up block in a file", () => {
  it("is read with its conditions and times", () => {
    const yaml = `
title: Ankle rocks
stage: mobility
say: Ten slow rocks on each side.
time: { shortest: "1:00", usual: 2 min }
when: [stress deep-knee-bend, not limit-joint ankle]
priority: 3
joints: [ankle]
holds still: 30 s
source: Judgement of the coaches.`;
    expect(read(warmUpSchema, yaml)).toEqual({
      title: "Ankle rocks",
      stage: "mobility",
      say: "Ten slow rocks on each side.",
      time: { shortest: 60, usual: 120 },
      when: [
        { kind: "fact", fact: "stress", word: "deep-knee-bend", holds: true },
        { kind: "fact", fact: "limit-joint", word: "ankle", holds: false },
      ],
      priority: 3,
      muscles: [],
      joints: ["ankle"],
      stresses: [],
      holdsStill: 30,
      perMovement: false,
      source: "Judgement of the coaches.",
    });
  });

  it("tells its faults with line, column and the nearest word", () => {
    const yaml = `
title: Ankle rocks
stage: mobilty
say: Ten slow rocks on each side.
time: { shortest: "1:00", usual: "2:00" }
when:
  - stress deep-knee-bend
  - limit-joint ankel
priority: 3
source: Judgement of the coaches.`;
    expect(read(warmUpSchema, yaml)).toBe(`2 faults in 1 file.

content/x.mdx:3:8: Fault
  found    mobilty
  wrong    this is not one of the words possible here
  allowed  ready, mobility, general, specific, build, primer, rehearsal, rest
  nearest  mobility
  to do    Write \`mobility\`.

content/x.mdx:8:17: Fault
  found    ankel
  wrong    "ankel" is not a word \`limit-joint\` can speak about
  allowed  neck, shoulder, elbow, wrist, hand, back, hip, knee, ankle, foot
  nearest  ankle
  to do    Write \`limit-joint\` and one of these words.`);
  });
});

describe("a recovery option in a file", () => {
  it("is read with its loads and its range", () => {
    const yaml = `
title: Keep the squat
kind: same day
say: A few quick squats.
less: One set.
when: [self-check good]
minutes: 15
muscles: [legs]
stresses: [deep knee bend]
easy: no
per body mass: { low: 1.0, high: 1.2, unit: g/h }
work:
  - { movement: back squat, sets: 3, reps: 2, share: 60% }
source: Judgement of the coaches.`;
    expect(read(recoverySchema, yaml)).toEqual({
      title: "Keep the squat",
      kind: "same-day",
      say: "A few quick squats.",
      less: "One set.",
      when: [{ kind: "fact", fact: "self-check", word: "good", holds: true }],
      minutes: 15,
      muscles: ["legs"],
      stresses: ["deep-knee-bend"],
      easy: false,
      perBodyMass: { low: 1, high: 1.2, unit: "g/h" },
      work: [{ movement: "back-squat", sets: 3, reps: 2, share: 0.6 }],
      source: "Judgement of the coaches.",
    });
  });
});

describe("a caution in a file", () => {
  it("is read with what it withholds", () => {
    const yaml = `
title: Pregnant
weight: care
say: Keep every effort easy enough to speak.
when: [limit-condition pregnancy]
withholds:
  - what: max lift
    ask: Ask your midwife.
  - { what: stress, word: fall risk, ask: Ask your midwife. }
on sheet: yes
source: Judgement of the coaches.`;
    expect(read(cautionSchema, yaml)).toEqual({
      title: "Pregnant",
      weight: "care",
      say: "Keep every effort easy enough to speak.",
      when: [{ kind: "fact", fact: "limit-condition", word: "pregnancy", holds: true }],
      withholds: [
        { what: "max-lift", ask: "Ask your midwife." },
        { what: "stress", word: "fall-risk", ask: "Ask your midwife." },
      ],
      onSheet: true,
      source: "Judgement of the coaches.",
    });
  });

  it("withholds nothing and stays off the sheet unless it says so", () => {
    const yaml = `
title: Not alone
weight: care
say: Somebody stays within call.
source: Judgement of the coaches.`;
    expect(read(cautionSchema, yaml)).toMatchObject({ when: [], withholds: [], onSheet: false });
  });
});
