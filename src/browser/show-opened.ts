import { makeBoardWork } from "./board.ts";
import { dropFrom } from "./device-store.ts";
import { dayAddresses, makeDayWork } from "./day-door.ts";
import { DAY_FORGOTTEN } from "./day-names.ts";
import { handOver } from "./hand-over.ts";
import { forgetPage, keepPage } from "./kept-pages.ts";
import { holdRowsBack } from "./late-rows.ts";
import { MESSAGES } from "./messages.ts";
import { forgetOpener, rememberOpener } from "./remembered.ts";
import type { OpenedPage } from "./opened-page.ts";
import { makeToolsWork } from "./page-tools.ts";
import { openFile } from "./save-file.ts";

/** Shows what was locked, and makes its buttons work. Scripts inside it would not run, and there are none. */
export function showOpened(html: string, page: OpenedPage): void {
  const room = document.getElementById("opened");
  // Found before there is anything of a person's own on the page that could be taken for it.
  const footer = document.getElementById("device");
  if (!room) return;
  const { html: shown, later } = holdRowsBack(html);
  room.innerHTML = shown;
  room.hidden = false;
  document.title = room.querySelector<HTMLElement>("[data-title]")?.dataset["title"] ?? document.title;
  room.addEventListener("click", (event) => {
    const near =
      event.target instanceof Element ? event.target.closest("button[data-file], a[href^='#']") : null;
    if (near instanceof HTMLButtonElement) void saveFrom(near, page);
    else if (near instanceof HTMLAnchorElement) goWithin(event, near, room);
  });
  makeBoardWork(room, later);
  makeToolsWork(room);
  makeDayWork(room, page);
  if (footer) void offerKeeping(page, footer, dayAddresses(room));
}

/** Goes to a place on the page without writing it into the address, where it would take the place of the key. */
function goWithin(event: Event, { hash }: HTMLAnchorElement, room: HTMLElement): void {
  const place = room.querySelector<HTMLElement>(`#${CSS.escape(decodeURIComponent(hash.slice(1)))}`);
  if (!place) return;
  event.preventDefault();
  const fold = place.closest("details");
  if (fold) fold.open = true;
  place.tabIndex = -1;
  place.focus({ preventScroll: true });
  (fold ?? place).scrollIntoView();
}

async function saveFrom(button: HTMLButtonElement, { address, opener }: OpenedPage): Promise<void> {
  const { file = "", saveAs = "", type = "", share } = button.dataset;
  const status = button.closest(".files")?.querySelector(".file-status");
  const tell = (text: string): void => {
    if (status) status.textContent = text;
  };
  button.disabled = true;
  tell("Opening …");
  const opened = await openFile({ address, name: file }, opener);
  button.disabled = false;
  if (!opened.ok) {
    tell(`${MESSAGES[opened.trouble].title}. ${MESSAGES[opened.trouble].text}`);
    return;
  }
  if (opened.bytes.length === 0) {
    tell("This file could not be made this time. Your coach was told; the page itself is whole.");
    return;
  }
  await handOver(opened.bytes, saveAs, type, share === "yes");
  tell(`${saveAs} is ready.`);
}

/** What is kept on the device, and the two buttons that change it. */
async function offerKeeping(
  { address, opener, worker }: OpenedPage,
  footer: HTMLElement,
  besides: readonly string[],
): Promise<void> {
  const text = footer.querySelector("#device-text");
  const remember = footer.querySelector("#remember");
  const forget = footer.querySelector("#forget");
  if (!text || !remember || !forget) return;
  const kept = await keepPage(worker, besides);
  text.textContent = kept
    ? "This page is kept on this device, still locked, so that your link opens it without network too. Files are kept once you have saved them. Nothing that was opened is stored."
    : "This browser keeps nothing for reading without network; save the sheet instead.";
  footer.hidden = false;
  remember.addEventListener("click", () => {
    void rememberOpener(address, opener, Date.now()).then((could) => {
      text.textContent = could
        ? "For 45 days this device opens the page without the key, for everyone who can use the device. The code on the sheet leads here then."
        : "This browser does not let pages keep anything.";
    });
  });
  forget.addEventListener("click", () => {
    const pageUrl = new URL(".", document.baseURI).href;
    void Promise.all([forgetOpener(address), dropFrom("days", address), forgetPage(pageUrl)]).then(() => {
      document.dispatchEvent(new Event(DAY_FORGOTTEN));
      text.textContent =
        "Forgotten, with all you tapped. Only your link opens the page now, and only with a network.";
    });
  });
}
