import { describe, expect, it } from "vitest";
import { ownEntry } from "../../src/models/own-entry.ts";

describe("an entry under a name that a person chose", () => {
  it("is the group's own", () => {
    expect(ownEntry({ men: 3 }, "men")).toBe(3);
    expect(ownEntry(Object.fromEntries([["__proto__", 4]]), "__proto__")).toBe(4);
  });

  it.each(["constructor", "__proto__", "toString", "hasOwnProperty", "valueOf"])(
    "is nothing where the group has none: %s",
    (name) => {
      expect(ownEntry({ men: 3 }, name)).toBeUndefined();
    },
  );
});
