import { describe, expect, it } from "vitest";
import { HEAD_BYTES, readHead, writeHead } from "../../src/lock/envelope-head.ts";

const of = (length: number, start: number) => Uint8Array.from({ length }, (_, index) => start + index);
const head = { keyCheck: of(8, 50), contentSalt: of(16, 80) };
const passcode = { salt: of(16, 10), rounds: 1_000_000, check: of(8, 60) };

describe("the head of a locked file", () => {
  it("lays out mark, version, flag, rounds, salt, checks and content salt", () => {
    const bytes = writeHead({ ...head, passcode });
    expect(bytes.length).toBe(HEAD_BYTES);
    expect(Buffer.from(bytes.subarray(0, 10)).toString("latin1")).toBe("RGSH\x01\x01\x00\x0f\x42\x40"); // 0x0F4240 = 1,000,000
    expect(bytes.subarray(10, 26)).toEqual(passcode.salt);
    expect(bytes.subarray(26, 34)).toEqual(head.keyCheck);
    expect(bytes.subarray(34, 42)).toEqual(passcode.check);
    expect(bytes.subarray(42)).toEqual(head.contentSalt);
  });

  it("reads back with and without a passcode", () => {
    expect(readHead(writeHead(head))).toEqual({ ok: true, head });
    expect(readHead(writeHead({ ...head, passcode }))).toEqual({ ok: true, head: { ...head, passcode } });
  });

  it("is refused when too short, unmarked, of no version, or of a later one", () => {
    const bytes = writeHead(head);
    const version = (number: number) => Uint8Array.from(bytes).fill(number, 4, 5);
    expect(readHead(bytes.slice(1))).toEqual({ ok: false, failure: "damaged" });
    expect(readHead(Uint8Array.from(bytes).fill(0, 0, 1))).toEqual({ ok: false, failure: "damaged" });
    expect(readHead(version(0))).toEqual({ ok: false, failure: "damaged" });
    expect(readHead(version(2))).toEqual({ ok: false, failure: "newer" });
  });
});
