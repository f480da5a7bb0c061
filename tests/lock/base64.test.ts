import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromBase64, toBase64 } from "../../src/lock/base64.ts";

describe("base 64", () => {
  it("writes the examples of RFC 4648, section 10", () => {
    const bytes = (text: string) => new TextEncoder().encode(text);
    expect(["", "f", "fo", "foo", "foobar"].map((text) => toBase64(bytes(text)))).toEqual([
      "",
      "Zg==",
      "Zm8=",
      "Zm9v",
      "Zm9vYmFy",
    ]);
  });

  it("reads back what it wrote, line breaks or not", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(fromBase64(toBase64(bytes).replace(/(.{10})/g, "$1\n"))).toEqual(bytes);
      }),
    );
  });

  it("writes pieces of any length", () => {
    const bytes = new Uint8Array(100_000).map((_, index) => index % 251);
    expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString("base64"));
  });

  it("gives nothing for a text that is none", () => {
    expect(fromBase64("a*b")).toBeUndefined();
  });
});
