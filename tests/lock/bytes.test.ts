import { describe, expect, it } from "vitest";
import { fromUtf8, joinBytes, sameBytes, utf8 } from "../../src/lock/bytes.ts";

describe("bytes", () => {
  it("joins pieces in order", () => {
    expect(joinBytes([Uint8Array.of(1, 2), Uint8Array.of(), Uint8Array.of(3)])).toEqual(
      Uint8Array.of(1, 2, 3),
    );
  });

  it("are the same only when every byte and the length are", () => {
    expect(sameBytes(Uint8Array.of(1, 2), Uint8Array.of(1, 2))).toBe(true);
    expect(sameBytes(Uint8Array.of(1, 2), Uint8Array.of(1, 3))).toBe(false);
    expect(sameBytes(Uint8Array.of(1, 2), Uint8Array.of(1, 2, 0))).toBe(false);
    expect(sameBytes(Uint8Array.of(1, 2, 0), Uint8Array.of(1, 2))).toBe(false);
    expect(sameBytes(Uint8Array.of(), Uint8Array.of())).toBe(true);
  });

  it("carry any text in UTF-8: ß is C3 9F", () => {
    expect(utf8("ß")).toEqual(Uint8Array.of(0xc3, 0x9f));
    expect(fromUtf8(utf8("Łódź 1:42 ≥ 5′"))).toBe("Łódź 1:42 ≥ 5′");
  });
});
