import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLinkKey, writeLinkKey } from "../../src/lock/link-key.ts";

const key = Uint8Array.from(
  Buffer.from("1e0713653f02c031debf9b87a3810c736e17b41dad2bc4b31ecdbf8e25336bea", "hex"),
);
// By another implementation (Python): base 32 of the key, then three signs of its HKDF "check of a link".
const written = "3R3H6S9Z0B033QNZKE3T708CEDQ1FD0XNMNW9CRYSPZRW99KDFN0DDP";

describe("the key behind the # of a link", () => {
  it("is written as another implementation writes it", async () => {
    expect(await writeLinkKey(key)).toBe(written);
  });

  it("is read with the #, in small letters, and with signs a messenger added", async () => {
    for (const fragment of [`#${written}`, written.toLowerCase(), `#${written}.`, `#${written})>`]) {
      expect(await readLinkKey(fragment)).toEqual({ ok: true, key });
    }
  });

  it("is missing where nothing follows the #", async () => {
    for (const fragment of ["", "#", "#."])
      expect(await readLinkKey(fragment)).toEqual({ ok: false, failure: "no-key" });
  });

  it("is cut off wherever signs are missing at the end", async () => {
    for (let length = 1; length < written.length; length++) {
      expect(await readLinkKey(written.slice(0, length))).toEqual({ ok: false, failure: "cut-off-key" });
    }
  });

  it("is mistyped when a sign was changed or added", async () => {
    const signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    // A change in the key slips through once in 32768; these seeded ones do not.
    await fc.assert(
      fc.asyncProperty(fc.nat(50), fc.integer({ min: 1, max: 31 }), async (at, by) => {
        const sign = signs[(signs.indexOf(written[at] ?? "") + by) % 32] ?? "";
        const changed = written.slice(0, at) + sign + written.slice(at + 1);
        expect(await readLinkKey(changed)).toEqual({ ok: false, failure: "mistyped-key" });
      }),
      { seed: 1, numRuns: 50 },
    );
    expect(await readLinkKey(`${written}0`)).toEqual({ ok: false, failure: "mistyped-key" });
    expect(await readLinkKey(`${written.slice(0, 20)}U${written.slice(21)}`)).toEqual({
      ok: false,
      failure: "mistyped-key",
    });
  });
});
