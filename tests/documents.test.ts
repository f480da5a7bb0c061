import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkDocument, type Repository } from "./support/check-documents.ts";
import { filesBelow } from "./support/source-files.ts";

const root = fileURLToPath(new URL("..", import.meta.url));

function readRepository(): Repository {
  const manifest = JSON.parse(readFileSync(`${root}/package.json`, "utf8")) as {
    scripts: Record<string, string>;
  };
  const ignored = readFileSync(`${root}/.gitignore`, "utf8").split("\n").filter(Boolean);
  return {
    files: filesBelow(root, [".git", "node_modules", "dist", ".astro", ".rigsheet"]),
    scripts: Object.keys(manifest.scripts),
    made: ignored.map((line) => line.replace(/\/$/, "")),
  };
}

describe("the documents of the repository", () => {
  const repository = readRepository();

  it.each(["README.md", "DEVELOPERS.md"])("%s names only links, paths and commands that exist", (path) => {
    expect(checkDocument(path, readFileSync(`${root}/${path}`, "utf8"), repository)).toEqual([]);
  });
});

describe("the commands of package.json", () => {
  const texts = ["README.md", "DEVELOPERS.md", "content/README.md", ".ci/run"].map((path) =>
    readFileSync(`${root}/${path}`, "utf8"),
  );

  it.each(readRepository().scripts)(
    "%s stands in a document, or in what runs before a change lands",
    (script) => {
      // Of several in one cell only the first is written whole.
      const named = new RegExp(`npm (?:run )?${script}(?![\\w:-])|^\\|.*npm run .*, \`${script}\``, "m");
      expect(texts.some((text) => named.test(text))).toBe(true);
    },
  );
});

describe("DEVELOPERS.md", () => {
  it("is read in one sitting: at most 120 lines", () => {
    expect(readFileSync(`${root}/DEVELOPERS.md`, "utf8").trimEnd().split("\n").length).toBeLessThanOrEqual(
      120,
    );
  });
});

describe("the check of documents", () => {
  const repository: Repository = {
    files: ["README.md", "package.json", "src/models/plan.ts", "content/workouts/first.mdx"],
    scripts: ["build", "test"],
    made: ["dist"],
  };
  const check = (text: string): readonly string[] => checkDocument("README.md", text, repository);

  it.each([
    ["see [the guide](docs/guide.md)", "links to docs/guide.md, which does not exist"],
    ["see [the guide](./GUIDE.md#start)", "links to ./GUIDE.md, which does not exist"],
    ["in `src/models/paln.ts`", "names the path src/models/paln.ts, which does not exist"],
    ["in `models/paln.ts`", "names the path models/paln.ts, which does not exist"],
    ["in `paln.ts`", "names the path paln.ts, which does not exist"],
    ["in `src/compute/`", "names the path src/compute/, which does not exist"],
    ["in `src/compute`", "names the path src/compute, which does not exist"],
    ["in `content/gyms/*.yaml`", "names the path content/gyms/*.yaml, which does not exist"],
    ["run `npm run bulid`", "names npm run bulid, which package.json does not have"],
    ["```sh\nnpm run bulid\n```\n", "names npm run bulid, which package.json does not have"],
    ["```sh\nnode src/cli/x.ts\n```\n", "names the path src/cli/x.ts, which does not exist"],
  ])("refuses %j", (text, fault) => {
    expect(check(text)).toEqual([`README.md: ${fault}`]);
  });

  it("refuses npm test where there is none", () => {
    expect(checkDocument("README.md", "run `npm test`", { ...repository, scripts: [] })).toEqual([
      "README.md: names npm run test, which package.json does not have",
    ]);
  });

  it.each([
    "see [the plan](src/models/plan.ts), [below](#below), [elsewhere](https://example.org/a.md)",
    "in `src/models/plan.ts`, `models/plan.ts`, `plan.ts`, `src/models/`, `models/`",
    "in `content/workouts/*.mdx`, `dist/`, `dist/board/`",
    "run `npm run build`, `npm test`, `npm ci`",
    "weights in `kg/lb`, `RIGSHEET_DATA=some/folder npm run build`, `.mdx`, `<name>.yaml`",
    "```text\nsrc/not/there.ts\n```\n",
  ])("allows %j", (text) => {
    expect(check(text)).toEqual([]);
  });
});
