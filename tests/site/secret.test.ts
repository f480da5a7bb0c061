import { execFileSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
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

  it("is kept out of git where its copy was put back into a new folder", () => {
    mkdirSync(join(dataFolder, ".rigsheet"));
    writeFileSync(file(), written);
    expect(readOrMakeSecret({ dataFolder }).made).toBe(false);
    const git = (...args: readonly string[]) =>
      execFileSync("git", ["-C", dataFolder, ...args], { encoding: "utf8" });
    git("init", "-q");
    writeFileSync(join(dataFolder, ".rigsheet/links.json"), "{}");
    git("add", "-A");
    expect(git("diff", "--cached", "--name-only").trim().split("\n")).toEqual([
      ".rigsheet/.gitignore",
      ".rigsheet/links.json",
    ]);
  });

  it("is not made in the place of one that cannot be read, nor where nothing may be written", () => {
    mkdirSync(file(), { recursive: true });
    expect(() => readOrMakeSecret({ dataFolder })).toThrow(
      new Error(
        `The site secret in ${file()} cannot be read: EISDIR: illegal operation on a directory, read. Nothing was made in its place. Give yourself the right to it, or give the secret in RIGSHEET_SECRET.`,
      ),
    );
    const folder = join(dataFolder, "file");
    writeFileSync(folder, "");
    expect(() => readOrMakeSecret({ dataFolder: folder })).toThrow(
      `The site secret cannot be written to ${folder}/.rigsheet/secret: ENOTDIR`,
    );
  });

  it.each([
    ["", "it must have 52 signs, letters and figures, but has 0"],
    ["gym2026", "it must have 52 signs, letters and figures, but has 7"],
    ["0".repeat(52), "it was not made at random: only 1 of its 52 signs differ"],
    [`${"GYM2026".repeat(7)}GYM`, "it was not made at random: only 6 of its 52 signs differ"],
  ])("is refused from the environment when it is %j", (secret, problem) => {
    expect(() => readOrMakeSecret({ dataFolder, secret })).toThrow(
      new Error(
        `The site secret in RIGSHEET_SECRET cannot be used: ${problem}. Give the line of signs that stands in .rigsheet/secret where the links were made; where that file is itself, leave RIGSHEET_SECRET out.`,
      ),
    );
  });

  it("is never replaced when it cannot be used; what losing it means is said", () => {
    readOrMakeSecret({ dataFolder });
    writeFileSync(file(), "# a comment\nABC\n");
    const message = `The site secret in ${file()} cannot be used: it must have 52 signs, letters and figures, but has 3. Put back the copy you kept. Without one, delete it: the next build makes a new secret, every link changes, and all athletes need their links again (npm run links).`;
    expect(() => readOrMakeSecret({ dataFolder })).toThrow(new Error(message));
    expect(readFileSync(file(), "utf8")).toBe("# a comment\nABC\n");
  });
});
