import { describe, expect, it } from "vitest";
import { sealEntries, unsealEntries } from "../../src/site/sealed-entries.ts";

const secret = Uint8Array.from({ length: 32 }, (_, index) => index);
const entries = [
  { id: "ilvane-quistgard", order: 0, value: { name: "Ilvane Quistgård", note: "Zephyrine" } },
  { id: "orsolo-venn", order: 1, value: { name: "Orsolo Vennemark" } },
];

describe("athletes in the store of what was read", () => {
  it("come back whole", async () => {
    expect(await unsealEntries(await sealEntries(entries, secret), secret)).toEqual(entries);
  });

  it("show neither name nor id nor notes", async () => {
    const text = JSON.stringify(await sealEntries(entries, secret));
    const decoded = text + Buffer.from(text, "base64").toString("latin1");
    for (const word of ["ilvane", "Ilvane", "Quistg", "Zephyrine", "orsolo"])
      expect(decoded).not.toContain(word);
  });

  it("are the same for the same content, so that nothing counts as changed", async () => {
    expect(await sealEntries(entries, secret)).toEqual(await sealEntries(structuredClone(entries), secret));
  });

  it("are refused under another secret", async () => {
    const sealed = await sealEntries(entries, secret);
    await expect(unsealEntries(sealed, Uint8Array.from(secret).fill(9))).rejects.toThrow(
      new Error("What was read before was locked with another site secret; start again."),
    );
  });
});
