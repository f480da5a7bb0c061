import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { toBase32 } from "../../src/lock/base32.ts";
import { readOrMakeSecret } from "../../src/site/secret.ts";

let dataFolder = "";
beforeEach(() => {
  dataFolder = mkdtempSync(join(tmpdir(), "rigsheet-"));
});
afterEach(() => {
  rmSync(dataFolder, { recursive: true });
});

const file = () => join(dataFolder, ".rigsheet/secret");
const written = toBase32(Uint8Array.from({ length: 32 }, (_, index) => index));

describe("the site secret", () => {
  it("is made once, readable by its owner alone and kept out of git", () => {
    const first = readOrMakeSecret({ dataFolder });
    expect([first.made, first.bytes.length, first.from]).toEqual([true, 32, file()]);
    expect(statSync(file()).mode & 0o777).toBe(0o600);
    expect(readFileSync(join(dataFolder, ".rigsheet/.gitignore"), "utf8")).toBe(
      "*\n!.gitignore\n!links.json\n",
    );
    expect(readOrMakeSecret({ dataFolder })).toEqual({ ...first, made: false });
  });

  it("is another for every folder", () => {
    const other = mkdtempSync(join(tmpdir(), "rigsheet-"));
    expect(readOrMakeSecret({ dataFolder: other }).bytes).not.toEqual(readOrMakeSecret({ dataFolder }).bytes);
    rmSync(other, { recursive: true });
  });

  it("is taken from the environment, and then nothing is written", () => {
    const { bytes, made, from } = readOrMakeSecret({ dataFolder, secret: ` ${written.toLowerCase()}\n` });
    expect([Array.from(bytes), made, from]).toEqual([
      Array.from({ length: 32 }, (_, i) => i),
      false,
      "RIGSHEET_SECRET",
    ]);
    expect(existsSync(file())).toBe(false);
  });

  it("is closed to others again when its file was open to them", () => {
    readOrMakeSecret({ dataFolder });
    chmodSync(file(), 0o644);
    readOrMakeSecret({ dataFolder });
    expect(statSync(file()).mode & 0o777).toBe(0o600);
  });

  it("is never replaced when it cannot be used; what losing it means is said", () => {
    readOrMakeSecret({ dataFolder });
    writeFileSync(file(), "# a comment\nABC\n");
    const message = `The site secret in ${file()} cannot be used: it must have 52 signs, letters and figures, but has 3. Put back the copy you kept. Without one, delete it: the next build makes a new secret, every link changes, and all athletes need their links again (npm run links).`;
    expect(() => readOrMakeSecret({ dataFolder })).toThrow(new Error(message));
    expect(readFileSync(file(), "utf8")).toBe("# a comment\nABC\n");
  });
});
