import { inflateRawSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { squeeze, unsqueeze } from "../../src/lock/squeeze.ts";

describe("squeezing bytes", () => {
  it("gives DEFLATE that others read, and reads it back", async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 500 }), async (some) => {
        const bytes = Uint8Array.from(some);
        const squeezed = await squeeze(bytes);
        expect(Uint8Array.from(inflateRawSync(squeezed))).toEqual(bytes);
        expect(await unsqueeze(squeezed)).toEqual(bytes);
      }),
      { numRuns: 30 },
    );
  });

  it("makes repeated text small", async () => {
    const text = new TextEncoder().encode("hold the pace ".repeat(1000));
    expect((await squeeze(text)).length).toBeLessThan(200);
  });

  it("gives nothing for bytes it did not make", async () => {
    expect(await unsqueeze(Uint8Array.of(255, 255, 255, 255))).toBeUndefined();
  });
});
