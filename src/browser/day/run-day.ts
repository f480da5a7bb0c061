import type { DayEvent, Tap } from "../../live/day-event.ts";
import type { DayPlan } from "../../live/day-plan.ts";
import { foldDay, standing } from "../../live/day-state.ts";
import { partTimes } from "../../live/part-times.ts";
import { isSecondTap } from "../../live/second-tap.ts";
import { openClock, readClock, type SteadyClock } from "../../live/steady-clock.ts";
import { fromUtf8 } from "../../lock/bytes.ts";
import look from "../../styles/day.css?inline";
import { DAY_BEGINS, DAY_FILE, DAY_FORGOTTEN } from "../day-names.ts";
import { MESSAGES } from "../messages.ts";
import type { OpenedPage } from "../opened-page.ts";
import { openFile } from "../save-file.ts";
import type { DayRun, Options, ScreenName } from "./day-run.ts";
import { keepDay, type KeptDay, readDay } from "./day-store.ts";
import { dayWindow, type DayWindow } from "./day-window.ts";
import { make } from "./dom.ts";
import { signaller, wakefulness } from "./signals.ts";

/** How often the screen is drawn, and how often the clock is kept while nothing is tapped. Milliseconds. */
const FRAME = 200;
const KEEP = 15_000;
/** Taps that bring the next lift or part under the finger: there a second one would tell of what nobody has done. */
const ENDS: ReadonlySet<Tap["kind"]> = new Set(["lift", "ended"]);
/** Taps after which the screen that stands by itself is shown. */
const LEADS: ReadonlySet<Tap["kind"]> = new Set(["stopped", "undo", "go", "new-day"]);

// A style of the page's own making, which a strict policy allows: no style is written into any element.
const sheet = new CSSStyleSheet();
sheet.replaceSync(look);
document.adoptedStyleSheets.push(sheet);

document.addEventListener(DAY_BEGINS, (event) => {
  const page = (event as CustomEvent<OpenedPage>).detail;
  void openPlan(page).then(async (plan) => {
    if (plan) runDay(plan, page, await readDay(page.address, page.opener));
  });
});

async function openPlan({ address, opener }: OpenedPage): Promise<DayPlan | undefined> {
  const status = document.querySelector(".day-status");
  const opened = await openFile({ address, name: DAY_FILE }, opener);
  if (opened.ok && opened.bytes.length > 0) return JSON.parse(fromUtf8(opened.bytes)) as DayPlan;
  const trouble = opened.ok ? "file-missing" : opened.trouble;
  if (status) status.textContent = `${MESSAGES[trouble].title}. ${MESSAGES[trouble].text}`;
  return undefined;
}

function runDay(plan: DayPlan, { address, opener }: OpenedPage, kept: KeptDay | undefined): void {
  let events: readonly DayEvent[] = kept?.events ?? [];
  let options: Options = kept?.options ?? { beep: false, buzz: false };
  let clock: SteadyClock = openClock(kept?.clock);
  let shown: ScreenName | undefined;
  let hidden = false;
  const heard = make("p", { class: "unseen", attributes: { role: "status", "aria-live": "polite" } });
  const signal = signaller();
  const now = (): number => {
    clock = readClock(clock, { wall: Date.now(), count: performance.now(), hidden });
    hidden = document.visibilityState === "hidden";
    return clock.now;
  };
  let keeping = Promise.resolve();
  const keep = (): void => {
    // One after the other, each as things stand when its turn comes, so that none overwrites a later one.
    keeping = keeping.then(async () => {
      const { offset, now: last } = clock;
      window.setLost(!(await keepDay(address, opener, { events, clock: { offset, now: last }, options })));
    });
  };
  const run: DayRun = {
    plan,
    now,
    events: () => events,
    state: () => foldDay(events),
    times: (at) => partTimes(plan, foldDay(events), at),
    tap: (tap: Tap) => {
      if (ENDS.has(tap.kind) && isSecondTap(events, now())) return false;
      events =
        tap.kind === "undo" && standing(events).length === 0 ? events : [...events, { ...tap, at: now() }];
      if (LEADS.has(tap.kind)) shown = undefined;
      signal(options);
      keep();
      window.draw();
      return true;
    },
    show: (screen) => {
      shown = screen;
      window.draw();
    },
    say: (text) => {
      heard.textContent = text;
    },
    options: () => options,
    setOptions: (wanted) => {
      options = wanted;
      signal(options);
      keep();
      window.draw();
    },
  };
  const window = dayWindow(run, heard, () => shown);
  stand(window, keep, () => {
    hidden ||= document.visibilityState === "hidden";
  });
}

/** Puts the window on the page, and keeps it moving, the day kept and the screen awake until it is closed or the page forgotten. */
function stand(window: DayWindow, keep: () => void, onHidden: () => void): void {
  const awake = wakefulness();
  const onSight = (): void => {
    onHidden();
    window.update();
  };
  document.addEventListener("visibilitychange", onSight);
  const frames = setInterval(window.update, FRAME);
  const keeps = setInterval(keep, KEEP);
  const end = (): void => {
    clearInterval(frames);
    clearInterval(keeps);
    awake.release();
    document.removeEventListener("visibilitychange", onSight);
    window.element.remove();
  };
  window.element.addEventListener("close", end, { once: true });
  document.addEventListener(
    DAY_FORGOTTEN,
    () => {
      end();
    },
    { once: true },
  );
  document.body.append(window.element);
  window.element.showModal();
  awake.hold();
  window.draw();
}
