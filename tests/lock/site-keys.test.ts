import { describe, expect, it } from "vitest";
import { pageKeys, type PageName } from "../../src/lock/site-keys.ts";

const secret = Uint8Array.from({ length: 32 }, (_, index) => index);
const brief: PageName = { kind: "brief", athlete: "ada", workout: "kiln-road", version: 1 };

describe("address and key of a page", () => {
  it("are those of another implementation", async () => {
    // By HKDF in Python over the name ["brief","ada","kiln-road",1]; the address in Crockford's base 32.
    const { address, key } = await pageKeys(secret, brief);
    expect(address).toBe("VAE7SWVSQ62XCSFS");
    expect(Buffer.from(key).toString("hex")).toBe(
      "1e0713653f02c031debf9b87a3810c736e17b41dad2bc4b31ecdbf8e25336bea",
    );
  });

  it("differ for another athlete, workout, version, secret, and for the board", async () => {
    const all = await Promise.all([
      pageKeys(secret, brief),
      pageKeys(secret, { ...brief, athlete: "ben" }),
      pageKeys(secret, { ...brief, workout: "other" }),
      pageKeys(secret, { ...brief, version: 2 }),
      pageKeys(secret, { kind: "board", version: 1 }),
      pageKeys(secret, { kind: "board", version: 2 }),
      pageKeys(Uint8Array.from(secret).fill(7), brief),
    ]);
    expect(new Set(all.map(({ address }) => address)).size).toBe(all.length);
    expect(new Set(all.map(({ key }) => Buffer.from(key).toString("hex"))).size).toBe(all.length);
  });

  it("cannot be those of another page by ids that hold separators", async () => {
    const one = await pageKeys(secret, { ...brief, athlete: 'a","b', workout: "c" });
    const other = await pageKeys(secret, { ...brief, athlete: "a", workout: 'b","c' });
    expect(one.address).not.toBe(other.address);
  });

  it("hold no trace of the names in an address of 16 signs", async () => {
    expect((await pageKeys(secret, brief)).address).toMatch(/^[0-9A-HJKMNP-TV-Z]{16}$/);
  });
});
