import { describe, expect, it } from "vitest";
import { readData } from "../../src/reading/read-data.ts";
import type { SourceFile } from "../../src/reading/files/source-file.ts";
import { lines, tellFaults } from "../support/tell-faults.ts";

const file = (path: string, ...rows: readonly string[]): SourceFile => ({ path, text: rows.join("\n") });

const movement = (id: string, ...more: readonly string[]): SourceFile =>
  file(
    `content/movements/${id}.mdx`,
    "---",
    `name: ${id.replaceAll("-", " ")}`,
    `plural: ${id.replaceAll("-", " ")}s`,
    `short: ${id.slice(0, 12)}`,
    "kind: bodyweight",
    "counts: [reps]",
    "taxes: {legs: 50%}",
    "pace:",
    "  steady: {new: 8 s, regular: 7 s, competitor: 6 s, elite: 5 s}",
    "  fastest: {new: 4 s, regular: 3.5 s, competitor: 3 s, elite: 2.5 s}",
    "  unbroken: {new: 5, regular: 10, competitor: 20, elite: 30}",
    "  by sex: {female: 1, male: 1}",
    "  source: made up for tests",
    "  confidence: judgement",
    "speeding up: {power: 2, source: made up for tests, confidence: judgement}",
    "set up: {time: 2 s, source: made up for tests, confidence: judgement}",
    "standards: [Stand up.]",
    ...more,
    "---",
  );
const workout = (id: string, ...more: readonly string[]): SourceFile =>
  file(
    `content/workouts/${id}.mdx`,
    "---",
    `title: ${id}`,
    "amrap: 10:00",
    "work:",
    "  - 10 burpee",
    ...more,
    "---",
    "",
  );
const athlete = (id: string, name: string, ...more: readonly string[]): SourceFile =>
  file(`athletes/${id}.yaml`, `name: ${name}`, "level: new", ...more);
const competition = file(
  "content/competitions/autumn.yaml",
  "name: Autumn",
  "zone: Europe/Oslo",
  "opens: 2026-11-26 18:00",
  "closes: 2026-11-30 20:00",
);
const gym = file("content/gyms/mill.yaml", "name: The Mill", "bars: 20 kg", "plates: {20 kg: 2}");
const library = [movement("burpee"), movement("air-squat")];

const told = (own: readonly SourceFile[], builtIn: readonly SourceFile[] = library): readonly string[] => {
  const result = readData(builtIn, own);
  const faults = result.ok ? result.notices : result.faults;
  return tellFaults({ ok: false, faults: faults.map((fault) => ({ ...fault })) }).map(
    (text, index) => `${faults[index]?.place.file ?? ""}:${text}`,
  );
};

describe("reading a data folder", () => {
  it("gives everything checked, by name and in order", () => {
    const own = [
      file("content/settings.yaml", "title: Lantern Week", "gym: mill", "dates: day first"),
      gym,
      competition,
      file("content/fields/wave.csv", "reps,count", "100,3"),
      workout("low-water", "competition: autumn", "field: wave"),
      file("content/bands/regular.yaml", "title: Regular", "order: 2", "profile: {level: regular}"),
      file("content/bands/new.yaml", "title: New", "order: 1", "profile: {level: new}"),
      athlete(
        "bo",
        "Bo",
        "efforts: [{effort: 60 burpees in 7:00, tested: 3/4/26}]",
        "starts: {low-water: 2026-11-27 18:00}",
      ),
      athlete("ada", "Ada", "gym: mill"),
    ];
    const result = readData(library, own);
    expect(tellFaults(result).filter((text) => !text.includes("Notice"))).toEqual([]);
    const data = result.ok ? result.value : undefined;
    expect(data?.settings).toMatchObject({ title: "Lantern Week", gym: "mill", dates: "day-first" });
    expect(data?.athletes.map(({ id }) => id)).toEqual(["ada", "bo"]);
    expect(data?.athletes[1]?.efforts[0]).toMatchObject({ movement: "burpee", date: "2026-04-03" });
    expect(data?.bands.map(({ id }) => id)).toEqual(["new", "regular"]);
    expect([...(data?.gyms.keys() ?? [])]).toEqual(["mill"]);
    expect(data?.competitions.get("autumn")).toMatchObject({ id: "autumn", zone: "Europe/Oslo" });
    expect(data?.fields.get("wave")).toMatchObject({ id: "wave", kind: "reps" });
    expect(data?.workouts.map(({ id }) => id)).toEqual(["low-water"]);
    expect([...(data?.library.movements.keys() ?? [])]).toEqual(["air-squat", "burpee"]);
    expect(data?.notices).toHaveLength(1);
  });

  it("needs no settings, and takes empty ones for none", () => {
    expect(readData(library, [])).toMatchObject({
      ok: true,
      value: { settings: { title: "Strategy", readAt: 1.5 } },
    });
    expect(readData(library, [file("content/settings.yaml", "# nothing yet", "")])).toMatchObject({
      ok: true,
    });
  });

  it("lets an own file replace a built-in one of the same name", () => {
    const own = file(
      "content/movements/burpee.mdx",
      ...movement("burpee").text.replace("short: burpee", "short: own").split("\n"),
    );
    const result = readData(library, [own]);
    expect(result.ok && result.value.library.movements.get("burpee")?.short).toBe("own");
    // The tool's own folder is both: a file given twice is read once.
    expect(readData(library, library)).toMatchObject({ ok: true });
  });

  it("tells all faults of all files at once, in the order of files and lines", () => {
    const own = [
      file("content/settings.yaml", "gym: mil"),
      gym,
      file("content/competitions/autumn.yaml", "name: Autumn", "zone: Oslo", "opens: soon"),
      file("content/fields/wave.csv", "points", "3"),
      workout("low-water", "competition: autmn", "field: waves"),
      athlete(
        "ada",
        "Ada",
        "lifts: {burpy: 3}",
        "starts: {lowwater: 2026-11-27 18:00, low-water: 2026-11-27 18:00}",
      ),
      athlete("bo", "ada.", "gym: mil"),
    ];
    expect(
      told(own).map((text) =>
        text
          .split("\n")
          .slice(0, 2)
          .join(" | ")
          .replace(/ {2}found {4}/, ""),
      ),
    ).toEqual(
      [
        "athletes/ada.yaml:3:9: Fault | burpy",
        "athletes/ada.yaml:3:16: Question | 3",
        "athletes/ada.yaml:4:10: Fault | lowwater",
        "athletes/bo.yaml:3:6: Fault | mil",
        "content/competitions/autumn.yaml:2:7: Fault | Oslo",
        "content/competitions/autumn.yaml:3:8: Fault | soon",
        "content/competitions/autumn.yaml:1:1: Fault |   wrong    `closes` is missing",
        "content/fields/wave.csv:2:1: Question | 3",
        "content/settings.yaml:1:6: Fault | mil",
        "content/workouts/low-water.mdx:6:14: Fault | autmn",
        "content/workouts/low-water.mdx:7:8: Fault | waves",
      ].toSorted((one, other) => {
        const key = (text: string): string =>
          text.replace(
            /(\d+):(\d+)/,
            (_all, line: string, column: string) => line.padStart(4, "0") + column.padStart(4, "0"),
          );
        return key(one) < key(other) ? -1 : 1;
      }),
    );
  });

  it("does not tell what only follows from another file's fault", () => {
    const broken = file("content/movements/burpee.mdx", "---", "name: burpee", "---");
    const own = [
      workout("low-water", "competition: autumn"),
      file("content/competitions/autumn.yaml", "name: A"),
      athlete("ada", "Ada", "cannot: burpees", "starts: {low-water: 2026-11-27 18:00}"),
    ];
    const files = told(own, [broken, movement("air-squat")]).map((text) => text.slice(0, text.indexOf(":")));
    expect(new Set(files)).toEqual(
      new Set(["content/movements/burpee.mdx", "content/competitions/autumn.yaml"]),
    );
  });
});

describe("names in other files", () => {
  it("are told with the nearest that exists", () => {
    expect(
      told([
        gym,
        competition,
        file("content/fields/wave.csv", "reps", "3"),
        workout("low-water", "competition: autmn", "field: waves"),
      ]),
    ).toEqual([
      lines(
        "content/workouts/low-water.mdx:6:14: Fault",
        "found    autmn",
        "wrong    there is no competition of this name",
        "allowed  autumn",
        "nearest  autumn",
        "to do    Write `autumn`.",
      ),
      lines(
        "content/workouts/low-water.mdx:7:8: Fault",
        "found    waves",
        "wrong    there is no field of this name",
        "allowed  wave",
        "nearest  wave",
        "to do    Write `wave`.",
      ),
    ]);
    expect(told([workout("low-water", "field: waves")])).toEqual([
      lines(
        "content/workouts/low-water.mdx:6:8: Fault",
        "found    waves",
        "wrong    there is no field of this name",
        "allowed  none yet: content/fields holds no file",
        "to do    Write the name of a file in content/fields, without its ending.",
      ),
    ]);
  });

  it("fit in kind: a field of loads is none of an AMRAP", () => {
    expect(
      told([file("content/fields/wave.csv", "load kg", "80"), workout("low-water", "field: wave")]),
    ).toEqual([
      lines(
        "content/workouts/low-water.mdx:6:8: Fault",
        "found    wave",
        "wrong    the field holds load, and no part of the workout is scored so",
        "allowed  a field of reps",
        "to do    Name a field of results of this workout, or leave the entry out.",
      ),
    ]);
  });

  it("of lifts with a load added to what the library has no loaded form of are told", () => {
    expect(told([athlete("ada", "Ada", "lifts: {air squat: BW+40 kg}")])).toEqual([
      lines(
        "athletes/ada.yaml:3:8: Notice",
        "found    air squat: BW+40 kg",
        "because  no plan rests on a load added to the air squat, as the library has no movement done with one",
        "to know  Nothing; or describe the movement with its load in content/movements.",
      ),
    ]);
  });

  it("of fields may be one for each part, or one for each division", () => {
    const parts = (field: string): SourceFile =>
      file(
        "content/workouts/low-water.mdx",
        "---",
        "title: Low Water",
        "parts:",
        "  - {name: a, amrap: 5:00, work: [10 burpee]}",
        "  - {name: b, starts: after a, for time: cap 9:00, work: [20 burpee]}",
        `field: ${field}`,
        "---",
      );
    const reps = file("content/fields/reps.csv", "reps", "100");
    const times = file("content/fields/times.csv", "seconds", "100");
    const problems = (field: string): readonly string[] =>
      told([reps, times, parts(field)]).map((text) => /wrong {4}.*/.exec(text)?.[0] ?? text);
    expect(problems("{a: reps, b: times}")).toEqual([]);
    expect(problems("{a: reps/nothing}")).toEqual([]);
    expect(problems("{b: reps}")).toEqual(["wrong    the field holds reps, and part b is not scored so"]);
    expect(problems("{a: rep}")).toEqual(["wrong    there is no field of this name"]);
    expect(problems("reps/rep")).toEqual(["wrong    there is no field of this name"]);
    expect(problems("{c: reps}")).toEqual(['wrong    no part is called "c"']);
    expect(problems("reps/reps/reps")).toEqual(["wrong    3 fields for 2 divisions"]);
  });

  it("of fields are told where the file is parted into divisions of which none is the workout's", () => {
    const wave = file("content/fields/wave.csv", "division,reps", "junior,100", "masters,90");
    expect(told([wave, workout("low-water", "field: wave")])).toEqual([
      lines(
        "content/workouts/low-water.mdx:6:8: Fault",
        "found    wave",
        "wrong    this field is of junior, masters, and the workout is of men, women",
        "allowed  results of men, women; without a column `division` or `lift` they are taken for everybody's",
        "to do    Name the divisions of the field and of the workout alike, or name another field.",
      ),
    ]);
    const women = file("content/fields/wave.csv", "sex,reps", "F,90", "M,100");
    expect(told([women, workout("low-water", "field: wave")])).toEqual([]);
  });

  it("of movements are checked inside the library", () => {
    expect(told([], [movement("burpee", "easier: [air squatt]"), movement("air-squat")])).toEqual([
      lines(
        "content/movements/burpee.mdx:18:10: Fault",
        "found    air squatt",
        "wrong    there is no movement of this name",
        "nearest  air squat",
        "to do    Write `air squat`.",
      ),
    ]);
    expect(
      told(
        [],
        [movement("burpee"), file("content/movements/other.mdx", ...movement("burpee").text.split("\n"))],
      ),
    ).toEqual([
      lines(
        "content/movements/other.mdx:2:7: Fault",
        "found    burpee",
        "wrong    the movement in content/movements/burpee.mdx has the same name",
        "to do    Give one of the two another name.",
      ),
    ]);
  });

  it("become part of an address, those of workouts", () => {
    expect(told([workout("Low Wäter")])).toEqual([
      lines(
        "content/workouts/Low Wäter.mdx:1:1: Fault",
        "found    Low Wäter",
        "wrong    the name of the file becomes part of an address, and cannot be used there",
        "allowed  small letters a to z, digits and hyphens",
        "to do    Rename the file to low-water.mdx.",
      ),
    ]);
  });
});

describe("names of athletes", () => {
  const sameName = (place: string, found: string, other: string): string =>
    lines(
      `${place}: Question`,
      `found    ${found}`,
      `because  this name is also that of ${other}; nobody is put together by name alone`,
      "to do    Keep one file if they are one person, else add to a name what tells them apart, such as `(evening)`.",
    );

  it("that differ in case, spaces and points only are asked about", () => {
    const own = [
      athlete("a", "Sam K."),
      athlete("b", "sam k"),
      athlete("c", "Sam K. (PM class)"),
      athlete("d", "JOSÉ"),
      athlete("e", "José"),
    ];
    expect(told(own)).toEqual([
      sameName("athletes/b.yaml:1:7", "sam k", '"Sam K." in athletes/a.yaml'),
      sameName("athletes/e.yaml:1:7", "José", '"JOSÉ" in athletes/d.yaml'),
    ]);
  });

  it("that differ in accents are told, and read as two people", () => {
    expect(told([athlete("a", "Jose"), athlete("b", "José")])).toEqual([
      lines(
        "athletes/b.yaml:1:7: Notice",
        "found    José",
        'because  the name differs only in accents from "Jose" in athletes/a.yaml; read as two people',
        "to know  Nothing, if they are two people; else keep one file.",
      ),
    ]);
  });

  it("in other scripts are kept as they are", () => {
    const names = ["Łukasz", "Zoë", "يوسف", "美咲", "O’Neill-Sørby"];
    const result = readData(
      library,
      names.map((name, index) => athlete(`a${index}`, `${name} `)),
    );
    expect(result.ok && result.value.athletes.map(({ name }) => name)).toEqual(names);
  });

  it("have divisions that workouts have, or others, but no slips", () => {
    const own = [
      workout("low-water"),
      athlete("a", "A", "division: womn"),
      athlete("b", "B", "division: masters men"),
      athlete("c", "C", "division: Women"),
    ];
    expect(told(own)).toEqual([
      lines(
        "athletes/a.yaml:3:11: Question",
        "found    womn",
        "because  no workout has a division of this name",
        "allowed  men, women",
        "nearest  women",
        "to do    Write `women`.",
      ),
    ]);
  });
});

describe("files in other places", () => {
  const PLACES =
    "content/movements/*.mdx, content/warm-ups/*.mdx, content/recovery/*.mdx, content/cautions/*.mdx, content/workouts/*.mdx, content/bands/*.yaml, content/gyms/*.yaml, content/competitions/*.yaml, content/fields/*.csv, athletes/*.yaml, content/settings.yaml";

  it("are told, with where they belong", () => {
    expect(
      told([
        file("content/athletes/ada.yaml", "name: Ada"),
        file("content/notes/plan.md", "x"),
        file("ada.yaml", "x"),
      ]),
    ).toEqual([
      lines(
        "ada.yaml:1:1: Fault",
        "found    ada.yaml",
        "wrong    a file in this place is not read",
        `allowed  ${PLACES}`,
        "to do    Move it to one of the places allowed, or out of this folder.",
      ),
      lines(
        "content/athletes/ada.yaml:1:1: Fault",
        "found    ada.yaml",
        "wrong    a file in this place is not read",
        `allowed  ${PLACES}`,
        "nearest  athletes",
        "to do    Move it to athletes/ada.yaml.",
      ),
      lines(
        "content/notes/plan.md:1:1: Fault",
        "found    plan.md",
        "wrong    a file in this place is not read",
        `allowed  ${PLACES}`,
        "to do    Move it to one of the places allowed, or out of this folder.",
      ),
    ]);
  });

  it("with another ending are told, with the right one", () => {
    expect(told([file("content/workouts/low-water.md", "x"), file("athletes/team.csv", "x")])).toEqual([
      lines(
        "athletes/team.csv:1:1: Fault",
        "found    team.csv",
        "wrong    a file of this kind is not read",
        "to do    Write its contents into athletes/team.yaml, or move the file elsewhere.",
      ),
      lines(
        "content/workouts/low-water.md:1:1: Fault",
        "found    low-water.md",
        "wrong    files in content/workouts end in .mdx",
        "to do    Rename the file to content/workouts/low-water.mdx, if it holds what such a file holds.",
      ),
    ]);
  });

  it("of the same name are told apart", () => {
    expect(
      told([athlete("ada", "Ada"), file("athletes/evening/Ada.yml", "name: Ada B.", "level: new")]),
    ).toEqual([
      lines(
        "athletes/evening/Ada.yml:1:1: Fault",
        "found    Ada",
        "wrong    another file has the same name: athletes/ada.yaml",
        "to do    Rename one of the two; other files call them by this name.",
      ),
    ]);
  });

  it("are passed over where nobody has written for the tool", () => {
    const others = [
      "content/README.md",
      "content/workouts/.hidden.mdx",
      "athletes/ada.yaml~",
      "content/workouts/floor.png",
      "content/pictures/floor.jpg",
    ];
    expect(told(others.map((path) => file(path, "x")))).toEqual([]);
  });

  it("may lie in folders of their own below, and end in .yml", () => {
    const result = readData(library, [file("athletes/evening/ada.yml", "name: Ada", "level: new")]);
    expect(result.ok && result.value.athletes.map(({ id }) => id)).toEqual(["ada"]);
  });
});
