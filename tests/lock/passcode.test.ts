import { describe, expect, it } from "vitest";
import { keyWithPasscode, passcodeCost, passcodeOf, stretchPasscode } from "../../src/lock/passcode.ts";

const secret = Uint8Array.from({ length: 32 }, (_, index) => index);
const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString("hex");

describe("the passcode of an athlete", () => {
  // Every value by Python's hmac and hashlib (HKDF of RFC 5869, pbkdf2_hmac with 1,000,000 rounds).
  it("is generated, stretched and joined with the link's key as another implementation does it", async () => {
    const passcode = await passcodeOf(secret, "ada", 1);
    expect(passcode).toBe("FFGJ-KK0H-9Q2A");
    const cost = await passcodeCost(secret, "ada", 1);
    expect([hex(cost.salt), cost.rounds]).toEqual(["c2ceed249acf8d6711521797c386962d", 1_000_000]);
    const stretched = await stretchPasscode(passcode, cost);
    expect(hex(stretched)).toBe("c97ffc3da355efb60b3bf65ff93f890ff14fc4d13438028271d29866810dafd9");
    const key = Uint8Array.from(
      Buffer.from("1e0713653f02c031debf9b87a3810c736e17b41dad2bc4b31ecdbf8e25336bea", "hex"),
    );
    expect(hex(await keyWithPasscode(key, stretched))).toBe(
      "b4044fa56d4fd63224b1de0adc20d76f0e027d6df6c692b3e560d2f07d206940",
    );
  });

  it("changes with the link version and the athlete", async () => {
    const all = [
      await passcodeOf(secret, "ada", 1),
      await passcodeOf(secret, "ada", 2),
      await passcodeOf(secret, "ben", 1),
    ];
    expect(new Set(all).size).toBe(3);
  });

  it("costs at least what OWASP asks for", async () => {
    expect((await passcodeCost(secret, "ada", 1)).rounds).toBeGreaterThanOrEqual(600_000);
  });

  it("may be typed in small letters, without hyphens, with look-alikes", async () => {
    const cost = { salt: new Uint8Array(16), rounds: 10 };
    const one = await stretchPasscode("FFGJ-KK0H-9Q1A", cost);
    for (const typed of ["ffgjkkoh9qia", " FFGJ KK0H 9QLA ", "ffgj–kk0h–9q1a"]) {
      expect(await stretchPasscode(typed, cost)).toEqual(one);
    }
    expect(await stretchPasscode("FFGJ-KK0H-9Q1B", cost)).not.toEqual(one);
  });
});
