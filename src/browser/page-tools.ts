import { showOtherUnit } from "./other-unit.ts";

const UNIT_KEPT = "rigsheet-other-unit";

/** Makes the buttons of a brief that save nothing work: copy the link, print, the other unit beside every mass. */
export function makeToolsWork(room: HTMLElement): void {
  const status = room.querySelector(".file-status");
  const tell = (text: string): void => {
    if (status) status.textContent = text;
  };
  const unit = room.querySelector<HTMLButtonElement>("[data-do=other-unit]");
  if (unit && kept() === unit.dataset["unit"]) pressUnit(unit, room);
  room.addEventListener("click", (event) => {
    const button =
      event.target instanceof Element ? event.target.closest<HTMLButtonElement>("[data-do]") : null;
    if (button?.dataset["do"] === "print") print();
    else if (button?.dataset["do"] === "copy-link") void copyLink().then(tell);
    else if (button?.dataset["do"] === "other-unit") pressUnit(button, room);
  });
  // Paper shows everything, also where the browser knows no style for what is folded.
  addEventListener("beforeprint", () => {
    for (const fold of room.querySelectorAll("details")) fold.open = true;
  });
}

function pressUnit(button: HTMLButtonElement, room: HTMLElement): void {
  const isShown = button.getAttribute("aria-pressed") !== "true";
  button.setAttribute("aria-pressed", String(isShown));
  showOtherUnit(room, isShown);
  keep(isShown ? button.dataset["unit"] : undefined);
}

async function copyLink(): Promise<string> {
  try {
    await navigator.clipboard.writeText(location.href);
    return "Link copied. Whoever has it can read this page.";
  } catch {
    return "This browser does not let pages copy; copy the link from its address line.";
  }
}

/** The unit wanted beside the other on this device; a browser that keeps nothing asks again. */
function kept(): string | null {
  try {
    return localStorage.getItem(UNIT_KEPT);
  } catch {
    return null;
  }
}

function keep(unit: string | undefined): void {
  try {
    if (unit === undefined) localStorage.removeItem(UNIT_KEPT);
    else localStorage.setItem(UNIT_KEPT, unit);
  } catch {
    // Keeping is a courtesy.
  }
}
