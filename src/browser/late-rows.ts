/** Rows that stand there when the board opens: more than any screen shows, few enough for a slow phone. */
const FIRST = 16;
/** Rows that are added at once while nothing else is to be done; so few that a tap in between is not felt to wait. */
const BATCH = 40;

/** A page without most rows of its board, and those rows, to be added later. */
type RowsHeldBack = { readonly html: string; readonly later: readonly string[] };

/**
 * Takes the rows of a board that no first screen shows out of a page's text, because making and measuring hundreds of rows is
 * most of what opening it costs. A list whose rows cannot be told apart for certain, by the number it says, stays whole.
 */
export function holdRowsBack(html: string): RowsHeldBack {
  const list = /<ol [^>]*\bid="board-rows"[^>]*\bdata-rows="(\d+)"[^>]*>/.exec(html);
  if (!list) return { html, later: [] };
  const from = list.index + list[0].length;
  const to = html.indexOf("</ol>", from);
  const rows = html
    .slice(from, to)
    .split(/(?=<li data-workout=")/)
    .filter((row) => row.startsWith("<li"));
  if (rows.length !== Number(list[1])) return { html, later: [] };
  return {
    html: html.slice(0, from) + rows.slice(0, FIRST).join("") + html.slice(to),
    later: rows.slice(FIRST),
  };
}

/** Adds rows to a list whenever nothing else is to be done. What is given back adds at once all that are not there yet. */
export function addLater(list: Element, later: readonly string[]): () => void {
  let added = 0;
  const add = (count: number): void => {
    list.insertAdjacentHTML("beforeend", later.slice(added, added + count).join(""));
    added += count;
  };
  const inTime = (): void => {
    if (added >= later.length) return;
    add(BATCH);
    whenIdle(inTime);
  };
  whenIdle(inTime);
  return () => {
    if (added < later.length) add(later.length);
  };
}

/** Not every browser tells when it is idle. */
const whenIdle = (act: () => void): unknown =>
  "requestIdleCallback" in globalThis ? requestIdleCallback(act, { timeout: 500 }) : setTimeout(act, 50);
