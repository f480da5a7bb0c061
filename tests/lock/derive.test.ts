import { describe, expect, it } from "vitest";
import { deriveBytes, sealSecret } from "../../src/lock/derive.ts";

const secret = Uint8Array.from({ length: 32 }, (_, index) => index);
const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString("hex");

describe("deriving bytes", () => {
  // Both values by an implementation of RFC 5869 in Python (hmac and hashlib), itself checked on the RFC's third case.
  it("gives what another implementation of HKDF gives", async () => {
    expect(hex(await deriveBytes(secret, "test", 16))).toBe("f625c816e15ceaf47deb0660d5357570");
    expect(hex(await deriveBytes(secret, "test", 16, Uint8Array.of(1, 2)))).toBe(
      "07be899c0cbcf4bd6fecdc6847e66fc4",
    );
  });

  it("gives the same from a secret that cannot be read out", async () => {
    const sealed = await sealSecret(secret);
    expect(sealed.extractable).toBe(false);
    expect(await deriveBytes(sealed, "test", 16)).toEqual(await deriveBytes(secret, "test", 16));
  });

  it("gives unrelated bytes for another purpose", async () => {
    expect(await deriveBytes(secret, "one", 16)).not.toEqual(await deriveBytes(secret, "other", 16));
  });
});
