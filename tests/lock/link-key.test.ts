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
    for (const fragment of [
      `#${written}`,
      written.toLowerCase(),
      `#${written}.`,
      `#${written})>`,
      `#${written}%22`,
      `#${written}%3E%0A`,
      `#%3C${written}%E2%80%9D`,
      `#"${written}”`,
      `#${written}&utm_source=chat`,
      `#${written}, see you tomorrow`,
      `#${written}%`,
      `#${written}https://example.org/`,
    ]) {
      expect(await readLinkKey(fragment)).toEqual({ ok: true, key });
    }
  });

  it("is read though its line was broken, as mail programs do", async () => {
    const [one, other] = [written.slice(0, 30), written.slice(30)];
    for (const between of [" ", "%20", "=%0D%0A", "\u00AD", "\u200B", "%E2%80%8B"]) {
      expect(await readLinkKey(`#${one}${between}${other}`)).toEqual({ ok: true, key });
    }
  });

  it("is missing where nothing follows the #", async () => {
    for (const fragment of ["", "#", "#.", "#%22"])
      expect(await readLinkKey(fragment)).toEqual({ ok: false, failure: "no-key" });
  });

  it("is cut off wherever signs are missing at the end", async () => {
    for (let length = 1; length < written.length; length++) {
      expect(await readLinkKey(written.slice(0, length))).toEqual({ ok: false, failure: "cut-off-key" });
    }
  });

  it("is cut off where words follow instead of the rest", async () => {
    const fragment = `#${written.slice(0, 40)} does this link open for you?`;
    expect(await readLinkKey(fragment)).toEqual({ ok: false, failure: "cut-off-key" });
  });

  it("is mistyped when a sign was changed or put in", async () => {
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
    const putIn = `${written.slice(0, 20)}0${written.slice(20)}`;
    expect(await readLinkKey(putIn)).toEqual({ ok: false, failure: "mistyped-key" });
    expect(await readLinkKey(`${written.slice(0, 20)}U${written.slice(21)}`)).toEqual({
      ok: false,
      failure: "mistyped-key",
    });
  });
});
