import { fetchSheets } from "./board-sheets.ts";
import { handOver } from "./hand-over.ts";
import { addLater } from "./late-rows.ts";

/** A row of the board with what it is sorted by, and what it is found by, worked out when first searched for. */
type Row = { readonly item: HTMLElement; readonly name: string; readonly text: () => string };

/** Makes the board's search, filters, order and copying work. Rows that are not in the page yet follow by themselves. */
export function makeBoardWork(room: HTMLElement, later: readonly string[]): void {
  const tools = room.querySelector<HTMLFormElement>("#board-tools");
  const list = room.querySelector<HTMLElement>("#board-rows");
  const status = room.querySelector<HTMLElement>("#board-status");
  if (!tools || !list || !status) return;
  const addRest = addLater(list, later);
  let known: readonly Row[] | undefined;
  const rows = (): readonly Row[] => {
    addRest();
    return (known ??= [...list.children].map(rowOf));
  };
  tools.addEventListener("input", () => {
    const isShown = filterOf(new FormData(tools));
    let count = 0;
    for (const row of rows()) {
      row.item.hidden = !isShown(row);
      count += row.item.hidden ? 0 : 1;
    }
    status.textContent = `${count} of ${rows().length} briefs`;
  });
  tools.addEventListener("submit", (event) => {
    event.preventDefault();
  });
  tools.querySelector("[name=order]")?.addEventListener("change", () => {
    list.append(...sorted(rows(), new FormData(tools).get("order") === "name").map(({ item }) => item));
  });
  room.addEventListener("click", (event) => {
    const target = event.target instanceof Element ? event.target : null;
    const sheets = target?.closest<HTMLButtonElement>("button[data-sheets]");
    const button = target?.closest<HTMLElement>("[data-copy]");
    if (!sheets && !button) return;
    const item = target?.closest<HTMLElement>("#board-rows > li");
    addRest();
    const items = item ? [item] : itemsShown(list);
    if (sheets) void saveSheets(items, sheets, status);
    else void copyTexts(items, button?.dataset["copy"] === "link", status);
  });
}

/** The rows a person sees, in the order in which they stand. */
const itemsShown = (list: HTMLElement): readonly HTMLElement[] =>
  [...list.children].filter((item): item is HTMLElement => item instanceof HTMLElement && !item.hidden);

function rowOf(item: Element): Row {
  let text: string | undefined;
  return {
    item: item as HTMLElement,
    name: nameOf(item),
    text: () => (text ??= plain(item.textContent)),
  };
}

/** Copies links or messages of rows, and says how many. */
async function copyTexts(
  items: readonly HTMLElement[],
  linksAlone: boolean,
  status: HTMLElement,
): Promise<void> {
  const texts = items.map((item) => (linksAlone ? linkOf(item) : messageOf(item)));
  const could = await copy(texts.join("\n\n---\n\n"));
  status.textContent = could
    ? `${items.length === 1 ? "Copied" : `${items.length} messages copied`}.`
    : "This browser does not let pages copy; use npm run messages.";
}

/** Puts the sheets of the rows shown into one file, in the order shown, and says whose are not in it. */
async function saveSheets(
  items: readonly HTMLElement[],
  button: HTMLButtonElement,
  status: HTMLElement,
): Promise<void> {
  const file = button.dataset["sheets"] ?? "";
  const wanted = items.map((item) => ({
    name: nameOf(item),
    link: linkOf(item),
    opens: item.dataset["opens"],
  }));
  const workouts = new Set(items.map((item) => item.dataset["workout"]));
  button.disabled = true;
  const { file: bytes, missing } = await fetchSheets(wanted, file, (done) => {
    status.textContent = `${done} of ${wanted.length} sheets opened`;
  });
  button.disabled = false;
  const of = workouts.size === 1 ? `${[...workouts].join("")}-` : "";
  const saveAs = `${of}${items.length === 1 ? file : file.replace("sheet", "sheets")}.pdf`;
  if (bytes) await handOver(bytes, saveAs, "application/pdf", false);
  const lacking = missing.length === 0 ? "" : ` Not in it: ${missing.join(", ")}.`;
  const [one, ...others] = wanted;
  const what =
    one && others.length === 0
      ? `the sheet of ${one.name}`
      : `${wanted.length - missing.length} sheets, in the order shown`;
  status.textContent = bytes
    ? `${saveAs} is ready: ${what}.${lacking}`
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

/** Whether a row is among those the form asks for. */
function filterOf(form: FormData): (row: Row) => boolean {
  const of = (name: string): string => {
    const value = form.get(name);
    return typeof value === "string" ? value : "";
  };
  // Commas part the names of a heat.
  const asked = plain(of("find"))
    .split(/[,;\n]/)
    .map((one) => one.trim().split(/\s+/))
    .filter(([word]) => word !== "");
  const chosen = CHOICES.map((name) => [name, of(name)] as const).filter(([, value]) => value !== "");
  const [group, flag] = [of("group"), of("flag")];
  return ({ item, text }) =>
    chosen.every(([name, value]) => item.dataset[name] === value) &&
    (group === "" || (item.dataset["groups"] ?? "").split("\n").includes(group)) &&
    (flag === "" || (item.dataset["flags"] ?? "").split(" ").includes(flag)) &&
    (asked.length === 0 || asked.some((words) => words.every((word) => text().includes(word))));
}

/** What a row has one of, and is chosen by. */
const CHOICES = ["workout", "level", "division", "gym", "start"] as const;

const sorted = (rows: readonly Row[], byName: boolean): readonly Row[] => {
  const { compare } = new Intl.Collator();
  return rows.toSorted((one, other) => {
    const [first = "9", second = "9"] = [one, other].map(({ item }) => item.dataset["start"]);
    const starts = first < second ? -1 : first > second ? 1 : 0;
    return (byName ? 0 : starts) || compare(one.name, other.name);
  });
};

/** The athlete's name as a row shows it. */
const nameOf = (item: Element): string => item.querySelector(".name")?.textContent.trim() ?? "";

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
