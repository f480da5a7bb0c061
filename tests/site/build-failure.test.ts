import { tmpdir } from "node:os";
import { describe, expect, it } from "vitest";
import { BuildFailure, explainFailure } from "../../src/site/build-failure.ts";

const withCode = (code: string, message: string): Error => Object.assign(new Error(message), { code });
const there = tmpdir();
const nowhere = "/nowhere/dist";

describe("a build that failed", () => {
  it("says that the disk is full, however deep that was found", () => {
    const full = new Error("could not write", { cause: withCode("ENOSPC", "write") });
    expect(explainFailure(full, there).message).toBe(
      "The disk is full. Make room and try again. What was built before is as it was.",
    );
    expect(explainFailure(full, nowhere).message).toBe("The disk is full. Make room and try again.");
  });

  it("says which file or folder may not be written", () => {
    const refused = Object.assign(withCode("EACCES", "permission denied, mkdir '/dist'"), { path: "/dist" });
    expect(explainFailure(refused, nowhere).message).toBe(
      "/dist may not be read or written. Give yourself the right to it, or name another folder.",
    );
  });

  it("says that a folder cannot be replaced where another disk is mounted", () => {
    expect(explainFailure(withCode("EBUSY", "resource busy, rename"), nowhere).message).toBe(
      "/nowhere/dist cannot be replaced as a whole: another disk is mounted there, or a program has it open. Close that program, or put the site into a folder inside it with --out.",
    );
  });

  it("is told as it is where its message was written for people", () => {
    const failure = new BuildFailure("The site cannot be put there.");
    expect(explainFailure(failure, there)).toBe(failure);
  });

  it("says anything else as it was said", () => {
    expect(explainFailure(new Error("No font has that letter."), there).message).toBe(
      "No font has that letter. What was built before is as it was.",
    );
    expect(explainFailure("odd", nowhere).message).toBe("odd");
  });
});
