import { describe, expect, it } from "vitest";
import { writeCalendar } from "../../src/calendar/write-calendar.ts";

describe("writing a calendar", () => {
  it("writes RFC 5545 line by line", () => {
    // 2026-03-29 00:59:59 UTC is 1774745999: one second before clocks in central Europe change.
    const entry = {
      uid: "a@rigsheet",
      title: "One, two",
      description: "",
      from: 1_774_745_999,
      to: 1_774_749_599,
    };
    const text = writeCalendar([{ ...entry, remindBefore: 10 }], {
      name: "Kiln; Road",
      made: 0,
      sequence: 3,
    });
    expect(text.split("\r\n")).toEqual([
      "BEGIN:VCALENDAR",
      "VERSION:2.0",
      "PRODID:-//Rigsheet//Rigsheet//EN",
      "CALSCALE:GREGORIAN",
      "NAME:Kiln\\; Road",
      "BEGIN:VEVENT",
      "UID:a@rigsheet",
      "DTSTAMP:19700101T000000Z",
      "SEQUENCE:3",
      "DTSTART:20260329T005959Z",
      "DTEND:20260329T015959Z",
      "SUMMARY:One\\, two",
      "CLASS:PRIVATE",
      "BEGIN:VALARM",
      "ACTION:DISPLAY",
      "TRIGGER:-PT10M",
      "DESCRIPTION:One\\, two",
      "END:VALARM",
      "END:VEVENT",
      "END:VCALENDAR",
      "",
    ]);
  });
});
