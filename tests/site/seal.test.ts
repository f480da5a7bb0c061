import { describe, expect, it } from "vitest";
import { deriveBytes } from "../../src/lock/derive.ts";
import { deriveAtOnce, seal, sealKey, unseal } from "../../src/site/seal.ts";

const secret = Uint8Array.from({ length: 32 }, (_, index) => index);
const key = sealKey(secret, "test");
const bytes = Buffer.from("Ada, 64 kg", "utf8");

describe("what is kept on this computer", () => {
  it("opens with its key under its name, and is another each time it is locked", () => {
    const [one, other] = [seal("a", bytes, key), seal("a", bytes, key)];
    expect(Buffer.from(unseal("a", one, key)).equals(bytes)).toBe(true);
    expect(Buffer.from(one).equals(other)).toBe(false);
    expect(Buffer.from(one).includes("Ada")).toBe(false);
  });

  it("does not open where it is broken, under another name, or with a key for something else", () => {
    const sealed = Uint8Array.from(seal("a", bytes, key));
    const broken = sealed.with(30, (sealed[30] ?? 0) ^ 1);
    for (const open of [
      () => unseal("a", broken, key),
      () => unseal("b", sealed, key),
      () => unseal("a", sealed, sealKey(secret, "other")),
      () => unseal("a", sealed.subarray(0, 20), key),
    ])
      expect(open).toThrow();
  });
});

it("what a build derives at once is what a browser derives, for every length", async () => {
  for (const length of [2, 10, 32, 64])
    expect(deriveAtOnce(secret, "address of a page", length)).toEqual(
      await deriveBytes(secret, "address of a page", length),
    );
});
