import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { WORDS } from "../../src/models/words.ts";
import { loadData } from "../../src/site/load-data.ts";
import { readCoachText } from "../../src/site/read-coach-text.ts";
import { FIXTURE } from "../support/fixture-site.ts";
import { ROOT } from "../support/run-command.ts";

const manual = readFileSync(join(ROOT, "content/README.md"), "utf8");
const section = /### Words with each reader's numbers\n([\s\S]*?)\n## /.exec(manual)?.[1] ?? "";

describe("the manual of the words in a text", () => {
  it("has every word, and no other", () => {
    const told = [...section.matchAll(/^\| `<(\w+)/gm)].map(([, word]) => word);
    expect(told.toSorted()).toEqual(Object.keys(WORDS).sort());
  });

  it("names every attribute", () => {
    for (const { attributes } of Object.values(WORDS)) {
      for (const attribute of Object.keys(attributes))
        expect(section).toMatch(new RegExp(`\\b${attribute}\\b`));
    }
  });

  it("has examples that the check lets through", () => {
    const loaded = loadData({ root: ROOT, dataFolder: FIXTURE, audience: "gym" });
    if (!loaded.ok) throw new Error("the fixture has faults");
    const example = /```mdx words\n([\s\S]*?)```/.exec(section)?.[1] ?? "";
    const cells = [...section.matchAll(/^\| `(<[^`]+>)`/gm)].map(([, cell = ""]) =>
      cell.replace(" ... ", "text"),
    );
    expect(cells.length).toBe(Object.keys(WORDS).length);
    const path = "content/workouts/gravel-bell.mdx";
    const text = ["---\ntitle: x\n---", example, ...cells].join("\n\n");
    const workout = loaded.value.workouts.find(({ place }) => place.file === path);
    const { movements } = loaded.value.library;
    const parts = workout?.parts.map(({ name }) => name) ?? [];
    const read = readCoachText(
      { path, text },
      { movements, hasReader: true, parts, divisions: ["men", "women"] },
    );
    expect(read).toMatchObject({ ok: true });
  });
});
