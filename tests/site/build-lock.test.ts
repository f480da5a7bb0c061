import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { isRunning, takeBuildLock } from "../../src/site/build-lock.ts";
import { ROOT } from "../support/run-command.ts";

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

  it("is taken over also where one who was taking it over was killed", () => {
    takeBuildLock(file)?.();
    for (const beside of [JSON.stringify({ pid: deadPid(), began: 1 }), ""]) {
      writeFileSync(file, JSON.stringify({ pid: deadPid(), began: 1 }));
      writeFileSync(`${file}.over`, beside);
      const release = takeBuildLock(file);
      expect(release).toBeTypeOf("function");
      expect(readdirSync(dirname(file))).toEqual(["build.lock"]);
      release?.();
    }
  });

  it("is not taken over while another takes it over", () => {
    takeBuildLock(file)?.();
    writeFileSync(file, JSON.stringify({ pid: deadPid(), began: 1 }));
    writeFileSync(`${file}.over`, JSON.stringify({ pid: process.ppid, began: Date.now() }));
    expect(takeBuildLock(file)).toBeUndefined();
  });

  it("is taken over in a container, where the killed build had the number this one has", () => {
    takeBuildLock(file)?.();
    writeFileSync(file, JSON.stringify({ pid: process.pid, began: 1 }));
    expect(takeBuildLock(file)).toBeTypeOf("function");
  });

  it("is held by one of many that begin at once and find it dead", async () => {
    takeBuildLock(file)?.();
    const taker = `
      import { takeBuildLock } from ${JSON.stringify(join(ROOT, "src/site/build-lock.ts"))};
      process.stdin.once("data", () => {
        console.log(takeBuildLock(${JSON.stringify(file)}) ? "taken" : "held");
        process.stdin.once("data", () => process.exit());
      });
      console.log("ready");`;
    // Two of 25 such rounds ended with two that had taken it, when a lock that lived could be moved away for a moment.
    for (let round = 0; round < 20; round++) {
      writeFileSync(file, JSON.stringify({ pid: deadPid(), began: 1 }));
      const takers = Array.from({ length: 4 }, () =>
        spawn(process.execPath, ["--input-type=module", "-e", taker]),
      );
      const saidBy = (taker: (typeof takers)[number]) =>
        new Promise<string>((resolve) =>
          taker.stdout
            .once("data", (said: Buffer) => {
              resolve(String(said).trim());
            })
            .once("close", () => {
              resolve("gone");
            }),
        );
      await Promise.all(takers.map(saidBy));
      const answers = Promise.all(takers.map(saidBy));
      for (const taker of takers) taker.stdin.write("take");
      expect((await answers).sort()).toEqual(["held", "held", "held", "taken"]);
      for (const taker of takers) taker.kill();
      await Promise.all(takers.map((taker) => new Promise((resolve) => taker.once("close", resolve))));
    }
    expect(readdirSync(dirname(file))).toEqual(["build.lock"]);
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
