import { posix } from "node:path";

/** What a document may refer to: the repository's files, the scripts of package.json, what .gitignore names. */
export type Repository = {
  readonly files: readonly string[];
  readonly scripts: readonly string[];
  /** Names at the top that a run makes, such as dist. */
  readonly made: readonly string[];
};

/** What a document refers to and is not there: links, paths in code, npm scripts. */
export function checkDocument(path: string, text: string, repository: Repository): readonly string[] {
  const prose = text.replace(/^```[\s\S]*?^```/gm, "");
  const shell = [...text.matchAll(/^```(?:sh|bash|console)\n([\s\S]*?)^```/gm)].map(
    (match) => match[1] ?? "",
  );
  const spans = [...prose.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? "");
  const words = [...spans, ...shell].flatMap((code) => code.split(/\s+/));
  const faults = [
    ...linksIn(prose)
      .filter((link) => !exists(posix.join(posix.dirname(path), link), repository))
      .map((link) => `links to ${link}, which does not exist`),
    ...words
      .filter((word) => looksLikePath(word, repository))
      .filter((word) => !exists(word, repository) && !exists(posix.join("src", word), repository))
      .map((word) => `names the path ${word}, which does not exist`),
    ...scriptsIn([...spans, ...shell].join("\n"))
      .filter((script) => !repository.scripts.includes(script))
      .map((script) => `names npm run ${script}, which package.json does not have`),
  ];
  return [...new Set(faults)].map((fault) => `${path}: ${fault}`);
}

function linksIn(prose: string): readonly string[] {
  return [...prose.matchAll(/\]\(([^)\s]+)\)/g)]
    .map((match) => (match[1] ?? "").replace(/#.*$/, ""))
    .filter((link) => link !== "" && !/^[a-z]+:/.test(link));
}

function scriptsIn(code: string): readonly string[] {
  const run = [...code.matchAll(/\bnpm run ([\w:-]+)/g)].map((match) => match[1] ?? "");
  return /\bnpm test\b/.test(code) ? [...run, "test"] : run;
}

/**
 * A word of code is read as a path of ours when it ends like a file we keep, ends in a slash, or begins with
 * a name at the top of the repository. So `kg/lb` and `RIGSHEET_DATA=some/folder` are not.
 */
function looksLikePath(word: string, repository: Repository): boolean {
  if (!/^\.?[\w@*[\].-]+(\/[\w@*[\].-]+)*\/?$/.test(word) || /^\.\w+$/.test(word)) return false;
  if (word.endsWith("/") || /\w\.(ts|astro|mjs|json|mdx?|ya?ml|csv|css|ttf|woff2)$/.test(word)) return true;
  const top = word.split("/")[0] ?? "";
  return word.includes("/") && repository.files.some((file) => file.startsWith(`${top}/`));
}

/** Paths are from the top of the repository; a bare file name may lie anywhere; * stands for any name. */
function exists(path: string, { files, made }: Repository): boolean {
  const wanted = posix.normalize(path).replace(/^\.\//, "").replace(/\/$/, "");
  if (made.includes(wanted.split("/")[0] ?? "")) return true;
  const escaped = wanted.replace(/[.[\]]/g, "\\$&").replaceAll("*", "[^/]*");
  const anywhere = wanted.includes("/") ? "^" : "(^|/)";
  const pattern = new RegExp(`${anywhere}${escaped}(/|$)`);
  return wanted === "." || files.some((file) => pattern.test(file));
}
