import { describe, expect, it } from "vitest";
import type { Data } from "../../src/models/data.ts";
import { digestsOf, traceData } from "../../src/site/trace-data.ts";

const data = {
  athletes: [{ id: "ana" }],
  workouts: [{ id: "long-quay" }],
  gyms: new Map([
    ["harbour", { id: "harbour", bars: 3 }],
    ["shed", { id: "shed", bars: 1 }],
  ]),
  fields: new Map(),
} as unknown as Data;

describe("data that note what is read of them", () => {
  it("name single things that were asked for, and whole kinds that were looked through", () => {
    const { data: traced, used } = traceData(data);
    expect(used()).toEqual([]);
    expect(traced.gyms.get("harbour")).toBe(data.gyms.get("harbour"));
    expect(traced.gyms.has("none")).toBe(false);
    expect(used()).toEqual(["gyms/harbour", "gyms/none"]);
    expect([...traced.gyms.keys()]).toEqual(["harbour", "shed"]);
    expect(traced.athletes).toBe(data.athletes);
    expect(used()).toEqual(["athletes", "gyms", "gyms/harbour", "gyms/none"]);
  });

  it("have other marks where what was read is another, and the same for a change elsewhere", () => {
    const gyms = new Map<string, unknown>([
      ...data.gyms,
      ["shed", { id: "shed", bars: 2 }],
    ]) as unknown as Data["gyms"];
    const [before, after] = [digestsOf(data), digestsOf({ ...data, gyms })];
    expect(after("gyms/harbour")).toBe(before("gyms/harbour"));
    expect(after("gyms/shed")).not.toBe(before("gyms/shed"));
    expect(after("gyms")).not.toBe(before("gyms"));
    // What was not there and is now.
    const more = digestsOf({ ...data, gyms: new Map([["none", { id: "none" }]]) as unknown as Data["gyms"] });
    expect(more("gyms/none")).not.toBe(before("gyms/none"));
  });
});
