import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromBase32, plainSigns, toBase32 } from "../../src/lock/base32.ts";

describe("base 32", () => {
  it("writes five bits a sign: 11111 000(00) is Z0, 00001 000(00) is 10", () => {
    // 31 is Z, the last of 32 signs; 111 filled up with two zeros is 11100, which is 28 and so W.
    expect(toBase32(Uint8Array.of(0xf8))).toBe("Z0");
    expect(toBase32(Uint8Array.of(0xff))).toBe("ZW");
    expect(toBase32(Uint8Array.of(0x08))).toBe("10");
  });

  it("reads back what it wrote, in small letters too", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        expect(fromBase32(toBase32(bytes))).toEqual(bytes);
        expect(fromBase32(toBase32(bytes).toLowerCase())).toEqual(bytes);
      }),
    );
  });

  it("takes I and L for 1 and O for 0", () => {
    expect(fromBase32("IlOo")).toEqual(fromBase32("1100"));
  });

  it("refuses signs outside the alphabet", () => {
    expect(fromBase32("AB!D")).toBeUndefined();
    expect(fromBase32("U")).toBeUndefined();
  });

  it("spells what a person typed as it was written out", () => {
    expect(plainSigns(" 7k2m–9xq4\ttb8e ")).toBe("7K2M9XQ4TB8E");
    expect(plainSigns("ol i")).toBe("011");
  });
});
