import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MESSAGES, type Trouble } from "../../src/browser/messages.ts";
import { fromUtf8 } from "../../src/lock/bytes.ts";
import { findOpener, openWith } from "../../src/lock/envelope.ts";
import { readLinkKey } from "../../src/lock/link-key.ts";
import { serveFolder } from "../../src/site/serve-folder.ts";
import { opened, serveSite, type ServedSite } from "../support/served-site.ts";

let site: ServedSite;
beforeAll(async () => {
  site = await serveSite();
}, 600_000);
afterAll(() => site.close());

/** One window for all tests that need none of their own; without the worker, so that nothing is kept between them. */
let shared: Page | undefined;
async function open(address: string): Promise<Page> {
  shared ??= await site.visit("about:blank", { serviceWorkers: "block" });
  // Between two keys of the same page a browser does not load it anew.
  await shared.goto("about:blank");
  await shared.goto(address);
  return shared;
}

const brief = () => site.linkOf("ilvane-quistgard");
const [addressOf, keyOf] = [
  (link: string) => link.split("#")[0] ?? "",
  (link: string) => link.split("#")[1] ?? "",
];

/** What the door says once it has made up its mind. */
async function toldBy(page: Page): Promise<readonly (string | null)[]> {
  await page.locator("#door[data-trouble]").waitFor();
  return [
    await page.locator("#door").getAttribute("data-trouble"),
    await page.locator("#door-title").textContent(),
    await page.locator("#door-text").textContent(),
  ];
}
const telling = (trouble: Trouble) => [trouble, MESSAGES[trouble].title, MESSAGES[trouble].text];

describe("a whole link", { timeout: 60_000 }, () => {
  it("opens the brief at once, under the title of the workout", async () => {
    const page = await open(brief());
    await opened(page);
    expect(await page.title()).toBe("Gravel Bell");
    expect(await page.locator(".who").innerText()).toBe("Ilvane Quistgård, women");
    expect(await page.locator("h1").allInnerTexts()).toEqual(["Gravel Bell"]);
    expect(await page.getByText("Zephyrine canary, breathe out on the way down.").isVisible()).toBe(true);
  });

  it("opens with what a messenger puts behind it, or makes of the sign #", async () => {
    const [address, key] = [addressOf(brief()), keyOf(brief())];
    for (const link of [
      `${brief()}).`,
      `${brief()}%22`,
      `${address}%23${key}`,
      `${address.slice(0, -1)}%3E#${key}`,
      brief().replace(/\/b\/.*/, (end) => end.toLowerCase()),
    ]) {
      const page = await open(link);
      await opened(page);
      expect(page.url().startsWith(`${address}#`)).toBe(true);
    }
  });

  it("tells neither name nor key in the title, in the window's name, or on the edge of printed paper", async () => {
    const page = await open(brief());
    await opened(page);
    expect(await page.title()).toBe("Gravel Bell");
    expect(await page.evaluate(() => [window.name, history.state as unknown])).toEqual(["", null]);
    const file = join(mkdtempSync(join(tmpdir(), "rigsheet-")), "printed.pdf");
    writeFileSync(file, await page.pdf({ displayHeaderFooter: true }));
    const printed = execFileSync("pdftotext", [file, "-"], { encoding: "utf8" });
    rmSync(dirname(file), { recursive: true });
    expect(printed).toContain("Ilvane Quistgård");
    expect(printed).not.toContain(keyOf(brief()));
    expect(printed).not.toContain("/b/");
  });

  it("leads to the same athlete's other workout, and that to its own files", async () => {
    const page = await open(brief());
    await opened(page);
    await page.getByRole("link", { name: "Slow Lighthouse" }).click();
    await page.waitForURL((url) => !url.href.startsWith(addressOf(brief())));
    await opened(page);
    expect(await page.locator("h1").innerText()).toBe("Slow Lighthouse");
    expect(await page.getByRole("button", { name: "Calendar" }).count()).toBe(0);
  });

  it("leads the coach from the board to a brief", async () => {
    const page = await open(site.linkOf("board"));
    await opened(page);
    expect(await page.title()).toBe("The coach's board");
    await page.getByRole("link", { name: "Orsolo Vennemark" }).first().click();
    await page.locator("article.brief").waitFor();
    expect(await page.locator(".who").innerText()).toBe("Orsolo Vennemark, women");
  });

  it("shows the words of the coach with the reader's own numbers", async () => {
    const page = await open(brief());
    await opened(page);
    const text = (await page.locator("#coach .prose").innerText()).replace(/\s+/g, " ");
    expect(text).toMatch(
      /Aim at \d+:\d\d, be at \d+:\d\d after two rounds and half done at \d+:\d\d\. Pull-ups go/,
    );
    expect(text).toMatch(/Open with \d+(\.\d+)? kg, warm up to \d+(\.\d+)? kg \(.* a side\)/);
    expect(text).toContain("Only for those who have raced before.");
    expect(text).not.toContain("Step, do not jump.");
    const withheld = await open(site.linkOf("orsolo-venn"));
    await opened(withheld);
    const other = await withheld.locator("#coach .prose").innerText();
    expect(other).toContain("Something is left out for you.");
    expect(other).toContain("Keep to what you agreed.");
  });
});

describe("the files of a brief", { timeout: 60_000 }, () => {
  it("are saved as exactly the bytes that were locked, under a name that says what they are", async () => {
    const page = await open(brief());
    await opened(page);
    const key = await readLinkKey(keyOf(brief()));
    const address = addressOf(brief()).split("/").at(-2) ?? "";
    const wanted = [
      ["sheet-a4", "Sheet for the rig, A4", "gravel-bell-sheet-a4.pdf", "%PDF-1.7"],
      ["sheet-letter", "Sheet for the rig, Letter", "gravel-bell-sheet-letter.pdf", "%PDF-1.7"],
      ["card-portrait", "Image to share, upright", "gravel-bell-card-portrait.png", "\x89PNG"],
      ["calendar", "Calendar", "gravel-bell-calendar.ics", "BEGIN:VCALENDAR"],
    ] as const;
    await page.getByText("Other paper, images to share").click();
    for (const [name, label, saveAs, begins] of wanted) {
      const coming = page.waitForEvent("download");
      await page.getByRole("button", { name: label, exact: true }).click();
      const download = await coming;
      const saved = readFileSync(await download.path());
      const locked = Uint8Array.from(readFileSync(join(site.folder, "b", address, `${name}.bin`)));
      const found = key.ok ? await findOpener(locked, key.key) : undefined;
      const content = found?.ok ? await openWith(`${address}/${name}`, locked, found.opener) : undefined;
      expect(download.suggestedFilename()).toBe(saveAs);
      expect(content?.ok && Buffer.from(content.bytes).equals(saved)).toBe(true);
      expect(saved.toString("latin1").startsWith(begins)).toBe(true);
      expect(await page.locator(".file-status").innerText()).toBe(`${saveAs} is ready.`);
    }
  });

  it("name their trouble when they are missing or damaged", async () => {
    const page = await open(brief());
    await opened(page);
    const click = () => page.getByRole("button", { name: "Calendar" }).click();
    await page.route("**/calendar.bin", (route) => route.fulfill({ status: 404 }));
    await click();
    await page.getByText(`${MESSAGES["file-missing"].title}. ${MESSAGES["file-missing"].text}`).waitFor();
    await page.unroute("**/calendar.bin");
    await page.route("**/calendar.bin", (route) => route.fulfill({ body: "RGSH and nothing more" }));
    await click();
    await page.getByText(MESSAGES["damaged-file"].title).waitFor();
    await page.unroute("**/calendar.bin");
    await page.route("**/calendar.bin", (route) => route.abort());
    await click();
    await page.getByText(`${MESSAGES["no-network"].title}. ${MESSAGES["no-network"].text}`).waitFor();
    await page.unroute("**/calendar.bin");
  });
});

describe("a link that cannot open its page", { timeout: 60_000 }, () => {
  it("says that the key is missing, cut off, mistyped, or another page's", async () => {
    const [address, key] = [addressOf(brief()), keyOf(brief())];
    const slip = `${key.slice(0, 10)}${key[10] === "0" ? "1" : "0"}${key.slice(11)}`;
    const cases: readonly (readonly [string, Trouble])[] = [
      ["", "no-key"],
      [`#${key.slice(0, 30)}`, "cut-off-key"],
      [`#${slip}`, "mistyped-key"],
      [`#${keyOf(site.linkOf("orsolo-venn"))}`, "wrong-key"],
    ];
    for (const [fragment, trouble] of cases) {
      const page = await open(`${address}${fragment}`);
      expect(await toldBy(page)).toEqual(telling(trouble));
      expect(await page.content()).not.toContain("Ilvane");
    }
  });

  it("leads to a page that says what may have happened where its address is cut off or was renewed", async () => {
    const page = await open(addressOf(brief()).slice(0, -6));
    expect(await page.locator("main").innerText()).toBe(
      "Nothing here\n\nThere is no page at this address. If your coach sent you a link, a part of it was lost on the way, or it was renewed since. Copy all of it, to its very end, or ask for the new one.\n\nTo all workouts",
    );
  });

  it("opens when the right key is put behind the address afterwards", async () => {
    const page = await open(addressOf(brief()));
    await toldBy(page);
    await page.evaluate((key) => {
      location.hash = key;
    }, keyOf(brief()));
    await opened(page);
  });

  it("says that the page is damaged when its content is not what was locked", async () => {
    const copy = mkdtempSync(join(tmpdir(), "rigsheet-"));
    cpSync(site.folder, copy, { recursive: true });
    const file = join(copy, new URL(addressOf(brief())).pathname, "index.html");
    const html = readFileSync(file, "utf8");
    writeFileSync(
      file,
      html.replace(
        /(<template id="locked">.{400})(.)/,
        (_all, before: string, sign: string) => before + (sign === "A" ? "B" : "A"),
      ),
    );
    const damaged = await serveFolder(copy, "/", 0);
    const page = await open(brief().replace(site.origin, damaged.address));
    expect(await toldBy(page)).toEqual(telling("damaged-file"));
    damaged.server.closeAllConnections();
    damaged.server.close();
    rmSync(copy, { recursive: true });
  });

  it("says that plain http cannot open locks, and does not take it for an old browser", async () => {
    // A name that is not this computer's own is not trusted without https.
    const context = await site.browser.newContext();
    const page = await context.newPage();
    await page.route("http://rig.test/**", async (route) => {
      const response = await fetch(route.request().url().replace("http://rig.test", site.origin));
      await route.fulfill({
        status: response.status,
        contentType: response.headers.get("content-type") ?? "",
        body: Buffer.from(await response.arrayBuffer()),
      });
    });
    await page.goto(brief().replace(site.origin, "http://rig.test"));
    expect(await toldBy(page)).toEqual(telling("insecure"));
    await context.close();
  });

  it("says that the browser is too old where it lacks what is needed", async () => {
    const context = await site.browser.newContext();
    const page = await context.newPage();
    await page.addInitScript(() => {
      Reflect.deleteProperty(globalThis, "DecompressionStream");
    });
    await page.goto(brief());
    expect(await toldBy(page)).toEqual(telling("old-browser"));
    await context.close();
  });

  it("tells what to do where JavaScript is switched off", async () => {
    const page = await site.visit(brief(), { javaScriptEnabled: false });
    expect(await page.locator("#door-title").textContent()).toBe("This page is locked");
    expect(await page.locator("noscript p, #door noscript").first().textContent()).toContain(
      "JavaScript is switched off.",
    );
  });
});

describe("what a device keeps", { timeout: 60_000 }, () => {
  it("opens the page without the key once the reader asked for it, until it is told to forget", async () => {
    const page = await site.visit(brief());
    await opened(page);
    // Headings of the coach's text that sound like the page's own buttons are words and nothing else.
    await page.locator("#device-text", { hasText: "still locked" }).waitFor();
    const said = await page.locator("#device-text").innerText();
    for (const name of ["Remember", "Forget"]) {
      const heading = page.locator("#coach h2", { hasText: name });
      expect(await heading.getAttribute("id")).toBeNull();
      await heading.click();
    }
    expect(await page.locator("#device-text").innerText()).toBe(said);
    await page.getByRole("button", { name: "Open without the key on this device" }).click();
    await page.getByText("For 45 days this device opens the page without the key").waitFor();
    const again = await page.context().newPage();
    await again.goto(addressOf(brief()));
    await opened(again);
    await again.getByRole("button", { name: "Forget this page on this device" }).click();
    await again
      .getByText(
        "Forgotten, with all you tapped. Only your link opens the page now, and only with a network.",
      )
      .waitFor();
    await page.close();
    await again.goto("about:blank");
    await again.goto(addressOf(brief()));
    expect(await toldBy(again)).toEqual(telling("no-key"));
    await again.context().close();
  });

  it("is never anything that was opened, nor a key that could be read", async () => {
    const page = await site.visit(brief());
    await opened(page);
    await page.getByRole("button", { name: "Open without the key on this device" }).click();
    await page.getByText("For 45 days").waitFor();
    const stored = await page.evaluate(async () => {
      const texts: string[] = [JSON.stringify(localStorage), JSON.stringify(sessionStorage), document.cookie];
      for (const name of await caches.keys()) {
        const store = await caches.open(name);
        for (const request of await store.keys()) {
          texts.push(request.url, (await (await store.match(request))?.text()) ?? "");
        }
      }
      const database = await new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open("rigsheet");
        request.onsuccess = () => {
          resolve(request.result);
        };
      });
      const kept = await new Promise<{ opener: CryptoKey }[]>((resolve) => {
        const request = database.transaction("openers").objectStore("openers").getAll() as IDBRequest<
          { opener: CryptoKey }[]
        >;
        request.onsuccess = () => {
          resolve(request.result);
        };
      });
      return { texts, extractable: kept.map(({ opener }) => opener.extractable) };
    });
    for (const word of ["Ilvane", "Zephyrine", keyOf(brief())]) {
      expect(stored.texts.filter((text) => text.includes(word))).toEqual([]);
    }
    expect(stored.extractable).toEqual([false]);
    await page.context().close();
  });
});

describe("the content of a locked page", () => {
  it("opens with Node as it does in the browser", async () => {
    const address = addressOf(brief()).split("/").at(-2) ?? "";
    const html = readFileSync(join(site.folder, "b", address, "index.html"), "utf8");
    const locked = Uint8Array.from(
      Buffer.from(/<template id="locked">([^<]*)</.exec(html)?.[1] ?? "", "base64"),
    );
    const key = await readLinkKey(keyOf(brief()));
    const found = key.ok ? await findOpener(locked, key.key) : undefined;
    const content = found?.ok ? await openWith(`${address}/page`, locked, found.opener) : undefined;
    const text = content?.ok ? fromUtf8(content.bytes) : "";
    expect(text).toContain("Ilvane Quistgård, women");
    expect(text).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=/);
  });
});
