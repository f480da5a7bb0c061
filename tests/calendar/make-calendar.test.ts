import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { makeCalendar } from "../../src/calendar/make-calendar.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { samplePlans } from "../support/sample-plan.ts";
import { without } from "../support/without.ts";

const plan = samplePlans.forTimeThenLift;
const id = "VAE7SWVSQ62XCSFS";

/** Read by an independent parser. */
function read(text: string | undefined) {
  const component = new ICAL.Component(ICAL.parse(text ?? "") as unknown[]);
  const events = component.getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));
  return { component, events };
}

function made(of: Plan): string {
  const text = makeCalendar(of, id);
  if (text === undefined) throw new Error("no calendar");
  return text;
}

describe("the calendar of a plan", () => {
  // The sample starts at 18:40 in Vienna (17:40 UTC in November) with 40 minutes of warm-up.
  it("holds the warm-up counted back from the start, and the workout", () => {
    const { events } = read(made(plan));
    expect(events.map((event) => [event.summary, event.startDate.toJSDate().toISOString()])).toEqual([
      ["Warm-up: Kiln Road", "2026-11-26T17:00:00.000Z"],
      ["Kiln Road", "2026-11-26T17:40:00.000Z"],
    ]);
    expect(events[0]?.endDate.toJSDate().toISOString()).toBe("2026-11-26T17:40:00.000Z");
  });

  it("ends the workout where its last window closes: 16:00 after the start", () => {
    const end = read(made(plan)).events[1]?.endDate.toUnixTime() ?? 0;
    expect(end - Date.parse("2026-11-26T17:40:00Z") / 1000).toBe(960);
  });

  it("lists the warm-up by the clock and the target", () => {
    const [warmUp, workout] = read(made(plan)).events;
    expect(warmUp?.description.split("\n")[0]).toBe("18:00 Judge, camera, plates");
    expect(workout?.description).toMatch(
      /^Part A: aim at \d+:\d\d, likely \d+:\d\d–\d+:\d\d\nPart B: first lift 58\u00a0kg at 10:15 on the clock\.$/,
    );
  });

  it("says where, unless the gym is only assumed", () => {
    const at = (assumed: boolean) =>
      read(made({ ...plan, gym: { id: "yard", name: "Kiln Yard", assumed } })).events.map(
        (event) => event.location,
      );
    expect([at(false), at(true)]).toEqual([
      ["Kiln Yard", "Kiln Yard"],
      [null, null],
    ]);
  });

  it("reminds three quarters of an hour before the warm-up", () => {
    const alarm = read(made(plan)).component.getFirstSubcomponent("vevent")?.getFirstSubcomponent("valarm");
    const trigger = alarm?.getFirstPropertyValue("trigger") as ICAL.Duration;
    expect([alarm?.getFirstPropertyValue("action"), trigger.toSeconds()]).toEqual(["DISPLAY", -45 * 60]);
  });

  it("keeps its identifiers when the start moves, and counts as the later edition", () => {
    const moved: Plan = {
      ...plan,
      date: "2026-11-26",
      start: { local: "2026-11-27T09:00", zone: "Europe/Vienna", instant: "2026-11-27T08:00:00Z" },
    };
    const [before, after] = [read(made(plan)).events, read(made(moved)).events];
    expect(after.map((event) => event.uid)).toEqual(before.map((event) => event.uid));
    expect(before.map((event) => event.uid)).toEqual([`${id}-warm-up@rigsheet`, `${id}-start@rigsheet`]);
    expect((after[0]?.sequence ?? 0) - (before[0]?.sequence ?? 0)).toBe(1);
  });

  it("is stamped with the day of the plan, so the same plan gives the same bytes", () => {
    expect(made(plan)).toContain("DTSTAMP:20261125T000000Z\r\n");
    expect(made(plan)).toBe(made(structuredClone(plan)));
  });

  it("names nobody", () => {
    const text = made(plan).replaceAll("\r\n ", "");
    for (const word of [plan.athlete.id, plan.athlete.name, ...plan.athlete.name.split(" ")]) {
      expect(text).not.toContain(word);
    }
  });

  it("ends every line with CR LF and keeps it within 75 bytes", () => {
    const lines = made(plan).split("\r\n");
    expect(lines.at(-1)).toBe("");
    expect(lines.every((line) => !line.includes("\n") && Buffer.byteLength(line) <= 75)).toBe(true);
  });

  it("is absent where the start is not known", () => {
    expect(makeCalendar(without(plan, "start"), id)).toBeUndefined();
  });

  it("reminds of the workout itself where there is no warm-up, and shows half an hour where nothing is planned", () => {
    const { events } = read(made({ ...without(plan, "warmUp"), parts: [] }));
    expect(events).toHaveLength(1);
    expect((events[0]?.endDate.toUnixTime() ?? 0) - (events[0]?.startDate.toUnixTime() ?? 0)).toBe(1800);
    expect(events[0]?.component.getAllSubcomponents("valarm")).toHaveLength(1);
  });
});
