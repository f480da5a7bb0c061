import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readField } from "../../src/reading/read-field.ts";
import { lines, tellFaults } from "../support/tell-faults.ts";

const read = (...rows: readonly string[]) =>
  readField({ path: "content/fields/wave.csv", text: rows.join("\n") });
const tell = (...rows: readonly string[]) => tellFaults(read(...rows));
const only = (...rows: readonly string[]) => {
  const result = read(...rows);
  return result.ok && result.value.length === 1 ? result.value[0] : result;
};
const HEADERS =
  "allowed  `seconds` or `time`, `reps`, `calories`, `metres`, `load kg`, `load lb`, or `score` for scores as published; with them `count`, `division`, `result` (finish or capped, beside `value`)";

describe("a field of counted scores", () => {
  it("has its unit in the header", () => {
    expect(only("load_lb,count", "225,101", "205,2", "225,1")).toEqual({
      id: "wave",
      kind: "load",
      unit: "lb",
      // lowest first, equal values together
      finished: [
        { value: 205, count: 2 },
        { value: 225, count: 102 },
      ],
      capped: [],
      leftOut: [],
    });
    expect(only("reps,count", "40,65")).toMatchObject({ kind: "reps", finished: [{ value: 40, count: 65 }] });
    expect(only("time,count", "19:29,3")).toMatchObject({
      kind: "time",
      finished: [{ value: 1169, count: 3 }],
    });
    expect(only("calories", "120", "130")).toMatchObject({
      kind: "calories",
      finished: [{ value: 120 }, { value: 130 }],
    });
    expect(only("metres", "1'500")).toMatchObject({ kind: "metres", finished: [{ value: 1500, count: 1 }] });
    expect(only("# unit: kg", "value,count", "82.5,2")).toMatchObject({ kind: "load", unit: "kg" });
  });

  it("keeps the two sides of the cap apart and leaves scaled results out", () => {
    const field = read(
      "division,result,value,count",
      "rx,finish,1169,2",
      "rx,capped,214,3",
      "scaled,finish,900,7",
      "rx,dnf,,1",
    );
    expect(field).toMatchObject({
      ok: true,
      value: [
        {
          kind: "time",
          finished: [{ value: 1169, count: 2 }],
          capped: [{ value: 214, count: 3 }],
          leftOut: [
            { reason: "scaled", rows: 7 },
            { reason: "not done", rows: 1 },
          ],
        },
      ],
    });
    expect(tellFaults(field)).toEqual([
      lines(
        "1:1: Notice",
        "because  results left out of wave: 7 scaled, 1 not done",
        "to know  Nothing, if that is as it should be.",
      ),
    ]);
  });

  it("is one field for each division or lift", () => {
    const fields = read(
      "lift,load_lb,count",
      "back squat,300,4",
      "snatch,0,9",
      "snatch,205,2",
      "snatch,1,1",
      "snatch,600,1",
    );
    expect(fields).toMatchObject({
      ok: true,
      value: [
        { id: "wave/back squat", division: "back squat", finished: [{ value: 300, count: 4 }], leftOut: [] },
        {
          id: "wave/snatch",
          finished: [{ value: 205, count: 2 }],
          // 600 lb are 272 kg
          leftOut: [
            { reason: "not given", rows: 9 },
            { reason: "lighter than any bar", rows: 1 },
            { reason: "more than anybody has lifted", rows: 1 },
          ],
        },
      ],
    });
  });

  it("is one field for each sex and division, scaled ones left out wherever they are told", () => {
    const result = read(
      "Sex,Division,Reps,Count",
      "Men,RX,100,3",
      "men,Scaled,90,2",
      "Women,rx,95,4",
      "Women,Masters,80,1",
    );
    expect(result.ok && result.value.map(({ id, finished, leftOut }) => ({ id, finished, leftOut }))).toEqual(
      [
        { id: "wave/men", finished: [{ value: 100, count: 3 }], leftOut: [{ reason: "scaled", rows: 2 }] },
        { id: "wave/women", finished: [{ value: 95, count: 4 }], leftOut: [] },
        { id: "wave/women masters", finished: [{ value: 80, count: 1 }], leftOut: [] },
      ],
    );
    expect(read("division,reps", "men scaled,90", "men rx,100", "Scaled Men,91")).toMatchObject({
      ok: true,
      value: [{ id: "wave", division: "men", finished: [{ value: 100 }], leftOut: [{ rows: 2 }] }],
    });
  });

  it("may have the unit of each load, or times and reps, in columns of their own", () => {
    expect(only("load,unit,count", "225,lb,3", "245,lb,2")).toMatchObject({
      kind: "load",
      unit: "lb",
      finished: [
        { value: 225, count: 3 },
        { value: 245, count: 2 },
      ],
    });
    expect(tell("load,unit", "225,lb", "100,kg")[0]).toContain("two units stand in one column");
    expect(only("time,reps,count", "19:29,,3", ",214,4")).toMatchObject({
      kind: "time",
      finished: [{ value: 1169, count: 3 }],
      capped: [{ value: 214, count: 4 }],
    });
  });

  it("leaves out what cannot be a result beside all others", () => {
    // 12,753 reps among 180 to 199 are a slip; the best of 240 is not.
    const usual = Array.from({ length: 20 }, (_, at) => `${180 + at},1`);
    expect(only("reps,count", ...usual, "240,1", "12753,1")).toMatchObject({
      finished: expect.arrayContaining([{ value: 240, count: 1 }]) as unknown,
      leftOut: [{ reason: "far from all others", rows: 1 }],
    });
  });

  it("passes over empty lines and columns that a spreadsheet adds", () => {
    expect(only("reps,count,", "100,3,", ",,", "", "90,2,,")).toMatchObject({
      finished: [
        { value: 90, count: 2 },
        { value: 100, count: 3 },
      ],
    });
    expect(tell("reps,count,", "100,3,x")[0]).toContain("this line has 3 cells, and the header has 2");
  });

  it("is read with semicolons, decimal commas, Windows line ends and a byte order mark", () => {
    expect(
      readField({ path: "content/fields/wave.csv", text: "\uFEFFload kg;count\r\n82,5;2\r\n85;1\r\n" }),
    ).toMatchObject({
      ok: true,
      value: [
        {
          unit: "kg",
          finished: [
            { value: 82.5, count: 2 },
            { value: 85, count: 1 },
          ],
        },
      ],
    });
  });
});

describe("a field of scores as published", () => {
  it("sorts times, reps at the cap, scaled and missing ones", () => {
    expect(
      only(
        "score as published",
        "16:14",
        "203 reps - s",
        "5:58 - s",
        "210 reps",
        "0",
        "DNF",
        "19:29",
        "19:29",
      ),
    ).toEqual({
      id: "wave",
      kind: "time",
      finished: [
        { value: 974, count: 1 },
        { value: 1169, count: 2 },
      ],
      capped: [{ value: 210, count: 1 }],
      leftOut: [
        { reason: "scaled", rows: 2 },
        { reason: "not done", rows: 2 },
      ],
    });
  });

  it("is of reps where there is no time, and of loads where each has its unit", () => {
    expect(only("score", "214 reps", "134 reps")).toMatchObject({
      kind: "reps",
      finished: [{ value: 134 }, { value: 214 }],
      capped: [],
    });
    expect(only("score", "185 lb", "205#")).toMatchObject({
      kind: "load",
      unit: "lb",
      finished: [{ value: 185 }, { value: 205 }],
    });
  });

  it("may be headed by the name of the event", () => {
    expect(only("event 3", "14:46", "12:59")).toMatchObject({
      kind: "time",
      finished: [{ value: 779 }, { value: 886 }],
    });
  });

  it("asks once whether the number behind the cap is left or done", () => {
    const rows = ["score", "CAP+28", "CAP + 28", "14:46", "12:00+28", "C+28"];
    expect(tell(...rows)).toEqual([
      lines(
        "2:1: Question",
        "found    CAP+28",
        "because  the number behind the cap can be reps left or reps done, and the two turn the ranking around (and on 3 more lines)",
        "to do    Write a line `# CAP+: reps left` or `# CAP+: reps done` above the header, whichever is meant; one answer settles the file.",
      ),
    ]);
    // 225 in all, 28 left: 197 done
    expect(only("# CAP+: reps left", "# total reps: 225", ...rows)).toMatchObject({
      capped: [{ value: 197, count: 4 }],
    });
    expect(only("# CAP+: reps done", ...rows)).toMatchObject({ capped: [{ value: 28, count: 4 }] });
    expect(tell("# CAP+: reps left", ...rows)[0]).toBe(
      lines(
        "3:1: Question",
        "found    CAP+28",
        "because  without the number of all reps, reps left cannot be told from reps done (and on 3 more lines)",
        "to do    Write a line `# total reps: 225`, with your number, above the header.",
      ),
    );
  });

  it("takes reps short for reps left without asking, and wants all reps of the workout beside them", () => {
    const rows = ["score", "11:47", "28 reps short", "30 left", "171 reps scaled", "not done"];
    // 214 in all: 186 and 184 done
    expect(only("# total reps: 214", ...rows)).toMatchObject({
      finished: [{ value: 707, count: 1 }],
      capped: [
        { value: 184, count: 1 },
        { value: 186, count: 1 },
      ],
      leftOut: [
        { reason: "scaled", rows: 1 },
        { reason: "not done", rows: 1 },
      ],
    });
    expect(tell(...rows)[0]).toContain("because  without the number of all reps, reps left cannot be told");
  });

  it("tells scaled from seconds, and takes no tie-break for a score", () => {
    expect(
      only("score", "1169 s", "19:40 s", "19:31 - s", "203 reps (scaled)", "214 reps (12:30)", "TC", "CUT"),
    ).toMatchObject({
      finished: [{ value: 1169, count: 1 }],
      capped: [{ value: 214, count: 1 }],
      leftOut: [
        { reason: "scaled", rows: 3 },
        { reason: "stopped by the cap without a number of reps", rows: 1 },
        { reason: "not done", rows: 1 },
      ],
    });
  });

  it("asks once for the reps of a round where scores are rounds and reps", () => {
    const rows = ["score", "5+12", "6 rounds + 3 reps", "7 rounds"];
    expect(tell(...rows)).toEqual([
      lines(
        "2:1: Question",
        "found    5+12",
        "because  rounds and reps cannot be compared without the number of reps in a round (and on 2 more lines)",
        "to do    Write a line `# reps per round: 30`, with your number, above the header, or the reps in all.",
      ),
    ]);
    // 5 x 30 + 12, 6 x 30 + 3, 7 x 30
    expect(only("# reps per round: 30", ...rows)).toMatchObject({
      kind: "reps",
      finished: [{ value: 162 }, { value: 183 }, { value: 210 }],
    });
  });

  it("asks what a bare number counts", () => {
    expect(tell("score", "19:29", "214")).toEqual([
      lines(
        "3:1: Question",
        "found    214",
        "because  this number does not say what it counts",
        "to do    Write `214 reps`, or a time such as `11:47`, or name the column by its unit.",
      ),
    ]);
  });
});

describe("a table that cannot be a field", () => {
  it("with two units in one column is refused, whatever the header says", () => {
    const twoUnits = lines(
      "4:1: Fault",
      "wrong    two units stand in one column: kg on line 4, lb on line 3",
      "to do    Convert one of them, or keep two files; no unit is taken for the whole column.",
    );
    expect(tell("load kg", "180", "405 lb", "190kg")).toEqual([twoUnits]);
    expect(tell("score", "", "405 lb", "190kg")).toEqual([twoUnits.replaceAll("line 4", "line 4")]);
  });

  it("with a unit in one cell that is not the header's is refused", () => {
    expect(tell("load lb,count", "225,1", "100 kg,2", "245,1")).toEqual([
      lines(
        "3:1: Fault",
        "wrong    the header says lb, and line 3 is in kg",
        "to do    Convert it, or correct the header; no unit is taken for the whole column.",
      ),
    ]);
  });

  it("without a unit is asked about", () => {
    expect(tell("load,count", "180,1", "395,2")).toEqual([
      lines(
        "2:1: Question",
        "found    180",
        "because  the unit of this load is missing (and on one more line)",
        "allowed  kg or lb",
        "to do    Call the column `load kg` or `load lb`, or put the unit behind each number.",
      ),
    ]);
    expect(tell("value,count", "180,3")).toEqual([
      lines(
        "1:1: Fault",
        "found    value,count",
        "wrong    the header does not say what the values are",
        HEADERS,
        "to do    Call the column by its unit, for example `reps,count`.",
      ),
    ]);
  });

  it.each([
    [["points,count", "3,1"], "points,count", "the header does not say what these columns are: points"],
    [["reps,name", "3,Ada"], "reps,name", "the header does not say what these columns are: name"],
  ])("with unknown columns is told: %j", (rows, found, problem) => {
    expect(tell(...rows)).toEqual([
      lines(
        "1:1: Fault",
        `found    ${found}`,
        `wrong    ${problem}`,
        HEADERS,
        "to do    Name the columns so that the header says what the numbers are, or take them out.",
      ),
    ]);
  });

  it("with two columns that could be the score asks for one of them", () => {
    expect(tell("division,time,max lift kg", "men,9:10,100")).toEqual([
      lines(
        "1:1: Fault",
        "found    division,time,max lift kg",
        "wrong    more than one column could be the score: time, max lift kg",
        HEADERS,
        "to do    Keep one of them here, and give each other one a file of its own.",
      ),
    ]);
  });

  it.each([
    ["sex,station,p5,p10", "men,row,1,2"],
    ["percentile,reps", "50,140"],
    ["p50", "140"],
  ])("of percentiles says that single scores are needed: %s", (...rows) => {
    expect(tell(...rows)).toEqual([
      lines(
        "1:1: Fault",
        `found    ${rows[0]}`,
        "wrong    this is a table of percentiles, and places need single scores with how many athletes have each",
        HEADERS,
        "to do    Use a table with one score a line, or with each score and how many athletes have it.",
      ),
    ]);
  });

  it("proposes the name of a column with a slip", () => {
    expect(tell("rep,coun", "3,1")[0]).toContain("\n  nearest  count\n");
  });

  it("with different kinds of result is refused", () => {
    expect(tell("result,value,count", "reps,100,1", "calories,100,1")).toEqual([
      lines(
        "3:1: Fault",
        "wrong    different kinds of result stand in one table: calories on line 3, reps on line 2",
        "to do    Keep one file for each kind of result.",
      ),
    ]);
    expect(tell("result,value,count", "banana,100,1")).toEqual([
      lines(
        "2:1: Fault",
        "found    banana",
        "wrong    this kind of result is not known",
        "allowed  finish, capped, reps, calories, metres, load",
        "to do    Write what kind of result it is.",
      ),
    ]);
  });

  it.each([
    [
      [""],
      "1:1: Fault",
      undefined,
      "the file holds no table",
      "Write a header line, and one result a line below it.",
    ],
    [
      ["19:29", "12:15"],
      "1:1: Fault",
      "19:29",
      "the first line already holds results",
      "Write a header line above it that says what the numbers are, such as `reps,count`.",
    ],
    [
      ["load_kg,count", "82,5,3"],
      "2:1: Fault",
      "82,5,3",
      "this line has 3 cells, and the header has 2",
      "Check the separators (here: commas); a decimal comma needs semicolons between the cells.",
    ],
    [
      ["reps,count", '"18,3'],
      "2:1: Fault",
      undefined,
      "the quotes in this line do not fit together",
      "Look for a quote that is opened and not closed, here or above, and delete it or close it.",
    ],
    [
      ["reps,count", "18,x"],
      "2:1: Fault",
      "x",
      "the count is no whole number up to a million",
      "Write how many athletes have this result.",
    ],
    [
      ["reps,count", "18,9007199254740993"],
      "2:1: Fault",
      "9007199254740993",
      "the count is no whole number up to a million",
      "Write how many athletes have this result.",
    ],
    [
      ["score", "0", "dnf"],
      "1:1: Fault",
      undefined,
      "no result is left to compare with",
      "Add results as prescribed, one a line.",
    ],
  ])("%j is told", (rows, place, found, problem, remedy) => {
    const told = [
      place,
      ...(found === undefined ? [] : [`found    ${found}`]),
      `wrong    ${problem}`,
      `to do    ${remedy}`,
    ] as const;
    expect(tell(...rows)).toEqual([lines(...told)]);
  });

  it("with more than one unreadable result in twenty is refused, with fewer they are counted", () => {
    const good = Array.from({ length: 19 }, (_, index) => `${10 + index}:00`);
    expect(only("score", ...good, "fast")).toMatchObject({
      leftOut: [{ reason: "could not be read", rows: 1 }],
    });
    expect(tell("score", ...good.slice(1), "fast")).toEqual([
      lines(
        "20:1: Fault",
        "wrong    more than one result in twenty could not be read",
        "allowed  `11:47`, `186 reps`, `28 reps short`, `185 lb`, `not done`, `scaled` behind a scaled result",
        "to do    Check that the column holds one score in each line.",
      ),
    ]);
  });

  it("with a remark that cannot be read is told, while remarks for people are passed over", () => {
    expect(tell("# collected by hand", "# source: public results", "# cap: soon", "reps", "3")).toEqual([
      lines(
        "2:1: Fault",
        "found    source: public results",
        "wrong    this remark cannot be read",
        "allowed  `# unit: kg`, `# cap: 20:00`, `# CAP+: reps left`, `# CAP+: reps done`, `# total reps: 225`, `# reps per round: 30`, `# division: women`",
        "to do    Correct the remark, or leave the colon out if it is only for people.",
      ),
      lines(
        "3:1: Fault",
        "found    cap: soon",
        "wrong    this remark cannot be read",
        "allowed  `# unit: kg`, `# cap: 20:00`, `# CAP+: reps left`, `# CAP+: reps done`, `# total reps: 225`, `# reps per round: 30`, `# division: women`",
        "to do    Correct the remark, or leave the colon out if it is only for people.",
      ),
    ]);
    expect(only("# unit: lb", "# division: women", "load", "185")).toMatchObject({
      unit: "lb",
      division: "women",
    });
    expect(only("# cap: 20:00", "seconds", "1169", "1201")).toMatchObject({
      leftOut: [{ reason: "later than the cap", rows: 1 }],
    });
  });

  it("never makes the reader throw", () => {
    const cells = fc.constantFrom(
      "score",
      "reps",
      "load kg",
      "count",
      "19:29",
      "214",
      "CAP+3",
      "- s",
      '"',
      ";",
      ",",
      "\n",
      "#",
      ":",
      "p5",
      "0",
      "kg",
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(cells).map((parts) => parts.join("")),
        ),
        (text) => {
          const result = readField({ path: "content/fields/x.csv", text });
          expect(result.ok ? result.value.length > 0 : result.faults.length > 0).toBe(true);
        },
      ),
      { numRuns: 500 },
    );
  });

  it("reads back the counts it is given", () => {
    const counts = fc.uniqueArray(
      fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 9000 })),
      {
        selector: ([value]) => value,
        minLength: 1,
      },
    );
    fc.assert(
      fc.property(counts, (written) => {
        const field = only("reps,count", ...written.map(([value, count]) => `${value},${count}`));
        const sorted = written
          .toSorted(([one], [other]) => one - other)
          .map(([value, count]) => ({ value, count }));
        expect(field).toMatchObject({ finished: sorted });
      }),
    );
  });
});
