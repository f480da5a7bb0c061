import { fetchSheets } from "./board-sheets.ts";
import { handOver } from "./hand-over.ts";

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
  const shownItems = (): readonly HTMLElement[] =>
    [...list.children].filter((item): item is HTMLElement => item instanceof HTMLElement && !item.hidden);
  room.addEventListener("click", (event) => {
    const target = event.target instanceof Element ? event.target : null;
    const sheets = target?.closest<HTMLButtonElement>("button[data-sheets]");
    if (sheets) void saveSheets(shownItems(), sheets, status);
    const button = target?.closest<HTMLElement>("[data-copy]");
    if (!button) return;
    const item = button.closest<HTMLElement>("#board-rows > li");
    const items = item ? [item] : shownItems();
    const text = items.map((each) => (button.dataset["copy"] === "link" ? linkOf(each) : messageOf(each)));
    void copy(text.join("\n\n---\n\n")).then((could) => {
      status.textContent = could
        ? `${items.length === 1 ? "Copied" : `${items.length} messages copied`}.`
        : "This browser does not let pages copy; use npm run messages.";
    });
  });
}

/** Puts the sheets of the rows shown into one file, in the order shown, and says whose are not in it. */
async function saveSheets(
  items: readonly HTMLElement[],
  button: HTMLButtonElement,
  status: HTMLElement,
): Promise<void> {
  const file = button.dataset["sheets"] ?? "";
  const wanted = items.map((item) => ({
    name: item.querySelector(".name")?.textContent.trim() ?? "",
    link: linkOf(item),
    opens: item.dataset["opens"],
  }));
  const workouts = new Set(items.map((item) => item.dataset["workout"]));
  button.disabled = true;
  const { file: bytes, missing } = await fetchSheets(wanted, file, (done) => {
    status.textContent = `${done} of ${wanted.length} sheets opened`;
  });
  button.disabled = false;
  const saveAs = `${workouts.size === 1 ? `${[...workouts].join("")}-` : ""}${file.replace("sheet", "sheets")}.pdf`;
  if (bytes) await handOver(bytes, saveAs, "application/pdf", false);
  const lacking = missing.length === 0 ? "" : ` Not in it: ${missing.join(", ")}.`;
  status.textContent = bytes
    ? `${saveAs} is ready: ${wanted.length - missing.length} sheets, in the order shown.${lacking}`
    : "No sheet could be opened. Load the page again, with a network.";
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

function fits({ item, text }: Row, form: FormData): boolean {
  const of = (name: string): string => {
    const value = form.get(name);
    return typeof value === "string" ? value : "";
  };
  // Commas part the names of a heat.
  const asked = plain(of("find"))
    .split(/[,;\n]/)
    .map((one) => one.trim())
    .filter((one) => one !== "");
  return (
    (asked.length === 0 || asked.some((one) => one.split(/\s+/).every((word) => text.includes(word)))) &&
    ["workout", "level", "gym", "start"].every(
      (name) => of(name) === "" || item.dataset[name] === of(name),
    ) &&
    (of("group") === "" || (item.dataset["groups"] ?? "").split("\n").includes(of("group"))) &&
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
