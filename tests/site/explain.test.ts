import { describe, expect, it } from "vitest";
import { explain, explained } from "../../src/site/explain.ts";

const failure = (code: string, path?: string): Error =>
  Object.assign(new Error(`${code}: said by the system, open '/x'`), { code, path });

describe("what a disk or a network refuses", () => {
  it.each([
    ["ENOSPC", "The disk is full. Make room and try again."],
    ["EFBIG", "/x is larger than a file may be here. Name a folder on another disk, or lift the limit."],
    ["EDQUOT", "Your share of the disk is full. Make room and try again."],
    ["EACCES", "/x may not be read or written. Give yourself the right to it, or name another folder."],
    ["EPERM", "/x may not be changed. Give yourself the right to it, or name another folder."],
    ["EROFS", "/x lies on a disk that can only be read. Name another folder."],
    [
      "ENOTDIR",
      "Something on the way to /x is a file where a folder is needed. Name another folder, or move the file.",
    ],
    ["EEXIST", "/x is there already and is no folder. Name another folder, or move it."],
    ["EISDIR", "/x is a folder where a file is needed. Move it elsewhere."],
    ["ENOENT", "There is no /x. See whether its name is right."],
    ["ELOOP", "/x is a link that leads around in a circle. Remove it."],
    ["ENAMETOOLONG", "/x is too long a name for this disk. Choose a shorter one."],
    ["EMFILE", "Too many files are open on this computer. Close other programs and try again."],
    ["EIO", "The disk cannot read or write /x. Copy your files to another disk."],
    ["EADDRINUSE", "The port is taken on this computer. Name another with --port."],
  ])("is told in plain words: %s", (code, said) => {
    expect(explain(failure(code, "/x"))).toBe(said);
    expect(explain(new Error("wrapped by a tool", { cause: failure(code, "/x") }))).toBe(said);
  });

  it("is told without a name where there is none", () => {
    expect(explain(failure("EACCES"))).toBe(
      "A file or folder may not be read or written. Give yourself the right to it, or name another folder.",
    );
  });

  it("is told as it was said where it was said for people", () => {
    expect(explain(new Error("Say which athlete: --athlete ID."))).toBe("Say which athlete: --athlete ID.");
    expect(explain("odd")).toBe("odd");
  });
});

describe("a failure in a thread", () => {
  it("comes out in plain words, though its code is lost on the way", async () => {
    const full = failure("ENOSPC");
    // This is how an error is handed from thread to thread.
    expect(explain(structuredClone(full))).toBe("ENOSPC: said by the system, open '/x'");
    const told: unknown = await explained(Promise.reject(full)).catch((error: unknown) => error);
    expect(explain(structuredClone(told))).toBe("The disk is full. Make room and try again.");
  });

  it("takes nothing from what is made", async () => {
    expect(await explained(Promise.resolve(7))).toBe(7);
  });
});
