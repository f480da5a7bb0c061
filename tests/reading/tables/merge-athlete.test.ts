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

  it("keeps efforts, sets, comments and order that were typed by hand, beside those of the table", () => {
    const seconds = fc
      .integer({ min: 380, max: 599 })
      .map((time) => `${Math.floor(time / 60)}:${String(time % 60).padStart(2, "0")}`);
    const counts = fc.integer({ min: 1, max: 30 }).map(String);
    const row = fc.record({
      row: fc.option(seconds, { nil: undefined }),
      ski: fc.option(seconds, { nil: undefined }),
      pullUps: fc.option(counts, { nil: undefined }),
    });
    const cellsOf = ({
      row: rowed,
      ski,
      pullUps,
    }: {
      row?: string | undefined;
      ski?: string | undefined;
      pullUps?: string | undefined;
    }): readonly NewCell[] => [
      ...(rowed === undefined ? [] : [effort("2k row", rowed, `row 2000 m in ${rowed}`)]),
      ...(ski === undefined ? [] : [effort("2k ski", ski, `ski erg 2000 m in ${ski}`)]),
      ...(pullUps === undefined
        ? []
        : [
            {
              heading: "PU",
              raw: pullUps,
              cell: "t.csv!PU",
              puts: [{ entry: "unbroken", key: "pull-up", value: pullUps }],
            },
          ]),
    ];
    const effort = (heading: string, raw: string, value: string): NewCell => ({
      heading,
      raw,
      cell: `t.csv!${heading}`,
      puts: [{ entry: "efforts", listed: true, value }],
    });
    const byHand = fc.record({
      efforts: fc.array(seconds, { maxLength: 3 }),
      dip: fc.option(counts, { nil: undefined }),
      remark: fc.boolean(),
    });
    fc.assert(
      fc.property(row, byHand, row, (first, hand, second) => {
        const once = mergeAthlete("Ana", undefined, cellsOf(first), { earlier: {}, find, counts: undecided });
        const held = parse(once.text) as { efforts?: string[]; unbroken?: Record<string, string> };
        const own = hand.efforts.map((time, at) => `run ${at + 1}000 m in ${time}`);
        const lines = [...own, ...(held.efforts ?? [])];
        const unbroken = { ...(hand.dip === undefined ? {} : { "ring dip": hand.dip }), ...held.unbroken };
        const edited = [
          ...(hand.remark ? ["# typed by hand"] : []),
          "name: Ana",
          `efforts: ${JSON.stringify(lines)}`,
          `unbroken: ${JSON.stringify(unbroken)}`,
          "note: by hand",
          "",
        ].join("\n");
        const twice = mergeAthlete("Ana", edited, cellsOf(second), {
          earlier: seen(cellsOf(first)),
          find,
          counts: undecided,
        });
        const after = parse(twice.text) as {
          efforts?: string[];
          unbroken?: Record<string, string | number>;
          note: string;
        };
        // What the table says now where it says something, else what it said before: each once, and all of one's own.
        const now = [
          ...((second.row ?? first.row) === undefined
            ? []
            : [`row 2000 m in ${second.row ?? first.row ?? ""}`]),
          ...((second.ski ?? first.ski) === undefined
            ? []
            : [`ski erg 2000 m in ${second.ski ?? first.ski ?? ""}`]),
        ];
        expect((after.efforts ?? []).toSorted()).toEqual([...own, ...now].toSorted());
        const pullUps = second.pullUps ?? first.pullUps;
        const sets = Object.entries(after.unbroken ?? {}).map(([movement, reps]) => [movement, String(reps)]);
        expect(Object.fromEntries(sets)).toEqual({
          ...(hand.dip === undefined ? {} : { "ring dip": hand.dip }),
          ...(pullUps === undefined ? {} : { "pull-up": pullUps }),
        });
        expect(after.note).toBe("by hand");
        expect(twice.text.startsWith("# typed by hand")).toBe(hand.remark);
      }),
      { seed: 17, numRuns: 300 },
    );
  });

  it("takes back what a cell puts under another name now, and nothing that was changed by hand", () => {
    const put = (raw: string, key: string): NewCell => ({
      heading: "PU",
      raw,
      cell: "t.csv!PU",
      puts: [{ entry: "unbroken", key, value: "12" }],
    });
    const again = (file: string) =>
      mergeAthlete("Ana", file, [put("12 strict", "strict pull-up")], {
        earlier: seen([put("12", "pull-up")]),
        find,
        counts: undecided,
      }).text;
    expect(again('name: Ana\nunbroken:\n  pull-up: "12"\n')).toBe(
      "name: Ana\nunbroken:\n  strict pull-up: 12\n",
    );
    expect(again('name: Ana\nunbroken:\n  pull-up: "15"\n')).toBe(
      'name: Ana\nunbroken:\n  pull-up: "15"\n  strict pull-up: 12\n',
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
