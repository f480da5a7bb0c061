import { readFileSync } from "node:fs";
import { basename } from "node:path";
import readExcelFile from "read-excel-file/node";
import { openTextTable } from "../reading/tables/open-text-table.ts";
import type { Sheet } from "../reading/tables/sheet.ts";

/** Text read from bytes, and how, where it is not plain UTF-8. */
type ReadText = { readonly text: string; readonly told?: string };

/**
 * Reads the tables of a file: a workbook's sheets, or text with cells parted by commas, semicolons or tabs. `-` reads what is
 * pasted.
 *
 * @throws an Error in plain words when the file cannot be read as a table.
 */
export async function readTableFile(
  file: string,
): Promise<{ readonly sheets: readonly Sheet[]; readonly told?: string }> {
  const name = file === "-" ? "pasted" : basename(file);
  if (/\.(?:xls|ods|numbers|docx?|pdf)$/i.test(file)) {
    throw new Error(
      `${name} cannot be read. Save the table as .xlsx or .csv, or paste it into a text file, and give that.`,
    );
  }
  const bytes = readFileSync(file === "-" ? 0 : file);
  if (/\.xlsx$/i.test(file)) return { sheets: await workbook(name, bytes) };
  const { text, told } = decode(bytes);
  return { sheets: [openTextTable(name, text)], ...(told === undefined ? {} : { told }) };
}

/** UTF-8, UTF-16 with its mark, else the letters of western Windows, which is told. */
function decode(bytes: Uint8Array): ReadText {
  const mark =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "utf-16le"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "utf-16be"
        : "utf-8";
  try {
    return { text: new TextDecoder(mark, { fatal: true }).decode(bytes) };
  } catch {
    const told = "The file is not UTF-8; its letters were read as western Windows (1252). Look at the names.";
    return { text: new TextDecoder("windows-1252").decode(bytes), told };
  }
}

async function workbook(name: string, bytes: Buffer): Promise<readonly Sheet[]> {
  const sheets = await readSheets(name, bytes);
  return sheets.map(({ sheet, data }) => ({
    name: sheets.length === 1 ? name : `${name}, ${sheet}`,
    rows: data.map((row) => row.map(sayCell)),
  }));
}

async function readSheets(name: string, bytes: Buffer) {
  try {
    return await readExcelFile(bytes);
  } catch (cause) {
    throw new Error(
      `${name} is no workbook that can be read. Open it and save it again as .xlsx, or as .csv.`,
      { cause },
    );
  }
}

/** Spreadsheets keep a time of day as a day around their first one, 1899-12-30. */
const FIRST_DAYS = 1900;

/** A cell as a person sees it; times and days come as moments, without what the sheet shows of them. */
function sayCell(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) {
    const iso = value.toISOString();
    return value.getUTCFullYear() <= FIRST_DAYS ? iso.slice(11, 19).replace(/^0/, "") : iso.slice(0, 10);
  }
  if (typeof value === "number") return String(Math.round(value * 1e6) / 1e6);
  return typeof value === "string" ? value.trim() : typeof value === "boolean" ? (value ? "yes" : "no") : "";
}
