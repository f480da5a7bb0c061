import { describe, expect, it } from "vitest";
import { joinRounds } from "../../../src/reading/tables/join-rounds.ts";
import { readTable } from "../../../src/reading/read-table.ts";
import { tableContext } from "../../support/table-verdicts.ts";

const [workout] = tableContext.workouts.values();
if (!workout) throw new Error("The context of tables has no workout.");
const { title } = workout;
const one = { ...tableContext, workouts: new Map([[workout.id, workout]]) };
const sheet = (...rows: readonly (readonly string[])[]) => ({ name: "crew.csv", rows });

describe("splits in a column for each round", () => {
  it("become one column of splits of the workout before them", () => {
    const joined = joinRounds(
      sheet(["Name", title, "R1", "R2", "R3", "Level"], ["Ada", "9:00", "2:50", "5:58", "9:00", "new"]),
      0,
      tableContext,
    );
    expect(joined.rows).toEqual([
      ["Name", title, `${title} splits`, "", "", "Level"],
      ["Ada", "9:00", "2:50, 5:58, 9:00", "", "", "new"],
    ]);
  });

  it("are known by any usual word, with the workout in the heading or the only one there is", () => {
    const named = joinRounds(
      sheet(["Name", `${title} round 1`, `${title} round 2`], ["Ada", "2:50", "5:58"]),
      0,
      tableContext,
    );
    expect(named.rows[0]).toEqual(["Name", `${title} splits`, ""]);
    expect(joinRounds(sheet(["Name", "Split 1", "Split 2"]), 0, one).rows[0]).toEqual([
      "Name",
      `${title} splits`,
      "",
    ]);
  });

  it("leave out what was not reached, and say what is missing in between", () => {
    const joined = joinRounds(
      sheet(["Name", "R1", "R2", "R3"], ["Ada", "2:50", "", "9:00"], ["Bo", "3:10", "", ""]),
      0,
      one,
    );
    expect(joined.rows.slice(1).map((row) => row[1])).toEqual(["2:50, ?, 9:00", "3:10"]);
  });

  it("stay as they are where nothing says of which workout, or they do not count from one", () => {
    const several = new Map([
      [workout.id, workout],
      ["other", { ...workout, id: "other", title: "Other" }],
    ]);
    for (const headings of [
      ["Name", "R1", "R2"],
      ["Name", title, "R2", "R3"],
      ["Name", title, "R1", "Level"],
    ])
      expect(joinRounds(sheet(headings), 0, { ...one, workouts: several }).rows[0]).toEqual(headings);
  });

  it("are read as the splits of the result beside them", () => {
    const read = readTable(
      sheet(["Name", "Level", title, "R1", "R2", "R3"], ["Ada", "new", "9:00", "2:50", "5:58", "9:00"]),
      one,
      new Map(),
    );
    const puts = read?.athletes[0]?.cells.flatMap((cell) => cell.puts);
    expect(JSON.stringify(puts)).toContain('"splits":["2:50","5:58","9:00"]');
  });
});
