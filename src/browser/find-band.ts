const KEPT = "rigsheet-band";

/** What a reader said of themselves: level and division, empty where any will do. */
type Chosen = { readonly level: string; readonly division: string };

const form = document.getElementById("find-band") as HTMLFormElement | null;
const rows = [...document.querySelectorAll<HTMLElement>(".bands > li")];

/** Shows the bands that fit and opens the only one; the others stay one choice away. */
function show({ level, division }: Chosen): void {
  const fits = (row: HTMLElement): boolean =>
    (level === "" || row.dataset["level"] === level) &&
    (division === "" || row.dataset["division"] === division);
  const found = rows.filter(fits);
  for (const row of rows) {
    row.hidden = found.length > 0 && !found.includes(row);
    const fold = row.querySelector("details");
    if (fold) fold.open = found.length === 1 && found[0] === row;
  }
}

/** What this device remembers; a browser that keeps nothing asks again. */
function kept(): Chosen | undefined {
  try {
    const [level = "", division = ""] = (localStorage.getItem(KEPT) ?? "").split("|");
    return { level, division };
  } catch {
    return undefined;
  }
}

if (form) {
  const select = (name: keyof Chosen): HTMLSelectElement =>
    form.elements.namedItem(name) as HTMLSelectElement;
  const before = kept();
  for (const name of ["level", "division"] as const) {
    const field = select(name);
    if ([...field.options].some(({ value }) => value === before?.[name])) field.value = before?.[name] ?? "";
  }
  form.hidden = false;
  const chosen = (): Chosen => ({ level: select("level").value, division: select("division").value });
  if (chosen().level !== "" || chosen().division !== "") show(chosen());
  form.addEventListener("change", () => {
    show(chosen());
    try {
      const { level, division } = chosen();
      if (level === "" && division === "") localStorage.removeItem(KEPT);
      else localStorage.setItem(KEPT, `${level}|${division}`);
    } catch {
      // Keeping is a courtesy.
    }
  });
}
