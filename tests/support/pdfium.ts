import { PDFiumLibrary } from "@hyzyla/pdfium";

/** A function of the library by its C name: pointers and numbers in, a pointer or a number out. */
type Call = (...values: readonly number[]) => number;

/** What of the library's own module the tests use; its public classes reach neither words nor structure. */
type Module = Readonly<Record<`_${string}`, Call>> & { readonly HEAPU8: Uint8Array };

const module = (await PDFiumLibrary.init()) as unknown as { readonly module: Module };
const pdfium = module.module;

/** Calls a function of the library by its C name. */
export function call(name: string, ...values: readonly number[]): number {
  const found = pdfium[`_${name}`];
  if (!found) throw new Error(`pdfium has no ${name}`);
  return found(...values);
}

/** Memory of the library, read at once: it moves when it grows. */
export const memory = (at: number, length: number): Buffer =>
  Buffer.from(pdfium.HEAPU8.slice(at, at + length).buffer);

/** Room in the library's memory while something is done with it. */
export function withRoom<T>(bytes: number, use: (at: number) => T): T {
  const at = call("malloc", Math.max(bytes, 8));
  try {
    pdfium.HEAPU8.fill(0, at, at + Math.max(bytes, 8));
    return use(at);
  } finally {
    call("free", at);
  }
}

/** A text the library gives in UTF-16 with a zero at its end, asked for its length first. */
export function textFrom(ask: (room: number, bytes: number) => number): string {
  const bytes = ask(0, 0);
  if (bytes <= 2) return "";
  return withRoom(bytes, (at) => {
    ask(at, bytes);
    return memory(at, bytes - 2).toString("utf16le");
  });
}

/** Bytes in the library's memory while something is done with them. */
export const withBytes = <T>(bytes: Uint8Array, use: (at: number) => T): T =>
  withRoom(bytes.length, (at) => {
    pdfium.HEAPU8.set(bytes, at);
    return use(at);
  });

/** Opens a PDF, and its only or first page, while something is asked of them. */
export function withPage<T>(pdf: Uint8Array, use: (page: number, document: number) => T): T {
  return withBytes(pdf, (at) => {
    const document = call("FPDF_LoadMemDocument", at, pdf.length, 0);
    if (document === 0) throw new Error("pdfium cannot read this file");
    const page = call("FPDF_LoadPage", document, 0);
    try {
      return use(page, document);
    } finally {
      call("FPDF_ClosePage", page);
      call("FPDF_CloseDocument", document);
    }
  });
}
