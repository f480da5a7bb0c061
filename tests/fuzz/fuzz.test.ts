import { describe, expect, it } from "vitest";
import { BASES } from "./base-files.ts";
import { inputOf, tryInput } from "./try-input.ts";

// The same inputs on every run; `npm run fuzz -- 50000` tries others, and says which number to look at.
const INPUTS = 2000;

describe("whatever is written ends in messages or in a plan", () => {
  it.each(BASES.map(({ file, around }) => [file.path, file, around] as const))(
    "%s as it stands is right",
    (_path, file, around) => {
      expect(tryInput({ kind: "file", path: file.path, text: file.text, around })).toMatchObject({
        kind: "plans",
      });
    },
  );

  it(`${INPUTS} files with slips, nonsense and ill will`, { timeout: 300_000 }, () => {
    const wrong: (readonly [number, string | undefined])[] = [];
    const ends = { messages: 0, plans: 0, wrong: 0 };
    for (let number = 0; number < INPUTS; number += 1) {
      const { kind, problem } = tryInput(inputOf(number));
      ends[kind] += 1;
      if (kind === "wrong") wrong.push([number, problem]);
    }
    expect(wrong).toEqual([]);
    // A fuzzer of which everything is refused at the door tries nothing.
    expect(ends.plans).toBeGreaterThan(INPUTS / 10);
    expect(ends.messages).toBeGreaterThan(INPUTS / 4);
  });
});
