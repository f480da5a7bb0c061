import { crc32 } from "node:zlib";

/** A cell of a workbook: text, a number, or a day. Empty where nothing stands. */
export type WorkbookCell = string | number | Date | undefined;

/** The bytes of a workbook (ECMA-376) with one sheet, its files stored in a zip without compression. */
export function makeWorkbook(sheet: string, rows: readonly (readonly WorkbookCell[])[]): Buffer {
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const types = "http://schemas.openxmlformats.org/package/2006";
  const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  return zip({
    "[Content_Types].xml": `${head}<Types xmlns="${types}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${kind}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${kind}.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="${kind}.styles+xml"/></Types>`,
    "_rels/.rels": `${head}<Relationships xmlns="${types}/relationships"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `${head}<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="${escaped(sheet)}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `${head}<Relationships xmlns="${types}/relationships"><Relationship Id="rId1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
    // The second format is that of a day (14 is built in).
    "xl/styles.xml": `${head}<styleSheet xmlns="${main}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf numFmtId="0"/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" xfId="0"/><xf numFmtId="14" xfId="0" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    "xl/worksheets/sheet1.xml": `${head}<worksheet xmlns="${main}"><sheetData>${rows.map(rowOf).join("")}</sheetData></worksheet>`,
  });
}

const rowOf = (cells: readonly WorkbookCell[], row: number): string =>
  `<row r="${row + 1}">${cells.map((cell, column) => cellOf(cell, `${String.fromCharCode(65 + column)}${row + 1}`)).join("")}</row>`;

const DAY = 86_400_000;
/** Spreadsheets count days from here. */
const DAY_NOUGHT = Date.UTC(1899, 11, 30);

function cellOf(value: WorkbookCell, at: string): string {
  if (value === undefined) return "";
  if (typeof value === "string") return `<c r="${at}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`;
  if (value instanceof Date) return `<c r="${at}" s="1"><v>${(value.getTime() - DAY_NOUGHT) / DAY}</v></c>`;
  return `<c r="${at}"><v>${value}</v></c>`;
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

/** A zip (APPNOTE 6.3.10) of stored files. */
function zip(files: Readonly<Record<string, string>>): Buffer {
  const entries: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const [path, text] of Object.entries(files)) {
    const [name, bytes] = [Buffer.from(path), Buffer.from(text)];
    const facts = Buffer.alloc(26);
    facts.writeUInt16LE(20, 0);
    facts.writeUInt32LE(crc32(bytes), 10);
    facts.writeUInt32LE(bytes.length, 14);
    facts.writeUInt32LE(bytes.length, 18);
    facts.writeUInt16LE(name.length, 22);
    const local = Buffer.concat([Buffer.from("PK\u0003\u0004"), facts, name, bytes]);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(offset, 10);
    directory.push(Buffer.concat([Buffer.from("PK\u0001\u0002\u0014\u0000"), facts, rest, name]));
    entries.push(local);
    offset += local.length;
  }
  const index = Buffer.concat(directory);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(directory.length, 4);
  end.writeUInt16LE(directory.length, 6);
  end.writeUInt32LE(index.length, 8);
  end.writeUInt32LE(offset, 12);
  return Buffer.concat([...entries, index, Buffer.from("PK\u0005\u0006"), end]);
}
