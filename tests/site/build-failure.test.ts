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
      "The disk is full, so the site could not be written. What was built before is as it was. Make room and build again.",
    );
    expect(explainFailure(full, nowhere).message).toBe(
      "The disk is full, so the site could not be written. Make room and build again.",
    );
  });

  it("says which file or folder may not be written", () => {
    expect(explainFailure(withCode("EACCES", "permission denied, mkdir '/dist'"), nowhere).message).toBe(
      "A file or folder may not be written: permission denied, mkdir '/dist'.",
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
