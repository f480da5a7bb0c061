import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { describe, expect, it } from "vitest";
import { briefText } from "../../src/cli/brief-text.ts";
import { makePlan } from "../../src/compute/make-plan.ts";
import { demoData } from "../support/demo-data.ts";

/** What a coach crossed out of a brief, what was added, and what would still be changed and why it stands. */
type Note = {
  readonly brief: string;
  readonly gone: readonly string[];
  readonly added: readonly string[];
  readonly stays?: readonly { readonly line: string; readonly why: string }[];
};

const notes = parse(readFileSync(new URL("demonstration.yaml", import.meta.url), "utf8")) as readonly Note[];
const data = demoData();
const date = "2026-11-27";

const briefOf = (name: string): string => {
  const [who, what] = name.split(" ");
  const athlete = data.athletes.find(({ id }) => id === who);
  const workout = data.workouts.find(({ id }) => id === what);
  if (!athlete || !workout) throw new Error(`no brief ${name}`);
  return briefText(makePlan({ athlete, workout, data, date }), (text) => text).replace(/\s+/g, " ");
};

describe("the briefs of the demonstration, read with the red pen", () => {
  it("have a note each", () => {
    const all = data.athletes.flatMap((athlete) =>
      data.workouts.map((workout) => `${athlete.id} ${workout.id}`),
    );
    expect(notes.map(({ brief }) => brief).toSorted()).toEqual(all.toSorted());
  });

  it.each(notes.map((note) => [note.brief, note] as const))("%s", (name, { gone, added, stays = [] }) => {
    const brief = briefOf(name);
    expect({
      "still there": gone.filter((line) => brief.includes(line)),
      "not added": [...added, ...stays.map(({ line }) => line)].filter((line) => !brief.includes(line)),
      unexplained: stays.filter(({ why }) => why.length < 20),
    }).toEqual({ "still there": [], "not added": [], unexplained: [] });
  });
});
