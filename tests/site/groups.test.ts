import { describe, expect, it } from "vitest";
import type { Athlete } from "../../src/models/athlete.ts";
import type { NamedGym } from "../../src/models/gym.ts";
import { USUAL_SETTINGS } from "../../src/reading/schemas/settings-schema.ts";
import { groupNamed, groupsOf, isInGroup } from "../../src/site/groups.ts";

const athlete = (id: string, more: Partial<Athlete>): Athlete => ({ id, name: id, ...more }) as Athlete;
const gym = (id: string, name: string): readonly [string, NamedGym] => [id, { id, name } as NamedGym];
const data = {
  athletes: [
    athlete("ada", { gym: "mill", groups: ["Evening"] }),
    athlete("bo", { gym: "weir", groups: ["evening", "Blue"] }),
    athlete("cy", { gym: "mill" }),
  ],
  gyms: new Map([gym("mill", "The Mill"), gym("weir", "Weir Shed")]),
  settings: USUAL_SETTINGS,
};

describe("groups", () => {
  it("are those files name, whatever the capitals, and gyms where there is more than one", () => {
    expect(groupsOf(data).map(({ kind, name }) => `${kind} ${name}`)).toEqual([
      "group Blue",
      "group Evening",
      "gym The Mill",
      "gym Weir Shed",
    ]);
    const oneGym = { ...data, athletes: data.athletes.map((each) => ({ ...each, gym: "mill" })) };
    expect(groupsOf(oneGym).map(({ name }) => name)).toEqual(["Blue", "Evening"]);
  });

  it("hold their own athletes", () => {
    const of = (name: string): readonly string[] =>
      data.athletes
        .filter((each) => isInGroup(each, groupNamed(name, data), data.settings))
        .map(({ id }) => id);
    expect([of("evening"), of("Blue"), of("mill")]).toEqual([["ada", "bo"], ["bo"], ["ada", "cy"]]);
  });

  it("that do not exist are told with those that do", () => {
    expect(() => groupNamed("evning", data)).toThrow(
      'There is no group "evning". The nearest is "Evening". There are: Blue, Evening, The Mill, Weir Shed.',
    );
  });
});
