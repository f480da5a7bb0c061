import type { Checked } from "../../models/fault.ts";
import type { SourceFile } from "../files/source-file.ts";

/** The two halves of an MDX file. Lines of `yaml` have the same numbers as in the file. */
type FrontMatter = { readonly yaml: string; readonly body: string; readonly bodyLine: number };

/** Parts front matter and body. The file begins with a line `---`; the next such line ends the front matter. */
export function splitFrontMatter(file: SourceFile): Checked<FrontMatter> {
  const lines = file.text.replace(/^\uFEFF/, "").split("\n");
  const isFence = (line: string): boolean => /^---\s*$/.test(line);
  if (!isFence(lines[0] ?? "")) {
    return fault(
      file,
      lines[0] ?? "",
      "the file does not begin with a line of three hyphens",
      "Write `---` on the first line, the entries below it, and `---` again before the text.",
    );
  }
  const end = lines.findIndex((line, index) => index > 0 && isFence(line));
  if (end === -1) {
    return fault(
      file,
      "---",
      "the entries at the top are not closed",
      "Write a line `---` between the entries and the text.",
    );
  }
  const value = {
    yaml: ["", ...lines.slice(1, end)].join("\n"),
    body: lines.slice(end + 1).join("\n"),
    bodyLine: end + 2,
  };
  return { ok: true, value, notices: [] };
}

function fault(file: SourceFile, found: string, problem: string, remedy: string): Checked<never> {
  const place = { file: file.path, line: 1, column: 1 };
  return { ok: false, faults: [{ place, found: found.trim(), problem, remedy, severity: "fault" }] };
}
