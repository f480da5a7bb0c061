import { createDecipheriv, createHash, hkdfSync } from "node:crypto";
import { inflateRawSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { type Bytes, fromUtf8, utf8 } from "../../src/lock/bytes.ts";
import { findOpener, lock, openWith, passcodeAsked } from "../../src/lock/envelope.ts";
import { HEAD_BYTES } from "../../src/lock/envelope-head.ts";
import { stretchPasscode } from "../../src/lock/passcode.ts";

const key = Uint8Array.from({ length: 32 }, (_, index) => index);
const otherKey = Uint8Array.from({ length: 32 }, (_, index) => index + 1);
const name = "ADDRESS/sheet-a4";
const text = "Halte 1:42, dann läuft es.";
const content = { name, bytes: utf8(text), step: 64 };
const cost = { salt: Uint8Array.from({ length: 16 }, (_, index) => 100 + index), rounds: 1000 };

// Made in Python (hmac, hashlib, zlib, and AESGCM of the package cryptography) from the form described in src/lock.
const madeElsewhere = Uint8Array.from(
  Buffer.from(
    "5247534801000000000000000000000000000000000000000000e075f8000ab1820000000000000000004a9933f82cb6302c8937c2df82fe2e4a" +
      "21bc77d084e096848f9dfefb7cc72e6c666df313c4aceea9669173ba479dcefad63a7667c01d395e5a06fb9d84b689ba5df1102b39b17c20" +
      "c32477820e3dfff2cbad9e6262efbc30360831b3aa06d116cd5272f0a377fb0b",
    "hex",
  ),
);
const madeElsewhereWithPasscode = Uint8Array.from(
  Buffer.from(
    "524753480101000003e86465666768696a6b6c6d6e6f70717273e075f8000ab18200b37ea69d077a6c1c373bca3c679f1d1d30169ece123f0c19" +
      "365f3c6dab78aa352b450b4de787ae95aba4cf2bad6976ce9f16ded2cbc6ee4814af67e95a216412d2066b80f85dec87d597db1ba66d7349" +
      "58eb609bfc12973aa9174a75ef98c26b0ea249c68d967ead55dd22e73ffb4b8b",
    "hex",
  ),
);

async function openOrSay(
  file: Bytes,
  withKey: Bytes,
  options: { readonly stretched?: Bytes; readonly as?: string } = {},
): Promise<string> {
  const found = await findOpener(file, withKey, options.stretched);
  if (!found.ok) return found.failure;
  const opened = await openWith(options.as ?? name, file, found.opener);
  return opened.ok ? fromUtf8(opened.bytes) : opened.failure;
}

/** The file with one byte changed and its sum made right again, as someone would who tampers on purpose. */
function tampered(file: Bytes, at: number): Bytes {
  const changed = Uint8Array.from(file);
  changed[at] = (changed[at] ?? 0) ^ 1;
  const sum = createHash("sha256").update(changed.subarray(0, -8)).digest().subarray(0, 8);
  changed.set(sum, changed.length - 8);
  return changed;
}

describe("a locked file", () => {
  it("is byte for byte what another implementation makes", async () => {
    expect(await lock(content, { key })).toEqual(madeElsewhere);
    const stretched = await stretchPasscode("7K2M-9XQ4-TB8E", cost);
    expect(await lock(content, { key, passcode: { stretched, cost } })).toEqual(madeElsewhereWithPasscode);
  });

  it("opens with its key", async () => {
    expect(await openOrSay(madeElsewhere, key)).toBe(text);
  });

  it("is AES-256-GCM under an HKDF key: opened by the parts of node:crypto", async () => {
    const file = await lock(content, { key });
    const head = file.subarray(0, HEAD_BYTES);
    const info = "rigsheet 1: key and nonce of a content";
    const derived = Buffer.from(hkdfSync("sha256", key, head.subarray(-16), info, 44));
    const decipher = createDecipheriv("aes-256-gcm", derived.subarray(0, 32), derived.subarray(32));
    decipher.setAAD(Buffer.concat([head, Buffer.from(name)]));
    decipher.setAuthTag(file.subarray(-24, -8));
    const filled = Buffer.concat([decipher.update(file.subarray(HEAD_BYTES, -24)), decipher.final()]);
    expect(inflateRawSync(filled.subarray(4, 4 + filled.readUInt32BE(0))).toString()).toBe(text);
  });

  it("is the same for the same content and differs wholly for another", async () => {
    expect(await lock(content, { key })).toEqual(await lock(content, { key }));
    const other = await lock({ ...content, bytes: utf8(text.replace("42", "43")) }, { key });
    expect(other.slice(HEAD_BYTES, HEAD_BYTES + 16)).not.toEqual(
      madeElsewhere.slice(HEAD_BYTES, HEAD_BYTES + 16),
    );
    const elsewhere = await lock({ ...content, name: "ADDRESS/other" }, { key });
    expect(elsewhere.slice(HEAD_BYTES - 16, HEAD_BYTES)).not.toEqual(
      madeElsewhere.slice(HEAD_BYTES - 16, HEAD_BYTES),
    );
  });

  it("has the length of its step whatever it holds", async () => {
    const lengths = await Promise.all(
      ["", "a", "Wie weit noch? ".repeat(20)].map(
        async (words) => (await lock({ name, bytes: utf8(words), step: 1024 }, { key })).length,
      ),
    );
    expect(lengths).toEqual([
      HEAD_BYTES + 1024 + 16 + 8,
      HEAD_BYTES + 1024 + 16 + 8,
      HEAD_BYTES + 1024 + 16 + 8,
    ]);
  });

  it("tells the key of another page from damage", async () => {
    expect(await openOrSay(madeElsewhere, otherKey)).toBe("wrong-key");
  });

  it("is damaged whichever byte changed on the way", async () => {
    for (let at = 0; at < madeElsewhere.length; at++) {
      const changed = Uint8Array.from(madeElsewhere);
      changed[at] = (changed[at] ?? 0) ^ 1;
      expect(await openOrSay(changed, key)).toBe("damaged-file");
    }
  });

  it("is damaged when it was cut short, is empty or another file", async () => {
    for (const length of [0, 3, HEAD_BYTES, HEAD_BYTES + 10, madeElsewhere.length - 1]) {
      expect(await openOrSay(madeElsewhere.slice(0, length), key)).toBe("damaged-file");
    }
    expect(await openOrSay(utf8("<!doctype html>".repeat(20)), key)).toBe("damaged-file");
  });

  it("never opens after someone changed it on purpose, whichever byte", async () => {
    const answers = new Set<string>();
    for (let at = 0; at < madeElsewhere.length - 8; at++) {
      answers.add(await openOrSay(tampered(madeElsewhere, at), key));
    }
    // Changed version bytes read as a newer or unknown form, a changed check as a wrong key, a changed flag as locked by passcode.
    expect([...answers].sort()).toEqual(["damaged-file", "passcode-needed", "wrong-key"]);
  });

  it("says so when it is of a form made later", async () => {
    const later = Uint8Array.from(madeElsewhere);
    later[4] = 2;
    expect(await openOrSay(later, key)).toBe("newer-version");
  });

  it("does not open under another name", async () => {
    expect(await openOrSay(madeElsewhere, key, { as: "OTHER/sheet-a4" })).toBe("damaged-file");
  });
});

describe("a file locked with a passcode as well", () => {
  const file = madeElsewhereWithPasscode;

  it("says how to stretch the passcode", async () => {
    expect(await passcodeAsked(file)).toMatchObject({ ...cost });
    expect(await passcodeAsked(madeElsewhere)).toBeUndefined();
  });

  it("opens with link key and passcode together", async () => {
    const stretched = await stretchPasscode("7k2m 9xq4 tb8e", cost);
    expect(await openOrSay(file, key, { stretched })).toBe(text);
  });

  it("asks for the passcode, and tells a wrong one from a wrong link", async () => {
    const stretched = await stretchPasscode("7K2M-9XQ4-TB8F", cost);
    expect(await openOrSay(file, key)).toBe("passcode-needed");
    expect(await openOrSay(file, key, { stretched })).toBe("wrong-passcode");
    expect(await openOrSay(file, otherKey, { stretched })).toBe("wrong-key");
  });

  it("does not open with the link key passed off as the opener", async () => {
    const found = await findOpener(madeElsewhere, key);
    expect(found.ok && (await openWith(name, file, found.opener))).toEqual({
      ok: false,
      failure: "wrong-key",
    });
  });
});
