import { describe, expect, it } from "vitest";
import { holdRowsBack } from "../../src/browser/late-rows.ts";

const row = (name: string): string => `<li data-workout="weir"><a class="name">${name}</a></li>`;
const names = Array.from({ length: 100 }, (_, at) => `Athlete ${at}`);
const page = (rows: readonly string[], said: number): string =>
  `<main><ol class="board-rows" id="board-rows" data-rows="${said}"> ${rows.join(" ")} </ol><ul><li>Planned</li></ul></main>`;

describe("rows of a board that no first screen shows", () => {
  it("are held back, and all of them are there together in their order", () => {
    const { html, later } = holdRowsBack(page(names.map(row), 100));
    const shown = [...html.matchAll(/name">([^<]*)</g)].map(([, name]) => name);
    const held = later.map((each) => />([^<]+)<\/a>/.exec(each)?.[1]);
    expect(shown).toHaveLength(16);
    expect([...shown, ...held]).toEqual(names);
    expect(html).toMatch(/<\/ol><ul><li>Planned<\/li><\/ul><\/main>$/);
  });

  it("are none where all fit, or where the page is no board", () => {
    expect(holdRowsBack(page(names.slice(0, 16).map(row), 16)).later).toEqual([]);
    expect(holdRowsBack("<main><p>Brief</p></main>")).toEqual({
      html: "<main><p>Brief</p></main>",
      later: [],
    });
  });

  it("stay where they are if what a person wrote looks like a row", () => {
    const odd = `<li data-workout="weir" title='<li data-workout="'></li>`;
    const whole = page([...names.slice(0, 50).map(row), odd], 51);
    expect(holdRowsBack(whole)).toEqual({ html: whole, later: [] });
  });
});
