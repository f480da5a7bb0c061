import { describe, expect, it } from "vitest";
import { linksAsCsv, linksAsText, type SentLink } from "../../src/cli/say-links.ts";

const links: readonly SentLink[] = [
  { athlete: "board", name: "The coach's board", workout: "", link: "https://example.org/b/AA/#K1" },
  {
    athlete: "ada",
    name: 'Ada "Bolt", Zoë',
    workout: "Kiln Road",
    link: "https://example.org/b/BB/#K2",
    passcode: "AAAA-BBBB",
  },
  {
    athlete: "ada",
    name: 'Ada "Bolt", Zoë',
    workout: "Two",
    link: "https://example.org/b/CC/#K3",
    passcode: "AAAA-BBBB",
  },
];

describe("links for reading", () => {
  it("stand by reader, with the passcode once", () => {
    expect(linksAsText(links, "https://example.org")).toBe(`The coach's board (board)
  https://example.org/b/AA/#K1

Ada "Bolt", Zoë (ada)
  passcode AAAA-BBBB, to be sent another way than the link
  Kiln Road
    https://example.org/b/BB/#K2
  Two
    https://example.org/b/CC/#K3`);
  });

  it("say how to get the whole address where the host is not known", () => {
    expect(linksAsText(links, undefined)).toMatch(
      /\n\nThese links lack the host\. Say where the site stands: RIGSHEET_SITE=https:\/\/example\.org npm run links$/,
    );
  });

  it("say that they open nothing over http, except on this computer", () => {
    expect(linksAsText(links, "http://192.168.0.2")).toMatch(
      /\n\nThese links begin with http, and over http no browser opens a lock\. The host must offer https\.$/,
    );
    for (const here of ["http://localhost:4322", "http://127.0.0.1", "https://example.org"]) {
      expect(linksAsText(links, here)).toMatch(/#K3$/);
    }
  });
});

describe("links for a spreadsheet", () => {
  it("quote every cell, double quotes inside, and begin with the mark of UTF-8", () => {
    expect(linksAsCsv(links.slice(1, 2))).toBe(
      '\uFEFF"athlete","name","workout","link","passcode"\r\n' +
        '"ada","Ada ""Bolt"", Zoë","Kiln Road","https://example.org/b/BB/#K2","AAAA-BBBB"\r\n',
    );
  });

  it("defuse what a spreadsheet would take for a formula", () => {
    const [, row] = linksAsCsv([{ athlete: "x", name: "=HYPERLINK(1)", workout: "+1", link: "l" }]).split(
      "\r\n",
    );
    expect(row).toBe('"x","\'=HYPERLINK(1)","\'+1","l",""');
  });
});
