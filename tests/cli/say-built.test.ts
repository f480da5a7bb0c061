import { describe, expect, it } from "vitest";
import type { Data } from "../../src/models/data.ts";
import { sayBuilt, type Built } from "../../src/cli/say-built.ts";

const data = {
  workouts: [{ id: "kiln-road", title: "Kiln Road" }],
  athletes: [{ id: "ada" }, { id: "ben" }],
  bands: [{ id: "new" }],
  settings: { passcode: false },
} as unknown as Data;
const built: Built = {
  data,
  surroundings: { root: "/t", dataFolder: "/t", base: "/", audience: "everyone", date: "2026-11-25" },
  made: {
    count: { locked: 3, strategies: 1, bandPages: 1, files: 40, bytes: 2_345_678 },
    failed: [],
    kept: 0,
    made: 2,
  },
  secret: { bytes: new Uint8Array(32), made: false, from: "/t/.rigsheet/secret" },
  folder: "dist",
  seconds: 12.4,
};

describe("what a build says at its end", () => {
  it("is what was made and where to open it", () => {
    expect(sayBuilt(built)).toBe(`Made for 2026-11-25 in dist/ (40 files, 2.3 MB, 12 s):
  2 briefs, locked: 2 athletes × 1 workout
  the coach's board, locked
  1 strategy page for everyone, 1 band in all

Strategy pages:
  dist/strategy/kiln-road/  Kiln Road

To look at the site here: npm run preview
Links to the board and the briefs: npm run links`);
  });

  it("names the folder wherever it is needed, as it is typed", () => {
    expect(sayBuilt({ ...built, folder: "out" })).toContain("here: npm run preview -- --out out\n");
    const said = sayBuilt({ ...built, folder: "../my gym/site" });
    expect(said).toContain("Made for 2026-11-25 in ../my gym/site/ (");
    expect(said).toContain('here: npm run preview -- --out "../my gym/site"\n');
    expect(said).not.toContain("dist");
  });

  it("gives whole addresses where the host is known", () => {
    const surroundings = { ...built.surroundings, origin: "https://example.org", base: "/gym/" };
    expect(sayBuilt({ ...built, surroundings })).toContain(
      "  https://example.org/gym/strategy/kiln-road/  Kiln Road\n",
    );
    expect(sayBuilt({ ...built, surroundings: { ...built.surroundings, base: "/gym/" } })).toContain(
      "  dist/strategy/kiln-road/  Kiln Road\n",
    );
  });

  it("says that a secret was made, and what losing it means", () => {
    expect(
      sayBuilt({ ...built, secret: { bytes: new Uint8Array(32), made: true, from: "/t/.rigsheet/secret" } }),
    ).toMatch(
      /The secret of this site was made just now: \/t\/\.rigsheet\/secret\nKeep a copy in a safe place\. Without it the links you send stop working at the next build; whoever has it can open\nevery brief\. It is in none of the files that were made\.$/,
    );
  });

  it("says that no athlete was read", () => {
    const said = sayBuilt({
      ...built,
      secret: undefined,
      made: { ...built.made, count: { ...built.made.count, locked: 0 } },
    });
    expect(said).toContain("  no briefs: no athlete was read\n");
    expect(said).not.toContain("npm run links");
  });

  it("mentions passcodes where the site asks for them", () => {
    const asking = { ...data, settings: { ...data.settings, passcode: true } };
    expect(sayBuilt({ ...built, data: asking })).toContain(
      "Links to the board and the briefs, with their passcodes: npm run links",
    );
  });
});
