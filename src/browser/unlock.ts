import { fromBase64 } from "../lock/base64.ts";
import { type Bytes, fromUtf8 } from "../lock/bytes.ts";
import { findOpener, openWith, passcodeAsked } from "../lock/envelope.ts";
import { readLinkKey } from "../lock/link-key.ts";
import { type PasscodeCost, stretchPasscode } from "../lock/passcode.ts";
import { lackOf } from "./environment.ts";
import { MESSAGES, type Trouble } from "./messages.ts";
import { rememberedOpener } from "./remembered.ts";
import { showOpened } from "./show-opened.ts";

/** Parts of the page around the lock. */
const part = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page lacks #${id}`);
  return found;
};

function tell(title: string, text: string, trouble?: Trouble): void {
  part("door-title").textContent = title;
  part("door-text").textContent = text;
  if (trouble) part("door").dataset["trouble"] = trouble;
  else delete part("door").dataset["trouble"];
}

const tellTrouble = (trouble: Trouble): void => {
  tell(MESSAGES[trouble].title, MESSAGES[trouble].text, trouble);
};

/** Opens the page with what finds its way here: the key of the link, or an opener this device keeps. */
async function openPage(address: string): Promise<void> {
  const lack = lackOf(globalThis);
  if (lack) {
    tellTrouble(lack);
    return;
  }
  const template = part("locked") as HTMLTemplateElement;
  const locked = fromBase64(template.content.textContent);
  if (!locked) {
    tellTrouble("damaged-file");
    return;
  }
  const read = await readLinkKey(location.hash);
  if (!read.ok) {
    const kept = read.failure === "no-key" ? await rememberedOpener(address, Date.now()) : undefined;
    if (!kept) tellTrouble(read.failure);
    else await enter(address, locked, kept);
    return;
  }
  const cost = await passcodeAsked(locked);
  if (cost) await askForPasscode(address, locked, read.key, cost);
  else await tryKey(address, locked, read.key);
}

/** Says whether the page opened, or that only the passcode was wrong. */
async function tryKey(address: string, locked: Bytes, key: Bytes, stretched?: Bytes): Promise<boolean> {
  const found = await findOpener(locked, key, stretched);
  if (found.ok) return enter(address, locked, found.opener);
  tellTrouble(found.failure === "passcode-needed" ? "wrong-passcode" : found.failure);
  return found.failure !== "wrong-passcode";
}

async function enter(address: string, locked: Bytes, opener: CryptoKey): Promise<boolean> {
  const opened = await openWith(`${address}/page`, locked, opener);
  if (!opened.ok) {
    tellTrouble(opened.failure === "passcode-needed" ? "wrong-key" : opened.failure);
    return true;
  }
  const door = part("door");
  door.remove();
  showOpened(fromUtf8(opened.bytes), { address, opener, worker: door.dataset["worker"] ?? "" });
  return true;
}

async function askForPasscode(address: string, locked: Bytes, key: Bytes, cost: PasscodeCost): Promise<void> {
  // A key that does not fit needs no passcode; anything else but a missing passcode is told at once.
  const found = await findOpener(locked, key);
  if (!found.ok && found.failure !== "passcode-needed") {
    tellTrouble(found.failure);
    return;
  }
  const kept = await rememberedOpener(address, Date.now());
  if (kept) {
    await enter(address, locked, kept);
    return;
  }
  tell("Your passcode, please", "Your coach gave it to you apart from the link: twelve letters and figures.");
  const form = part("door-passcode") as HTMLFormElement;
  form.hidden = false;
  const field = form.elements.namedItem("passcode") as HTMLInputElement;
  field.focus();
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    tell("Opening", "This takes a moment, on purpose: it is what makes guessing hopeless.");
    void stretchPasscode(field.value, cost)
      .then((stretched) => tryKey(address, locked, key, stretched))
      .then((done) => {
        form.hidden = done;
        if (!done) field.select();
      });
  });
}

const door = document.getElementById("door");
if (door) void openPage(door.dataset["address"] ?? "");
// A link to another page of the same reader differs in its address; one to another key of this page only in its end.
window.addEventListener("hashchange", () => {
  if (door?.isConnected && /^#[0-9A-Za-z]{20,}/.test(location.hash)) location.reload();
});
