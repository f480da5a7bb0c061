import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it, vi } from "vitest";
import { copyFixture } from "../support/fixture-site.ts";
import { ROOT, startCommand, TEST_SECRET } from "../support/run-command.ts";

let data = "";
let address = "";
let child: ReturnType<typeof startCommand>;
let said = "";
beforeAll(async () => {
  data = mkdtempSync(join(tmpdir(), "rigsheet-"));
  copyFixture(data);
  const planted = join(data, "planted");
  writeFileSync(
    join(data, "content/workouts/slow-lighthouse.mdx"),
    `---\ntitle: Slow Lighthouse\namrap: 14:00\nwork:\n  - 10 push-up\n---\n{/* */ process.getBuiltinModule("fs").writeFileSync(${JSON.stringify(planted)}, "") /* */}\n`,
  );
  child = startCommand("dev", ["--data", data, "--port", "0"], {
    RIGSHEET_SECRET: TEST_SECRET,
    // Under a test runner the server would not show pages.
    VITEST: "",
    NODE_ENV: "development",
  });
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (piece: Buffer) => (said += piece.toString()));
  while (!/Stop with/.test(said)) {
    if (child.exitCode !== null) throw new Error(said);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  address = /http:\/\/localhost:\d+/.exec(said)?.[0] ?? "";
}, 120_000);
afterAll(async () => {
  const ended = new Promise((resolve) => child.once("close", resolve));
  child.kill("SIGTERM");
  await ended;
  rmSync(data, { recursive: true, force: true });
});

const answer = async (path: string, headers: Readonly<Record<string, string>> = {}) => {
  const response = await fetch(address + path, { headers });
  return { status: response.status, text: await response.text(), headers: response.headers };
};

it(
  "the server for developing shows pages, and hands out nothing of what people keep",
  { timeout: 60_000 },
  async () => {
    const page = await answer("/strategy/gravel-bell/");
    expect(page.status).toBe(200);
    expect(page.text).toContain("Gravel Bell");
    const asked = [
      "/.rigsheet/secret",
      "/.rigsheet/links.json",
      "/.rigsheet/secret?raw",
      "/.rigsheet/secret?import&raw",
      "/%2erigsheet/secret",
      `/@fs${data}/athletes/ilvane-quistgard.yaml`,
      `/@fs${data}/athletes/ilvane-quistgard.yaml?raw`,
      `/@fs${data}/athletes/ilvane-quistgard.yaml?import&raw`,
      `/@fs${data}/athletes/ilvane-quistgard.yaml?url`,
      `/@fs${data}/.rigsheet/links.json`,
      `/@fs${ROOT}.rigsheet/secret`,
      `/@fs${ROOT}package.json`,
      "/@fs/etc/passwd",
      "/athletes/zia-ferrow.yaml",
      "/content/settings.yaml",
      "/content/workouts/weir.mdx?raw",
      "/src/site/secret.ts",
      "/src/styles/..%2f..%2f.rigsheet/secret",
      "/@id/astro:data-layer-content",
      "/@id/astro:content",
      "/package.json",
      "/package.json?raw",
      "/.git/config",
      "/node_modules/.astro/data-store.json",
      "/.astro/types.d.ts",
      "/astro.config.mjs",
    ];
    for (const path of asked) expect([path, (await answer(path)).status]).toEqual([path, 404]);
  },
);

it("and nothing at all to pages of others", { timeout: 60_000 }, async () => {
  const own = await answer("/strategy/gravel-bell/", { origin: address });
  expect(own.status).toBe(200);
  for (const origin of ["http://localhost:1", "https://evil.example", "null"]) {
    const other = await answer("/strategy/gravel-bell/", { origin });
    expect([other.status, other.headers.get("access-control-allow-origin")]).toEqual([404, null]);
  }
});

it("a program in a text is told and not run", async () => {
  expect(said).toContain("content/workouts/slow-lighthouse.mdx:7:1: Fault\n");
  await answer("/strategy/slow-lighthouse/");
  expect(existsSync(join(data, "planted"))).toBe(false);
});

it("faults stand on every page, and the framework says nothing of its own", { timeout: 60_000 }, async () => {
  for (const path of ["/", "/strategy/gravel-bell/", "/strategy/nowhere/"]) {
    const { text } = await answer(path);
    expect(text).toContain("content/workouts/slow-lighthouse.mdx:7:1: Fault");
  }
  const file = join(data, "content/workouts/slow-lighthouse.mdx");
  writeFileSync(file, "---\ntitle: Slow Lighthouse\namrap: 14:00\nwork:\n  - 10 push-up\n---\n");
  const shown = async (): Promise<void> => {
    expect((await answer("/")).text).toContain("Slow Lighthouse");
  };
  await vi.waitFor(shown, { timeout: 20_000 });
  expect((await answer("/")).text).not.toContain("Fault");
  expect(said).not.toMatch(/is empty|syntax highlighting/);
});
