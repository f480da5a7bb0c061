import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { athleteReader } from "../../src/reading/read-athlete.ts";
import { contextForTests } from "../support/athlete-context.ts";
import { lines, tellFaults } from "../support/tell-faults.ts";

const readFile = athleteReader(contextForTests);
const readText = (text: string) => readFile({ path: "athletes/ada.yaml", text });
/** An athlete of whom only name and level are known, with more entries from line 3 on. */
const read = (...entries: readonly string[]) => readText(["name: Ada", "level: new", ...entries].join("\n"));
const tell = (...entries: readonly string[]) => tellFaults(read(...entries));
const LIFT = "allowed  a load such as `110 kg`, or reps x load such as `3 x 100 kg`";
const EFFORT_OF_SET = "allowed  reps x load with the effort behind it, such as `3 x 100 kg @8`";
const LIFTED = "allowed  a load with kg or lb that somebody can have lifted";
const MOVEMENT =
  "allowed  a movement of content/movements, by its name, its plural or one of its other names";
const EFFORT =
  "allowed  an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`";

describe("an athlete file", () => {
  it("without a level is told the levels there are", () => {
    expect(tellFaults(readText("name: Ada"))).toEqual([
      lines(
        "1:1: Fault",
        "wrong    `level` is missing",
        "allowed  new, regular, competitor, elite",
        "to do    Add `level`.",
      ),
    ]);
  });

  it("needs a name and a level only", () => {
    expect(read()).toEqual({
      ok: true,
      value: {
        id: "ada",
        place: { file: "athletes/ada.yaml", line: 1, column: 1 },
        name: "Ada",
        level: "new",
        units: "kg",
        lifts: [],
        efforts: [],
        unbroken: [],
        cannot: [],
        recovery: "usual",
        habits: [],
        limits: [],
        prefers: {},
        starts: [],
        shares: [],
        results: [],
        retry: "open",
      },
      notices: [],
    });
  });

  it("may say everything else", () => {
    const result = read(
      "share name: A.",
      "division: masters women",
      "units: lb",
      "body mass: 63 kg",
      "height: 170 cm",
      "born: 1991-05-03",
      "lifts:",
      "  back squat: [110 kg, 3 x 100 kg]",
      "  clean and jerk: {best: 82,5 kg, tested: 2026-10-03}",
      "  pull-up 3RM: BW+20 kg",
      "efforts:",
      "  - row 2000 m in 7:05.4",
      "  - {effort: 30 thruster at 40 kg in 1:32, tested: 2026-05-01}",
      "unbroken: {pull-up: 22, thruster: 21 at 43 kg, handstand walk: 15 m, toes-to-bar: n/a}",
      "cannot: ring muscle-up",
      "recovery: fast",
      "habits: starts too fast, slow transitions",
      "limits: {joint: shoulder, avoid: [kipping], without: bar muscle-up, until: 2026-12-31, note: strict only}",
      "prefers: {pull-up style: butterfly}",
      "gym: Mill",
      "warm up: 40 min",
      "heat: {wbgt: 28, acclimatised: yes}",
      "retry: planned",
      "starts: {low-water: [2026-11-28 18:40, 2026-11-30 10:00 Europe/Berlin]}",
      "shares: [name, target]",
      "results:",
      "  - {workout: Low water, part: A, date: 2026-11-28, time: 9:41, splits: [1:02, 2:10], felt: hard, version: scaled}",
      "  - {workout: own-work, load: 100 kg, attempts: [90 kg made 1:05, 105 kg missed]}",
      "note: Bring the belt.",
    );
    expect(tellFaults(result)).toEqual([]);
    expect(result.ok && result.value).toMatchObject({
      shareName: "A.",
      division: "masters women",
      sex: "female",
      units: "lb",
      bodyMass: 63,
      height: 1.7,
      birthYear: 1991,
      lifts: [
        {
          movement: "back-squat",
          load: { value: 110, unit: "kg" },
          reps: 1,
          inReserve: 0,
          approximate: false,
        },
        { movement: "back-squat", load: { value: 100, unit: "kg" }, reps: 3 },
        { movement: "clean-and-jerk", load: { value: 82.5, unit: "kg" }, date: "2026-10-03" },
        { movement: "pull-up", load: { value: 20, unit: "kg" }, reps: 3, added: true },
      ],
      efforts: [
        {
          movement: "row",
          amount: 2000,
          unit: "metres",
          time: 425.4,
          place: { file: "athletes/ada.yaml", line: 14, column: 5 },
        },
        {
          movement: "thruster",
          amount: 30,
          unit: "reps",
          load: { value: 40, unit: "kg" },
          time: 92,
          date: "2026-05-01",
        },
      ],
      unbroken: [
        { movement: "pull-up", reps: 22 },
        { movement: "thruster", reps: 21, load: { value: 43, unit: "kg" } },
        { movement: "handstand-walk", reps: 15 },
      ],
      cannot: ["ring-muscle-up"],
      recovery: "fast",
      habits: ["starts-too-fast", "slow-transitions"],
      limits: [
        {
          joint: "shoulder",
          avoid: ["kipping"],
          without: ["bar-muscle-up"],
          note: "strict only",
          until: "2026-12-31",
        },
      ],
      prefers: { "pull-up-style": "butterfly" },
      gym: "mill",
      warmUpTime: 2400,
      heat: { wbgt: 28, acclimatised: true },
      retry: "planned",
      starts: [
        { workout: "low-water", at: "2026-11-28T18:40" },
        { workout: "low-water", at: "2026-11-30T10:00", zone: "Europe/Berlin" },
      ],
      shares: ["name", "target"],
      results: [
        {
          workout: "low-water",
          part: "a",
          date: "2026-11-28",
          time: 581,
          splits: [62, 130],
          felt: "hard",
          version: "scaled",
        },
        {
          workout: "own-work",
          part: "a",
          load: { value: 100, unit: "kg" },
          attempts: [
            { load: { value: 90, unit: "kg" }, made: true, at: 65 },
            { load: { value: 105, unit: "kg" }, made: false },
          ],
          version: "prescribed",
        },
      ],
      note: "Bring the belt.",
    });
  });

  it("tells every fault of the file at once", () => {
    const told = readText(
      "name:\nlevel: begginer\nweight: 63 kg\nbody mass: 63\nlifts: {sqautt: 3}\nstarts: {lowwater: soon}",
    );
    expect(told.ok ? [] : told.faults.map((fault) => [fault.place.line, fault.found])).toEqual([
      [1, ""],
      [2, "begginer"],
      [4, "63"],
      [5, "sqautt"],
      [5, "3"],
      [6, "lowwater"],
      [6, "soon"],
      [3, "weight"],
    ]);
  });

  it("proposes the entry that another word stands for", () => {
    expect(tell("weight: 63 kg")[0]).toContain("\n  nearest  body mass\n  to do    Write `body mass:`.");
    expect(tell("injuries: knee")[0]).toContain("\n  nearest  limits\n  to do    Write `limits:`.");
    expect(tell("ht: 170 cm")[0]).toContain("\n  nearest  height\n  to do    Write `height:`.");
  });

  it("says when a comma has cut a text in two", () => {
    expect(tell("heat: {wbgt: 28, acclimatised: yes, a little}")[0]).toContain(
      "  to do    Delete the entry, or use one of the names allowed. If it belongs to the text before the comma, put that text in quotes.",
    );
  });

  it("takes sex from the division where it can, and not otherwise", () => {
    expect(read("division: Men 40-44")).toMatchObject({ value: { sex: "male" } });
    expect(read("division: masters")).not.toHaveProperty("value.sex");
    expect(read("division: women", "sex: male")).toMatchObject({ value: { sex: "male" } });
  });

  it("never throws, whatever is written", () => {
    const names = fc.constantFrom(
      "lifts",
      "efforts",
      "unbroken",
      "limits",
      "starts",
      "results",
      "body mass",
      "note",
      "born",
      "prefers",
      "heat",
    );
    const texts = fc.constantFrom(
      "",
      "?",
      "{a: 1}",
      "[1, 2]",
      "[[x]]",
      "{back squat: 5x85}",
      "row 2k 7:05",
      "pregnancy",
      "{low-water: 3/4/24 18:00}",
      "[{workout: 3}]",
      "{x: [}",
      "~",
    );
    const entries = fc.uniqueArray(fc.tuple(names, fc.oneof(texts, fc.string())), {
      selector: ([name]) => name,
    });
    fc.assert(
      fc.property(entries, (written) => {
        const result = read(...written.map(([name, text]) => `${name}: ${text}`));
        expect(result.ok || result.faults.length > 0).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

describe("lifts", () => {
  it.each([
    ["315#", { load: { value: 315, unit: "lb" } }],
    ["150KGx5@8", { load: { value: 150, unit: "kg" }, reps: 5, inReserve: 2 }],
    ["110 kg true max (2026-09-01)", { load: { value: 110 }, effort: "true-max", date: "2026-09-01" }],
    ["110 kg (2026-09-01), easy", { load: { value: 110 }, effort: "easy", date: "2026-09-01" }],
    ["true max: 110 kg", { load: { value: 110 }, effort: "true-max" }],
    ["3 x 100 kg (all out)", { load: { value: 100 }, reps: 3, effort: "true-max" }],
    ["~110 kg (2026-09-01)", { load: { value: 110, unit: "kg" }, approximate: true, date: "2026-09-01" }],
  ])("take %j", (text, lift) => {
    expect(read(`lifts: {back squat: "${text}"}`)).toMatchObject({
      ok: true,
      value: { lifts: [lift] },
      notices: [],
    });
  });

  it("take names as sheets head them, with their unit and reps, and tell it", () => {
    const result = read("lifts: {CJ (kg): 102,5, Squat 5RM: 100 kg}");
    expect(result).toMatchObject({
      value: {
        lifts: [
          { movement: "clean-and-jerk", load: { value: 102.5, unit: "kg" } },
          { movement: "back-squat", load: { value: 100, unit: "kg" }, reps: 5 },
        ],
      },
    });
    expect(tellFaults(result)).toEqual([
      lines(
        "3:9: Notice",
        "found    CJ (kg)",
        "because  read as clean and jerk",
        "to know  Write `clean and jerk (kg)` to be sure, or correct it here if something else is meant.",
      ),
      lines(
        "3:25: Notice",
        "found    Squat 5RM",
        "because  read as back squat",
        "to know  Write `back squat 5RM` to be sure, or correct it here if something else is meant.",
      ),
    ]);
  });

  it("keep unknown and cannot apart", () => {
    const result = read("lifts: {snatch: none, deadlift: ?, thruster: n/a, back squat: 0, front squat: }");
    expect(result).toMatchObject({ ok: true, value: { lifts: [], cannot: ["snatch", "back-squat"] } });
  });

  it("undo what a sheet has converted, and tell it with the date", () => {
    const result = read("lifts: {snatch: 264.48 lb (Jan 2026)}");
    expect(result).toMatchObject({
      value: { lifts: [{ load: { value: 120, unit: "kg" }, date: "2026-01-15" }] },
    });
    expect(tellFaults(result)).toEqual([
      lines(
        "3:17: Notice",
        "found    264.48 lb (Jan 2026)",
        "because  an odd number of lb that is a round number of kg; read as 120 kg; a month without a day; read as the middle of January 2026",
        "to know  Write `120 kg (2026-01-15)` to be sure.",
      ),
    ]);
  });

  it.each([
    [
      "back squat: 110",
      "110",
      "the unit is missing",
      LIFT,
      "Write `110 kg` or `110 lb`, whichever is meant.",
    ],
    [
      "back squat: 5x85",
      "5x85",
      "without a unit this can be reps x load, load x reps or sets x reps",
      LIFT,
      "Write `5 x 85 kg` or `5 x 85 lb`, whichever is meant.",
    ],
    [
      "thruster: x",
      "x",
      "this can mean not known or cannot, and those are different plans",
      "allowed  a load, `?` for not known, `none` for cannot",
      "Write `?` or `none`, whichever is meant, or the load.",
    ],
    [
      "pull-up: 20 kg",
      "20 kg",
      "no load is lifted in a pull-up",
      "allowed  a load on top of body mass such as `BW+20 kg`",
      "Write `BW+20 kg` if that is meant.",
    ],
    [
      "dumbbell press: 2 x 24 kg",
      "2 x 24 kg",
      "this can be two reps or two pieces",
      "allowed  the load of one piece, with reps in front if more than one",
      "Write `2 reps at 24 kg` or `24 kg`, whichever is meant.",
    ],
    [
      "snatch: 2225 lb",
      "2225 lb",
      "2225 lb is more than anybody has lifted in a snatch",
      LIFTED,
      "Write `222.5 lb` or `225 lb`, whichever is meant.",
    ],
    [
      "front squat: 400 kg",
      "400 kg",
      "400 kg is more than anybody has lifted in a front squat",
      LIFTED,
      "Write `400 lb` or `40 kg`, whichever is meant.",
    ],
  ])("ask about %j", (entry, found, problem, allowed, remedy) => {
    expect(tell(`lifts: {${entry}}`)).toEqual([
      lines(
        `3:${10 + entry.indexOf(":") + 1}: Question`,
        `found    ${found}`,
        `because  ${problem}`,
        allowed,
        `to do    ${remedy}`,
      ),
    ]);
  });

  it.each([
    ["snatch: 666 lb", "666 lb", "666 lb is more than anybody has lifted in a snatch"],
    ["snatch: 1000 lb", "1000 lb", "1000 lb is more than anybody has lifted in a snatch"],
    ["snatch: 999 lb", "999 lb", "999 lb is more than anybody has lifted in a snatch"],
    ["snatch: 1 lb", "1 lb", "1 lb is lighter than any bar"],
  ])("refuse %j", (entry, found, problem) => {
    expect(tell(`lifts: {${entry}}`)).toEqual([
      lines(
        "3:17: Fault",
        `found    ${found}`,
        `wrong    ${problem}`,
        LIFTED,
        "to do    Write the load that was lifted, or `?` if it is not known.",
      ),
    ]);
  });

  it("take what the coach saw as an entry of its own", () => {
    expect(read("lifts: {snatch: {best: 60 kg, effort: Easy}}")).toMatchObject({
      value: { lifts: [{ load: { value: 60 }, effort: "easy" }] },
    });
    expect(tell("lifts: {snatch: {best: 60 kg, effort: light}}")).toEqual([
      lines(
        "3:39: Fault",
        "found    light",
        "wrong    this is not one of the words possible here",
        "allowed  true max, easy",
        "to do    Write one of the words allowed.",
      ),
    ]);
  });

  it.each([
    [
      "3 x 100 kg easy",
      "how many more reps would have gone?",
      EFFORT_OF_SET,
      "Write `3 x 100 kg @7` if that is meant.",
    ],
    [
      "100 kg @8 easy",
      "how many more reps would have gone?",
      EFFORT_OF_SET,
      "Write `100 kg @8` if that is meant.",
    ],
    [
      "100 kg @8 true max",
      "a true max leaves no rep",
      "allowed  `true max` or the effort such as `@8`, not both",
      "Write `100 kg @8` or `100 kg true max`, whichever is meant.",
    ],
  ])("ask what %j means", (text, problem, allowed, remedy) => {
    expect(tell(`lifts: {snatch: ${text}}`)).toEqual([
      lines("3:17: Question", `found    ${text}`, `because  ${problem}`, allowed, `to do    ${remedy}`),
    ]);
  });

  it("propose the unit of the athlete first", () => {
    expect(tell("units: lb", "lifts: {snatch: 135}")[0]).toContain(
      "Write `135 lb` or `135 kg`, whichever is meant.",
    );
  });

  it("count the whole load on a bar", () => {
    expect(tell("lifts: {back squat: BW}")).toEqual([
      lines(
        "3:21: Question",
        "found    BW",
        "because  on a bar the whole load counts, whatever the body weighs",
        LIFT,
        "to do    Write the load itself, with kg or lb.",
      ),
    ]);
  });

  it("keep what is checked, though unusual", () => {
    expect(read("lifts: {snatch: 240 kg checked}")).toMatchObject({
      value: { lifts: [{ load: { value: 240 } }] },
    });
  });

  it("refuse one movement under two names, and the same thing said twice", () => {
    expect(
      tell(
        "lifts: {back squat: 110 kg, Back Squat 1RM: 115 kg, snatch: {best: 80 kg, load: 80 kg}, deadlift: {}}",
      ),
    ).toEqual([
      lines(
        "3:29: Fault",
        "found    Back Squat 1RM",
        'wrong    this movement stands here twice, also as "back squat"',
        "to do    Keep one name, and put its results in a list: `[110 kg, 3 x 100 kg]`.",
      ),
      lines(
        "3:61: Fault",
        "found    {best: 80 kg, load: 80 kg}",
        "wrong    `best` and `load` say the same thing twice",
        "allowed  `{best: 82.5 kg, tested: 2026-10-03}`",
        "to do    Keep one of the two.",
      ),
      lines(
        "3:99: Fault",
        "found    {}",
        "wrong    the load is missing",
        "allowed  `{best: 82.5 kg, tested: 2026-10-03}`",
        "to do    Add `best: ...`.",
      ),
    ]);
  });

  it("tell unknown and ambiguous movements", () => {
    expect(tell("lifts: {back sqaut: 100 kg, zzz: 30 kg, G2O: 100 kg}")).toEqual([
      lines(
        "3:9: Fault",
        "found    back sqaut",
        "wrong    no movement has this name",
        MOVEMENT,
        "nearest  back squat",
        "to do    Write `back squat`, or describe the movement in content/movements in a file of its own.",
      ),
      lines(
        "3:29: Fault",
        "found    zzz",
        "wrong    no movement has this name",
        MOVEMENT,
        "to do    Look the name up in content/movements, or describe the movement there in a file of its own.",
      ),
      lines(
        "3:41: Question",
        "found    G2O",
        "because  this name can stand for more than one movement, or for one with something",
        MOVEMENT,
        "to do    Write `clean and jerk` or `snatch`, whichever is meant.",
      ),
    ]);
  });

  it("ask once for the order of day and month, for all dates of the file", () => {
    const asked = tell(
      "lifts:",
      "  snatch: {best: 80 kg, tested: 3/4/24}",
      "  deadlift: {best: 180 kg, tested: 04.03.2024}",
    );
    expect(asked).toEqual([
      lines(
        "4:33: Question",
        "found    3/4/24",
        "because  day and month can be read in either order; so can one other date of this file, and one answer settles them all",
        "allowed  a date such as `2026-11-28`",
        "to do    Write `2024-04-03` or `2024-03-04`, whichever is meant. Or say once for all files, in content/settings.yaml, `dates: day first` or `dates: month first`.",
      ),
    ]);
    // the 25th month does not exist, so the file puts the day first
    expect(
      read(
        "lifts:",
        "  snatch: {best: 80 kg, tested: 3/4/24}",
        "  deadlift: {best: 180 kg, tested: 25.03.2024}",
      ),
    ).toMatchObject({
      value: { lifts: [{ date: "2024-04-03" }, { date: "2024-03-25" }] },
    });
  });

  it("are weighed against the body mass", () => {
    // 200 / 60 = 3.33, above 3.1
    expect(tell("body mass: 60 kg", "lifts: {clean and jerk: 200 kg}")).toEqual([
      lines(
        "3:12: Question",
        "found    60 kg",
        "because  a clean and jerk of 200 kg would be 3.3 times the body mass, more than anybody has lifted",
        "to do    Look at the units of body mass and lift, and correct the one that is wrong.",
      ),
    ]);
  });
});

describe("efforts", () => {
  it.each([
    ["row 2000 m in 7:05.4", { movement: "row", amount: 2000, unit: "metres", time: 425.4 }],
    ["2k row 7:05", { movement: "row", amount: 2000, time: 425 }],
    ["1 mile run in 7:10", { movement: "run", amount: 1609.344, time: 430 }],
    ["84 burpees in 7:00", { movement: "burpee", amount: 84, unit: "reps", time: 420 }],
    ["34 pull-ups in 2 min", { movement: "pull-up", amount: 34, time: 120 }],
    [
      "max pull-ups in 2:00: 34 (2026-01-15)",
      { movement: "pull-up", amount: 34, time: 120, date: "2026-01-15" },
    ],
    ["AMRAP 7 min burpees: 84", { movement: "burpee", amount: 84, time: 420 }],
    ["7:05 row 2000 m", { movement: "row", amount: 2000, time: 425 }],
    [
      "30 thruster at 40 kg in 1:32",
      { movement: "thruster", amount: 30, load: { value: 40, unit: "kg" }, time: 92 },
    ],
    [
      "thruster 30 reps 95 lb 1:32",
      { movement: "thruster", amount: 30, load: { value: 95, unit: "lb" }, time: 92 },
    ],
    ["50 cal row in 2:45", { movement: "row", amount: 50, unit: "calories", time: 165 }],
    ["row 500 m 90 s", { movement: "row", amount: 500, time: 90 }],
    ["100 m handstand walk in 4:00", { movement: "handstand-walk", amount: 100, unit: "metres", time: 240 }],
    ["5k run ~24:30", { movement: "run", amount: 5000, time: 1470, approximate: true }],
  ])("take %j", (line, effort) => {
    expect(read("efforts:", `  - ${line}`)).toMatchObject({
      ok: true,
      value: { efforts: [effort] },
      notices: [],
    });
  });

  it("take several facts of one movement from one line", () => {
    const result = read("efforts:", "  - 2k row 7:05.4, 5k ~19:50, 500 1:31");
    expect(result).toMatchObject({
      value: {
        efforts: [
          { amount: 2000, time: 425.4, approximate: false },
          { amount: 5000, time: 1190, approximate: true },
          { amount: 500, unit: "metres", time: 91 },
        ],
      },
    });
    expect(tellFaults(result)).toEqual([
      lines(
        "4:31: Notice",
        "found    500 1:31",
        "because  read as 500 m",
        "to know  Write `2k row 7:05.4, 5k ~19:50, 500 m row in 1:31` to be sure.",
      ),
    ]);
  });

  it("settle a sign in the amount by the time", () => {
    expect(tell("efforts: row 2,000 m in 7:05")).toEqual([
      lines(
        "3:10: Notice",
        "found    row 2,000 m in 7:05",
        "because  read as 2000 m",
        "to know  Write `2000 m row in 7:05` to be sure.",
      ),
    ]);
  });

  it.each([
    [
      "2k row 7:05.4 (Jan), 5k ~19:50, 500 1:31",
      "2k row 7:05.4 (Jan)",
      "the year is missing",
      "allowed  a date such as `2026-11-28`",
      "Write the date with its year, such as `2026-01-15`.",
    ],
    [
      "2k row 7.32 min",
      "2k row 7.32 min",
      "this may be minutes and seconds, or minutes with a decimal",
      "allowed  a time such as `7:32`, `7:05.4`, `1:04:10`, `59 s` or `12 min`",
      "Write `7:32` or `7:19.2`, whichever is meant.",
    ],
    [
      "run 400 m in 0:59:00",
      "run 400 m in 0:59:00",
      "59:00 is far too long for 400 m run",
      "allowed  a time in which that amount can be done",
      "Write `400 m run in 0:59` if that is meant.",
    ],
    [
      "run 400 m in 59:00",
      "run 400 m in 59:00",
      "59:00 is far too long for 400 m run",
      "allowed  a time in which that amount can be done",
      "Write `400 m run in 0:59` if that is meant.",
    ],
    [
      "row 30 in 1:30",
      "row 30 in 1:30",
      "the unit is missing; a row is counted in metres or calories",
      EFFORT,
      "Write `30 m` or `30 cal`, whichever is meant.",
    ],
    [
      "30 thruster at 40 in 1:32",
      "30 thruster at 40 in 1:32",
      "the unit is missing",
      "allowed  a number with kg or lb, such as `102.5 kg` or `225 lb`",
      "Write `40 kg` or `40 lb`, whichever is meant.",
    ],
  ])("ask about %j", (line, found, problem, allowed, remedy) => {
    expect(tell("efforts:", `  - ${line}`)[0]).toBe(
      lines("4:5: Question", `found    ${found}`, `because  ${problem}`, allowed, `to do    ${remedy}`),
    );
  });

  it.each([
    [
      "run 400 m in 0:09",
      "0:09 is far too short for 400 m run",
      "allowed  a time in which that amount can be done",
      "Look at amount, unit and time, and write what was done.",
    ],
    [
      "40 burpees",
      "the time is missing",
      EFFORT,
      "Write an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`.",
    ],
    [
      "burpees in 2:00",
      "the amount is missing",
      EFFORT,
      "Write an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`.",
    ],
    [
      "2000 m in 7:05",
      "the movement is missing",
      EFFORT,
      "Write an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`.",
    ],
    [
      "10.5 burpees in 1:00",
      "repetitions are whole",
      EFFORT,
      "Write an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`.",
    ],
    [
      "0 burpees in 1:00",
      "an amount is more than nothing",
      EFFORT,
      "Write an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`.",
    ],
    [
      "10 m burpee in 1:00",
      "a burpee is counted in reps, not in metres",
      EFFORT,
      "Write the amount in reps.",
    ],
  ])("refuse %j", (line, problem, allowed, remedy) => {
    expect(tell("efforts:", `  - ${line}`)).toEqual([
      lines("4:5: Fault", `found    ${line}`, `wrong    ${problem}`, allowed, `to do    ${remedy}`),
    ]);
  });

  it("propose the movement of the entry before where none is named", () => {
    expect(tell("efforts: [2k row 7:05.4, 5k ~19:50]")).toEqual([
      lines(
        "3:26: Question",
        "found    5k ~19:50",
        "because  the movement is missing",
        EFFORT,
        "to do    Write `5k row in ~19:50` if that is meant.",
      ),
    ]);
  });

  it("propose the time of a pace", () => {
    // 4 x 1:53 = 7:32
    expect(tell("efforts: 2k row 1:53/500m")).toEqual([
      lines(
        "3:10: Question",
        "found    2k row 1:53/500m",
        "because  this is a pace, not a time",
        EFFORT,
        "to do    Write `2 k row in 7:32` if that is meant.",
      ),
    ]);
  });

  it("are a list", () => {
    expect(tell("efforts:", "  2k row: 7:05", "  run 400 m: 1:02")).toEqual([
      lines(
        "4:3: Fault",
        "found    2k row: 7:05 run 400 m: 1:02",
        "wrong    efforts are a list, and this is a group of entries",
        EFFORT,
        "to do    Put a hyphen and a space in front of each line.",
      ),
    ]);
  });
});

describe("best sets", () => {
  it("keep unknown and cannot apart, and ask where nobody can tell", () => {
    const result = read("unbroken: {pull-up: ?, toes-to-bar: n/a, ring muscle-up: no MU, bar muscle-up: 0}");
    expect(result).toMatchObject({ value: { unbroken: [], cannot: ["ring-muscle-up", "bar-muscle-up"] } });
    expect(tell("unbroken: {pull-up: x}")).toEqual([
      lines(
        "3:21: Question",
        "found    x",
        "because  this can mean not known or cannot, and those are different plans",
        "allowed  a whole number, `?` for not known, `none` for cannot",
        "to do    Write `?` or `none`, whichever is meant, or the number.",
      ),
    ]);
  });

  it("are whole numbers, once for each movement", () => {
    expect(tell("unbroken: {pull-up: 22.5, pull ups: 3}")).toEqual([
      lines(
        "3:21: Fault",
        "found    22.5",
        "wrong    repetitions are whole",
        "allowed  a whole number such as `22`, with a load `21 at 43 kg`, `?` for not known, `none` for cannot",
        "to do    Write a whole number such as `22`, with a load `21 at 43 kg`, `?` for not known, `none` for cannot.",
      ),
      lines(
        "3:27: Fault",
        "found    pull ups",
        'wrong    this movement stands here twice, also as "pull-up"',
        "to do    Keep the better of the two lines.",
      ),
    ]);
  });

  it("contradict what cannot be done", () => {
    expect(tell("cannot: pull-up", "unbroken: {pull-up: 3}")).toEqual([
      lines(
        "4:11: Fault",
        "found    pull-up",
        "wrong    the file says that the athlete cannot do this movement, and gives a result of it under `unbroken`",
        "to do    Take it out of `cannot`, or delete the result.",
      ),
    ]);
  });
});

describe("year of birth", () => {
  it.each([
    [
      "91",
      "Question",
      "because  this may be a year without its century, or an age",
      "Write `1991` if that is meant.",
    ],
    [
      "34",
      "Question",
      "because  this may be a year without its century, or an age",
      "Write a year of birth such as `1991`.",
    ],
    [
      "34 years",
      "Question",
      "because  an age is only true for a year",
      "Write a year of birth such as `1991`.",
    ],
    ["1850", "Fault", "wrong    nobody who trains was born in 1850", "Write a year of birth such as `1991`."],
    ["soon", "Fault", "wrong    this is not a year", "Write a year of birth such as `1991`."],
  ])("%j is a %s", (text, kind, problem, remedy) => {
    expect(tell(`born: ${text}`)).toEqual([
      lines(
        `3:7: ${kind}`,
        `found    ${text}`,
        problem,
        "allowed  a year of birth such as `1991`",
        `to do    ${remedy}`,
      ),
    ]);
  });
});

describe("preferences and gym", () => {
  it("are told with the nearest name", () => {
    expect(tell("prefers: {pull-up styl: butterfly, pull-up style: butterly}")).toEqual([
      lines(
        "3:11: Fault",
        "found    pull-up styl",
        "wrong    no movement offers a choice of this name",
        "allowed  pull up style",
        "nearest  pull up style",
        "to do    Write `pull up style`.",
      ),
      lines(
        "3:51: Fault",
        "found    butterly",
        "wrong    this is not one of the options of pull up style",
        "allowed  butterfly, kip",
        "nearest  butterfly",
        "to do    Write `butterfly`.",
      ),
    ]);
    expect(tell("gym: mil")).toEqual([
      lines(
        "3:6: Fault",
        "found    mil",
        "wrong    there is no gym of this name",
        "allowed  mill, harbour",
        "nearest  mill",
        "to do    Write `mill`.",
      ),
    ]);
    const without = athleteReader({ ...contextForTests, gyms: [] });
    expect(tellFaults(without({ path: "a.yaml", text: "name: Ada\nlevel: new\ngym: mill" }))).toEqual([
      lines(
        "3:6: Fault",
        "found    mill",
        "wrong    there is no gym of this name",
        "allowed  none yet: content/gyms holds no file",
        "to do    Write the name of a file in content/gyms, without its ending.",
      ),
    ]);
  });
});
