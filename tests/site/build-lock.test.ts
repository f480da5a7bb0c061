import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hasCode, isRunning, takeBuildLock } from "../../src/site/build-lock.ts";

let file = "";
beforeEach(() => {
  file = join(mkdtempSync(join(tmpdir(), "rigsheet-")), "inside/build.lock");
});
afterEach(() => {
  rmSync(join(file, "../.."), { recursive: true });
});

/** The number of a process that has ended. */
const deadPid = (): number => spawnSync(process.execPath, ["-e", ""]).pid;

describe("the lock of a build", () => {
  it("is held by one build at a time", () => {
    const release = takeBuildLock(file);
    expect(release).toBeTypeOf("function");
    expect(takeBuildLock(file)).toBeUndefined();
    release?.();
    expect(existsSync(file)).toBe(false);
    takeBuildLock(file)?.();
  });

  it("is taken over from a build that was killed, or that left half a file", () => {
    takeBuildLock(file)?.();
    for (const left of [JSON.stringify({ pid: deadPid() }), "{", ""]) {
      writeFileSync(file, left);
      const release = takeBuildLock(file);
      expect(release).toBeTypeOf("function");
      release?.();
    }
  });
});

describe("whether a process runs", () => {
  it("is known of this one, a dead one and none", () => {
    expect([isRunning(process.pid), isRunning(deadPid()), isRunning(undefined)]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe("the code of an error", () => {
  it("is found in what caused it", () => {
    const full = Object.assign(new Error("no space"), { code: "ENOSPC" });
    expect(hasCode(new Error("a", { cause: new Error("b", { cause: full }) }), "ENOSPC")).toBe(true);
    expect(hasCode(new Error("a"), "ENOSPC")).toBe(false);
    expect(hasCode("ENOSPC", "ENOSPC")).toBe(false);
  });
});
