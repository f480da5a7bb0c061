import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** The programs of poppler that the tests of PDF files use. */
type Program = "pdftotext" | "pdffonts" | "pdfinfo" | "pdftoppm";

/** Runs a program of poppler over a PDF; a missing program is a failure with its remedy, never a skipped test. */
function run(
  program: Program,
  pdf: Uint8Array,
  options: readonly string[],
  ...after: readonly string[]
): Buffer {
  const folder = mkdtempSync(join(tmpdir(), "sheet-"));
  try {
    const file = join(folder, "sheet.pdf");
    writeFileSync(file, pdf);
    return execFileSync(program, [...options, file, ...after], { maxBuffer: 1 << 28 });
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") {
      const message = `${program} is missing; install Debian's poppler-utils to run the tests of PDF files`;
      throw new Error(message, { cause: error });
    }
    throw error;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The text of a PDF in the order in which it is written, which is the order in which it is read aloud. */
export const textOf = (pdf: Uint8Array): string =>
  run("pdftotext", pdf, ["-raw", "-enc", "UTF-8"], "-").toString("utf8");

export type Word = {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** Every word with its box, in points from the upper left corner. */
export function wordsOf(pdf: Uint8Array): readonly Word[] {
  const html = run("pdftotext", pdf, ["-bbox"], "-").toString("utf8");
  const pattern = /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g;
  return [...html.matchAll(pattern)].map(([, left, top, right, bottom, text]) => ({
    text: text ?? "",
    left: Number(left),
    top: Number(top),
    right: Number(right),
    bottom: Number(bottom),
  }));
}

/** What the file says of itself, by name. */
export function infoOf(pdf: Uint8Array): ReadonlyMap<string, string> {
  const lines = run("pdfinfo", pdf, ["-isodates"]).toString("utf8").split("\n");
  return new Map(
    lines
      .map((line) => /^([^:]+):\s*(.*)$/.exec(line))
      .flatMap((found) => (found ? [[found[1] ?? "", found[2] ?? ""]] : [])),
  );
}

/** The structure tree, one element a line, indented. */
export const structureOf = (pdf: Uint8Array): string => run("pdfinfo", pdf, ["-struct"]).toString("utf8");

export type FontUse = { readonly name: string; readonly embedded: boolean; readonly unicode: boolean };

/** The fonts of a file, and whether they are in it and can be read back as text. */
export function fontsOf(pdf: Uint8Array): readonly FontUse[] {
  const lines = run("pdffonts", pdf, []).toString("utf8").trim().split("\n").slice(2);
  return lines.map((line) => {
    const [embedded, , unicode] = line.trim().split(/\s+/).slice(-5);
    return { name: line.split(/\s+/)[0] ?? "", embedded: embedded === "yes", unicode: unicode === "yes" };
  });
}

/** The page as a PNG at a resolution, dots per inch. */
export const pictureOf = (pdf: Uint8Array, dotsPerInch: number): Buffer =>
  run("pdftoppm", pdf, ["-png", "-r", String(dotsPerInch)]);
