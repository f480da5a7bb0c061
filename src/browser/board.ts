/** A row of the board with what it is found and sorted by. */
type Row = { readonly item: HTMLElement; readonly text: string; readonly name: string };

/** Makes the board's search, filters, order and copying work. Everything stands in the page already. */
export function makeBoardWork(room: HTMLElement): void {
  const tools = room.querySelector<HTMLFormElement>("#board-tools");
  const list = room.querySelector<HTMLElement>("#board-rows");
  const status = room.querySelector<HTMLElement>("#board-status");
  if (!tools || !list || !status) return;
  const rows = [...list.children].map((item): Row => {
    const text = plain(item.textContent);
    return { item: item as HTMLElement, text, name: item.querySelector(".name")?.textContent ?? "" };
  });
  const show = (): void => {
    const shown = rows.filter((row) => fits(row, new FormData(tools)));
    const wanted = new Set(shown);
    for (const row of rows) row.item.hidden = !wanted.has(row);
    status.textContent = `${shown.length} of ${rows.length} briefs`;
  };
  tools.addEventListener("input", show);
  tools.addEventListener("submit", (event) => {
    event.preventDefault();
  });
  tools.querySelector("[name=order]")?.addEventListener("change", () => {
    list.append(...sorted(rows, new FormData(tools).get("order") === "name").map(({ item }) => item));
  });
  room.addEventListener("click", (event) => {
    const button = event.target instanceof Element ? event.target.closest<HTMLElement>("[data-copy]") : null;
    if (!button) return;
    const item = button.closest<HTMLElement>("#board-rows > li");
    const items = item ? [item] : rows.filter((row) => !row.item.hidden).map((row) => row.item);
    const text = items.map((each) => (button.dataset["copy"] === "link" ? linkOf(each) : messageOf(each)));
    void copy(text.join("\n\n---\n\n")).then((could) => {
      status.textContent = could
        ? `${items.length === 1 ? "Copied" : `${items.length} messages copied`}.`
        : "This browser does not let pages copy; use npm run messages.";
    });
  });
}

/** Letters that are no letter with a mark, and what people type for them. */
const LETTERS: Readonly<Record<string, string>> = {
  ł: "l",
  ø: "o",
  đ: "d",
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ı: "i",
};

/** Text without capitals and marks, so that a search need not know them. */
const plain = (text: string | null): string =>
  (text ?? "")
    .toLowerCase()
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[łøđßæœı]/g, (letter) => LETTERS[letter] ?? letter);

function fits({ item, text }: Row, asked: FormData): boolean {
  const of = (name: string): string => {
    const value = asked.get(name);
    return typeof value === "string" ? value : "";
  };
  const words = plain(of("find")).split(/\s+/);
  return (
    words.every((word) => text.includes(word)) &&
    ["workout", "level", "gym"].every((name) => of(name) === "" || item.dataset[name] === of(name)) &&
    (of("flag") === "" || (item.dataset["flags"] ?? "").split(" ").includes(of("flag")))
  );
}

const sorted = (rows: readonly Row[], byName: boolean): readonly Row[] =>
  rows.toSorted((one, other) => {
    const [first, second] = [one, other].map(({ item }) => item.dataset["start"] ?? "9");
    const starts = (first ?? "") < (second ?? "") ? -1 : (first ?? "") > (second ?? "") ? 1 : 0;
    return (byName ? 0 : starts) || one.name.localeCompare(other.name);
  });

/** The whole link of a row, with the host this page came from. */
const linkOf = (item: HTMLElement): string => item.querySelector<HTMLAnchorElement>("a.name")?.href ?? "";

const messageOf = (item: HTMLElement): string =>
  (item.dataset["message"] ?? "").replaceAll("{link}", linkOf(item));

async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
