import { expect, it } from "vitest";
import { checkOfBytes } from "../../src/site/digest.ts";

const bytes = Uint8Array.from({ length: 300 }, (_, index) => index % 251);

it("the check of a file is its length and its CRC-32", () => {
  // The check value of CRC-32 in ISO 3309 as catalogues of checksums print it: cbf43926 for the figures 1 to 9.
  expect(checkOfBytes(Buffer.from("123456789"))).toBe(`9-${(0xcbf43926).toString(36)}`);
});

it("a file with any bit turned, cut off or longer has another check", () => {
  const whole = checkOfBytes(bytes);
  for (let at = 0; at < bytes.length; at += 1)
    for (const bit of [1, 128]) expect(checkOfBytes(bytes.with(at, (bytes[at] ?? 0) ^ bit))).not.toBe(whole);
  expect(checkOfBytes(bytes.subarray(1))).not.toBe(whole);
  expect(checkOfBytes(Uint8Array.from([...bytes, 0]))).not.toBe(whole);
});
