import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { mergeAthlete, type NewCell } from "../../../src/reading/tables/merge-athlete.ts";
import { tableContext } from "../../support/table-verdicts.ts";

const find = tableContext.findMovement;
const undecided = () => undefined;
const cell = (heading: string, raw: string, key: string): NewCell => ({
  heading,
  raw,
  cell: `t.csv!${heading}`,
  puts: [{ entry: "lifts", key, value: `${raw} kg` }],
});
const seen = (cells: readonly NewCell[]) =>
  Object.fromEntries(cells.map(({ heading, raw, puts }) => [heading, { raw, puts }]));

describe("putting the cells of a table into a file", () => {
  it("writes a file a person would write", () => {
    const cells: readonly NewCell[] = [
      cell("BS", "110", "back squat"),
      { heading: "Level", raw: "RX", cell: "t.csv!B", puts: [{ entry: "level", value: "competitor" }] },
      {
        heading: "2k",
        raw: "7:05",
        cell: "t.csv!C",
        puts: [{ entry: "efforts", listed: true, value: "row 2000 m in 7:05" }],
      },
      {
        heading: "PU",
        raw: "22",
        cell: "t.csv!D",
        puts: [{ entry: "unbroken", key: "pull-up", value: "22" }],
      },
    ];
    expect(mergeAthlete("Zoë Ö", undefined, cells, { earlier: {}, find, counts: undecided }).text).toBe(
      "name: Zoë Ö\nlevel: competitor\nlifts:\n  back squat: 110 kg\nefforts:\n  - row 2000 m in 7:05\nunbroken:\n  pull-up: 22\n",
    );
  });

  it("finds a movement under the name it has in the file, and keeps comments", () => {
    const file = "# mine\nname: Ana\nlevel: new\nlifts:\n  C&J: 80 kg # in May\n";
    const before = [cell("CJ", "80", "clean and jerk")];
    const merged = mergeAthlete("Ana", file, [cell("CJ", "85", "clean and jerk")], {
      earlier: seen(before),
      find,
      counts: undecided,
    });
    expect(merged.text).toBe("# mine\nname: Ana\nlevel: new\nlifts:\n  C&J: 85 kg # in May\n");
    expect(merged.changes).toEqual([
      { what: "clean and jerk", from: "80 kg", to: "85 kg", cell: "t.csv!CJ", kind: "changed" },
    ]);
  });

  it("takes the words of an injury out once they are answered", () => {
    const put = (value: string, listed?: true): NewCell => ({
      heading: "Injury",
      raw: value,
      cell: "t.csv!I",
      puts: [{ entry: "limits", ...(listed ? { listed } : {}), value }],
    });
    const open = mergeAthlete("Ana", undefined, [put("sore?", true)], {
      earlier: {},
      find,
      counts: undecided,
    });
    expect(open.text).toBe("name: Ana\nlimits:\n  - sore?\n");
    const settled = mergeAthlete("Ana", open.text, [put("none")], {
      earlier: seen([put("sore?", true)]),
      find,
      counts: undecided,
    });
    expect(settled.text).toBe("name: Ana\nlimits: none\n");
  });

  it("leaves a file with faults alone", () => {
    const file = "name: [Ana\n";
    expect(
      mergeAthlete("Ana", file, [cell("BS", "1", "back squat")], { earlier: {}, find, counts: undecided }),
    ).toEqual({
      text: file,
      changes: [],
    });
  });
});

const LIFTS = ["back squat", "front squat", "deadlift", "snatch", "clean and jerk"] as const;
const load = fc.integer({ min: 40, max: 200 }).map(String);
const table = fc.tuple(...LIFTS.map(() => fc.option(load, { nil: undefined })));

describe("a second import", () => {
  it("loses nothing that was typed by hand, and changes only what changed in the table", () => {
    const edits = fc.array(
      fc.record({ lift: fc.constantFrom(...LIFTS, "bench press"), to: fc.option(load, { nil: undefined }) }),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(table, edits, table, (first, byHand, second) => {
        const cellsOf = (row: readonly (string | undefined)[]): readonly NewCell[] =>
          row.flatMap((raw, index) =>
            raw === undefined ? [] : [cell(`c${index}`, raw, LIFTS[index] ?? "")],
          );
        const once = mergeAthlete("Ana", undefined, cellsOf(first), { earlier: {}, find, counts: undecided });
        const file = parse(once.text) as { lifts?: Record<string, string> };
        const lifts: Record<string, string> = { ...file.lifts };
        for (const { lift, to } of byHand) {
          if (to === undefined) Reflect.deleteProperty(lifts, lift);
          else lifts[lift] = `${to} kg by hand`;
        }
        const edited = `name: Ana\nnote: typed by hand\nlifts: ${JSON.stringify(lifts)}\n`;
        const earlier = seen(cellsOf(first));
        const twice = mergeAthlete("Ana", edited, cellsOf(second), { earlier, find, counts: undecided });
        const after = parse(twice.text) as { note: string; lifts: Record<string, string> };
        expect(after.note).toBe("typed by hand");
        for (const [index, lift] of LIFTS.entries()) {
          const [was, is] = [first[index], second[index]];
          const held = lifts[lift];
          const untouched = held !== undefined && held === `${was ?? ""} kg`;
          const isNew = held === undefined && was === undefined;
          const expected = is !== undefined && is !== was && (untouched || isNew) ? `${is} kg` : held;
          expect(after.lifts[lift]).toBe(expected);
        }
        expect(after.lifts["bench press"]).toBe(lifts["bench press"]);
      }),
      { seed: 17, numRuns: 300 },
    );
  });

  it("of the same table changes no byte", () => {
    fc.assert(
      fc.property(table, (row) => {
        const cells = row.flatMap((raw, index) =>
          raw === undefined ? [] : [cell(`c${index}`, raw, LIFTS[index] ?? "")],
        );
        const once = mergeAthlete("Ana", undefined, cells, { earlier: {}, find, counts: undecided });
        expect(
          mergeAthlete("Ana", once.text, cells, { earlier: seen(cells), find, counts: undecided }),
        ).toEqual({
          text: once.text,
          changes: [],
        });
      }),
      { seed: 17, numRuns: 100 },
    );
  });
});
