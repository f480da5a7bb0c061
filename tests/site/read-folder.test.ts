import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { sayFault } from "../../src/reading/say-fault.ts";
import { readFolder } from "../../src/site/read-folder.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

function write(path: string, text: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

describe("reading a folder", () => {
  it("gives every file of the folders named, sorted, with its path from there", () => {
    write("content/workouts/b.mdx", "two");
    write("content/workouts/a.mdx", "one");
    write("content/fields/f.csv", "score\n1");
    write("content/settings.yaml", "title: x");
    write("athletes/team/ada.yaml", "name: Ada");
    expect(
      readFolder(folder, ["content/workouts", "content/settings.yaml", "content/fields", "athletes"]),
    ).toEqual({
      files: [
        { path: "content/workouts/a.mdx", text: "one" },
        { path: "content/workouts/b.mdx", text: "two" },
        { path: "content/settings.yaml", text: "title: x" },
        { path: "content/fields/f.csv", text: "score\n1" },
        { path: "athletes/team/ada.yaml", text: "name: Ada" },
      ],
      faults: [],
    });
  });

  it("passes over hidden files, pictures, README.md and folders that are not there", () => {
    write("content/gyms/.DS_Store", "x");
    write("content/gyms/.hidden.yaml", "x");
    write("content/gyms/photo.jpg", "x");
    write("content/gyms/README.md", "x");
    expect(readFolder(folder, ["content/gyms", "content/none"]).files).toEqual([]);
  });

  it("reads what spreadsheets save as UTF-16 with a mark", () => {
    write("content/fields/f.csv", Buffer.from("\uFEFFscore\n1", "utf16le"));
    expect(readFolder(folder, ["content/fields"]).files[0]?.text).toBe("score\n1");
  });

  it("tells a file that is not text", () => {
    write("athletes/lukasz.yaml", Buffer.from("name: Łukasz", "latin1"));
    write("athletes/rene.yaml", Uint8Array.of(0x52, 0xe9));
    const { faults } = readFolder(folder, ["athletes"]);
    expect(faults.map(sayFault)).toEqual([
      `athletes/rene.yaml:1:1: Fault
  wrong    the file is not text in UTF-8, so letters such as é or ł cannot be read
  to do    Open it in the program it was written with and save it again as UTF-8.`,
    ]);
  });
});
