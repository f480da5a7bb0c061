import { sayGrounds } from "../../src/wording/grounds.ts";
import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { readFiles } from "../../src/reading/read-data.ts";
import { readSources } from "../../src/site/load-data.ts";
import { ROOT } from "../support/run-command.ts";

const { builtIn } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });

type Lift = NonNullable<Plan["parts"][number]["lifting"]>["lifts"][number];

type Written = {
  /** What stands behind the best of the clean and jerk, and further lines of the athlete's file. */
  readonly best?: string;
  readonly level?: string;
  readonly athlete?: string;
  readonly competition?: string;
  /** Further lines of the part that is lifted, eight minutes after seven. */
  readonly part?: string;
};

/** The lift of a window after seven hard minutes, planned from files as they are written. */
function lifted(written: Written): Lift {
  const lift = planned(written, "moraine").find(({ name }) => name === "b")?.lifting?.lifts[0];
  if (!lift) throw new Error("nothing is lifted");
  return lift;
}

function planned({ best = "100 kg (2026-11-01)", level = "competitor", ...more }: Written, id: string): Plan["parts"] {
  const { athlete = "", competition = "", part = "" } = more;
  const files = [
    {
      path: "athletes/ana.yaml",
      text: `name: Ana\nlevel: ${level}\nsex: male\nlifts: {clean and jerk: ${best}}\n${athlete}`,
    },
    {
      path: "content/competitions/weir.yaml",
      text: `name: Weir\nzone: Europe/Oslo\nopens: 2026-11-25 19:30\ncloses: 2026-11-29 21:30\n${competition}`,
    },
    {
      path: "content/workouts/moraine.mdx",
      text: [
        "---",
        "title: Moraine",
        "competition: weir",
        "parts:",
        "  - {name: a, amrap: 7:00, work: [9 burpee, 12 air squat]}",
        `  - {name: b, starts: after a, max load: 8:00, work: [1 clean and jerk]${part}}`,
        "---",
        "",
      ].join("\n"),
    },
    {
      path: "content/workouts/talus.mdx",
      text: "---\ntitle: Talus\nmax load: 8:00\nwork: [1 clean and jerk]\n---\n",
    },
    ...[
      { id: "kame", work: "1 clean and jerk at any load" },
      { id: "esker", work: "5 burpee, 1 clean and jerk at any load" },
    ].map(({ id: name, work }) => ({
      path: `content/workouts/${name}.mdx`,
      text: `---\ntitle: ${name}\non the clock: 20:00\nwork: [{"every 2:00, 10 rounds": [${work}]}]\nscore: load\n---\n`,
    })),
  ];
  const { read: data, faults } = readFiles(builtIn, files);
  expect(faults).toEqual([]);
  const [one, workout] = [data.athletes[0], data.workouts.find((each) => each.id === id)];
  if (!one || !workout) throw new Error("nothing was read");
  return makePlan({ athlete: one, workout, data: { ...data, unmade: [] }, date: "2026-11-25" }).parts;
}

/** The window opens as part a ends. */
const firstRest = (lift: Lift): number => lift.attempts[0]?.clock ?? 0;
const targetOf = ({ attempts, target }: Lift): number =>
  attempts.find(({ number }) => number === target)?.load.kilograms ?? 0;
const heaviest = ({ attempts }: Lift): number => attempts.at(-1)?.load.kilograms ?? 0;

describe("what is said of a best lift", () => {
  it("as the most there was keeps a beginner's loads close to it, as an easy one lets a competitor's go further", () => {
    const plain = lifted({});
    const easy = lifted({ best: "100 kg easy (2026-11-01)" });
    // Lifters known by one result make a median 3 % over it, those of four and more half a per cent under (public results).
    expect(easy.today.kilograms).toBeGreaterThan(1.04 * plain.today.kilograms);
    expect(targetOf(easy)).toBeGreaterThan(targetOf(plain));
    expect(heaviest(easy)).toBeGreaterThan(heaviest(plain));
    expect(sayGrounds(easy.best.from)).toBe("1 rep at 100 kg of 2026-11-01, an easy one");
    const beginner = lifted({ level: "new" });
    const most = lifted({ level: "new", best: "{best: 100 kg, effort: true max, tested: 2026-11-01}" });
    expect(heaviest(most)).toBeLessThan(heaviest(beginner));
    expect(heaviest(most)).toBe(heaviest(plain));
  });

  it("is learnt from a log that says so", () => {
    const log = (attempts: string, felt: string): string =>
      `results:\n  - {workout: talus, date: 2026-11-20, attempts: ${attempts}, felt: ${felt}}\n`;
    const hard = lifted({ athlete: log("[100 kg made 1:00, 105 kg made 4:00]", "hard") });
    const easy = lifted({ athlete: log("[100 kg made 1:00, 105 kg made 4:00]", "easy") });
    const said = lifted({ athlete: log("[100 kg made 1:00, 105 kg made easy 4:00]", "hard") });
    const missed = lifted({ athlete: log("[105 kg made 1:00, 110 kg missed 4:00]", "easy") });
    expect(targetOf(easy)).toBeGreaterThan(targetOf(hard));
    expect(targetOf(said)).toBe(targetOf(easy));
    expect(targetOf(missed)).toBe(targetOf(hard));
  });
});

describe("the rest before the first lift", () => {
  it("is breath where nobody says otherwise: a little over two minutes", () => {
    expect(firstRest(lifted({}))).toBeGreaterThanOrEqual(130);
    expect(firstRest(lifted({}))).toBeLessThanOrEqual(140);
  });

  it("is set by the competition, over it by the workout, over both for the athlete", () => {
    const competition = "first lift after: 1:00\n";
    const part = ", attempts: first lift after 3:00";
    const athlete = "coach sets: {moraine: {first lift after: 1:30}}\n";
    expect(firstRest(lifted({ competition }))).toBe(60);
    expect(firstRest(lifted({ competition, part }))).toBe(180);
    expect(firstRest(lifted({ competition, part, athlete }))).toBe(90);
  });

  it("is not shorter than the rest at least, and the competition's rest between lifts is kept", () => {
    expect(firstRest(lifted({ part: ", attempts: rest at least 2:45" }))).toBe(165);
    const rests = lifted({ competition: "rest between lifts: 2:30\n" }).attempts.slice(1);
    for (const { restBefore } of rests) expect(restBefore).toBeGreaterThanOrEqual(150);
  });
});

describe("a lift in every window of the clock", () => {
  it("is lifted and not paced where nothing else is done", () => {
    const [alone] = planned({}, "kame");
    expect(alone?.lifting?.lifts[0]?.attempts).toHaveLength(10);
    expect(alone?.pacing).toBeUndefined();
    expect(planned({}, "esker")[0]?.pacing).toBeDefined();
  });
});
