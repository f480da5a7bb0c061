import { expect, it } from "vitest";
import { readFieldEntry } from "../../../src/reading/notation/field-phrase.ts";
import type { NotationFault } from "../../../src/reading/notation/notation-fault.ts";

const read = (written: unknown) => {
  const faults: NotationFault[] = [];
  const fields = readFieldEntry(written, ["men", "women"], ["a", "b"], faults);
  return faults.length > 0 ? faults.map(({ problem }) => problem) : fields;
};

it("a field is one for all, one for each part, one for each division", () => {
  expect(read("wave")).toEqual([{ files: { men: "wave", women: "wave" } }]);
  expect(read("wave-men / wave-women")).toEqual([{ files: { men: "wave-men", women: "wave-women" } }]);
  expect(read({ a: "tide", B: "nothing/wave" })).toEqual([
    { part: "a", files: { men: "tide", women: "tide" } },
    { part: "b", files: { women: "wave" } },
  ]);
  expect(read(undefined)).toEqual([]);
});

it("too many fields and parts that do not exist are told", () => {
  expect(read("a/b/c")).toEqual(["3 fields for 2 divisions"]);
  expect(read({ c: "wave" })).toEqual(['no part is called "c"']);
});
