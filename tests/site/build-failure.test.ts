import { tmpdir } from "node:os";
import { describe, expect, it } from "vitest";
import { explainFailure } from "../../src/site/build-failure.ts";

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

  it("says anything else as it was said", () => {
    expect(explainFailure(new Error("No font has that letter."), there).message).toBe(
      "No font has that letter. What was built before is as it was.",
    );
    expect(explainFailure("odd", nowhere).message).toBe("odd");
  });
});
