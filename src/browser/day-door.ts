// Bundled by itself and handed over as an address: the page stays small, and asks for it only when the day begins.
import script from "./day/run-day.ts?worker&url";
import { DAY_BEGINS, DAY_FILE } from "./day-names.ts";
import type { OpenedPage } from "./opened-page.ts";

/** What the day asks for once it begins; nothing on pages without one. */
export function dayAddresses(room: HTMLElement): readonly string[] {
  if (!room.querySelector("[data-day]")) return [];
  return [script, `${DAY_FILE}.bin`].map((path) => new URL(path, document.baseURI).href);
}

/** Makes the button that begins the day work. */
export function makeDayWork(room: HTMLElement, page: OpenedPage): void {
  const begin = room.querySelector<HTMLButtonElement>("[data-day]");
  const status = room.querySelector(".day-status");
  begin?.addEventListener("click", () => {
    begin.disabled = true;
    if (status) status.textContent = "Opening …";
    void load(script).then(
      () => {
        begin.disabled = false;
        if (status) status.textContent = "";
        document.dispatchEvent(new CustomEvent(DAY_BEGINS, { detail: page }));
      },
      () => {
        begin.disabled = false;
        if (status)
          status.textContent =
            "This could not be loaded. Open the page once with a network; then it works without.";
      },
    );
  });
}

/** Loads a script once. */
function load(path: string): Promise<void> {
  const address = new URL(path, document.baseURI).href;
  if (document.querySelector(`[data-loaded="${CSS.escape(address)}"]`)) return Promise.resolve();
  return new Promise((resolve, reject) => {
    const element = document.createElement("script");
    element.addEventListener("load", () => {
      element.dataset["loaded"] = address;
      resolve();
    });
    element.addEventListener("error", () => {
      element.remove();
      reject(new Error(address));
    });
    element.src = address;
    document.head.append(element);
  });
}
