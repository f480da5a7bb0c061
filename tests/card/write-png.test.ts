import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { writePng } from "../../src/card/write-png.ts";

describe("writePng", () => {
  it("writes what another program reads back pixel for pixel, also where a row ends inside a byte", async () => {
    const palette = [0xff0000, 0x00ff00, 0x0000ff];
    // Three pixels a row: 0, 1, 2 and 2, 1, 0; two in a byte, the left one above.
    const rows = Uint8Array.from([0, 0x01, 0x20, 0, 0x21, 0x00]);
    const png = writePng({ width: 3, height: 2, rows, palette });
    const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([3, 2]);
    expect([...data]).toEqual([0, 1, 2, 2, 1, 0].flatMap((at) => [0, 1, 2].map((c) => (c === at ? 255 : 0))));
  });
});
