import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fromBase64, toBase64 } from "../../src/lock/base64.ts";
import { fromUtf8, utf8 } from "../../src/lock/bytes.ts";
import { findOpener, lock, openWith } from "../../src/lock/envelope.ts";
import { readLinkKey } from "../../src/lock/link-key.ts";
import { createRandom } from "../../src/numerics/random.ts";

const TEMPLATE = /(<template id="locked">)([^<]*)(<)/;
const ROWS = /(<ol class="board-rows" id="board-rows"[^>]*>)([\s\S]*?)(<\/ol>)/;
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * The page of a board as it would be with so many rows: those of a built one over and over, each with a name, figures and a link
 * of its own, since what repeats would be squeezed away; locked again with the same key.
 */
export async function bigBoard(folder: string, link: string, rows: number): Promise<string> {
  const { pathname, hash } = new URL(link);
  const [address = ""] = pathname.split("/").slice(-2);
  const page = readFileSync(join(folder, "b", address, "index.html"), "utf8");
  const key = await readLinkKey(hash);
  const locked = fromBase64(TEMPLATE.exec(page)?.[2] ?? "");
  const found = key.ok && locked ? await findOpener(locked, key.key) : undefined;
  const opened = locked && found?.ok ? await openWith(`${address}/page`, locked, found.opener) : undefined;
  if (!key.ok || !opened?.ok) throw new Error("The board could not be opened.");
  const name = `${address}/page`;
  const bytes = utf8(withRows(fromUtf8(opened.bytes), rows));
  const again = await lock({ name, bytes, step: 1024 }, { key: key.key });
  return page.replace(
    TEMPLATE,
    (_, before: string, _locked, after: string) => before + toBase64(again) + after,
  );
}

function withRows(html: string, count: number): string {
  const random = createRandom(11);
  const signs = (length: number): string =>
    Array.from({ length }, () => SIGNS[Math.floor(random.uniform() * SIGNS.length)]).join("");
  return html.replace(ROWS, (_, before: string, rows: string, after: string) => {
    const own = rows.split(/(?=<li data-workout)/).filter((row) => row.startsWith("<li"));
    const many = Array.from({ length: count }, (_each, at) => {
      const row = own[at % own.length] ?? "";
      const whose = /class="name"[^>]*>\s*([^<]+?)\s*</.exec(row)?.[1] ?? "";
      return row
        .replaceAll(whose, `${signs(5)} ${signs(7)} ${Math.floor(at / own.length)}`)
        .replace(/\.\.\/[0-9A-Z]{16}\/#[0-9A-Z]+/g, () => `../${signs(16)}/#${signs(55)}`)
        .replace(
          /\d:\d\d/g,
          () => `${Math.floor(random.uniform() * 9) + 1}:${10 + Math.floor(random.uniform() * 50)}`,
        );
    });
    return before.replace(/data-rows="\d+"/, `data-rows="${count}"`) + many.join("") + after;
  });
}
