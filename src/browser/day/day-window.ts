import type { Tap } from "../../live/day-event.ts";
import { standing } from "../../live/day-state.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { sayPart } from "../../wording/part-name.ts";
import { barScreen } from "./bar-screen.ts";
import { beforeScreen } from "./before-screen.ts";
import { courseScreen } from "./course-screen.ts";
import type { DayRun, Screen, ScreenName } from "./day-run.ts";
import { button, make, setText } from "./dom.ts";
import { logScreen } from "./log-screen.ts";
import { stopScreen } from "./stop-screen.ts";

/** The window the day is run in. */
export type DayWindow = {
  readonly element: HTMLDialogElement;
  /** Draws the screen anew after something was tapped. */
  readonly draw: () => void;
  /** Moves on what changes with time. */
  readonly update: () => void;
  /** Says whether taps could not be kept. */
  readonly setLost: (lost: boolean) => void;
};

const TITLES: Readonly<Record<ScreenName, string>> = {
  before: "Before the start",
  course: "On the clock",
  bar: "At the bar",
  log: "The log",
  stop: "Stopped",
};

/** Which screen stands by itself, and for which part. */
function screenNow(run: DayRun, now: number): { readonly name: ScreenName; readonly part?: PartTimes } {
  if (run.state().stopped !== undefined) return { name: "stop" };
  const times = run.times(now);
  if (times.every(({ go }) => go === undefined)) return { name: "before" };
  const part = times.find(({ ended }) => ended === undefined);
  if (!part) return { name: "log" };
  return { name: part.part.pacing ? "course" : "bar", part };
}

export function dayWindow(run: DayRun, heard: HTMLElement, shown: () => ScreenName | undefined): DayWindow {
  const title = make("h2", { class: "day-title", attributes: { id: "day-window-title" } });
  const room = make("div", { class: "day-room" });
  const lost = make(
    "p",
    { class: "day-lost" },
    "This browser keeps nothing: do not close this page before you have sent the log.",
  );
  lost.hidden = true;
  const bar = make("div", { class: "day-bar" });
  const element = make(
    "dialog",
    { class: "day", attributes: { "aria-labelledby": "day-window-title" } },
    make("div", { class: "day-top" }, title, bar),
    heard,
    lost,
    room,
  );
  let screen: Screen | undefined;
  let standingNow = "";
  const keyOf = (now: number): string => {
    const own = screenNow(run, now);
    return `${shown() ?? own.name}|${own.part?.part.name ?? ""}|${own.part?.go === undefined}`;
  };
  const draw = (): void => {
    const now = run.now();
    standingNow = keyOf(now);
    const own = screenNow(run, now);
    const name = shown() ?? own.name;
    const focused = document.activeElement?.getAttribute("data-key");
    setText(
      title,
      own.part && own.name === name && run.plan.parts.length > 1
        ? `${TITLES[name]}: part ${sayPart(own.part.part.name)}`
        : TITLES[name],
    );
    bar.replaceChildren(...barButtons(run, name, element));
    screen = drawScreen(run, name, own.part);
    room.replaceChildren(screen.element);
    // What does not fit scrolls, and the keyboard must be able to do it.
    room.querySelector(".day-body")?.setAttribute("tabindex", "0");
    screen.update(now);
    focusAgain(element, focused);
  };
  const update = (): void => {
    const now = run.now();
    // A part may begin or end by its clock, without a tap.
    if (keyOf(now) === standingNow) screen?.update(now);
    else draw();
  };
  return {
    element,
    draw,
    update,
    setLost: (isLost) => {
      lost.hidden = !isLost;
    },
  };
}

/** The focus stays on what it was on, by its key; else it goes to the button that comes next. */
function focusAgain(element: HTMLElement, key: string | null | undefined): void {
  const again =
    key === null || key === undefined
      ? null
      : element.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`);
  (again ?? element.querySelector<HTMLElement>(".day-big, .day-foot button"))?.focus({
    preventScroll: true,
  });
}

function drawScreen(run: DayRun, name: ScreenName, part: PartTimes | undefined): Screen {
  if (name === "stop") return stopScreen(run);
  if (name === "log") return logScreen(run);
  if (name === "course" && part?.part.pacing) return courseScreen(run, part);
  if (name === "bar" && part) return barScreen(run, part);
  return beforeScreen(run);
}

/** What a tap is called when it is taken back. */
const UNDONE: Readonly<Record<Tap["kind"], string>> = {
  "start-at": "move",
  go: "go",
  passed: "round",
  ended: "end",
  score: "count",
  body: "answer",
  lift: "lift",
  felt: "answer",
  version: "version",
  note: "note",
  stopped: "stop",
  "new-day": "new day",
  undo: "",
};

function barButtons(run: DayRun, name: ScreenName, element: HTMLDialogElement): readonly HTMLElement[] {
  const last = standing(run.events()).at(-1);
  const stopped = run.state().stopped !== undefined;
  return [
    ...(last
      ? [
          button(
            last.kind === "stopped" ? "Tapped by mistake" : `Undo ${UNDONE[last.kind]}`,
            () => {
              run.tap({ kind: "undo" });
            },
            { key: "undo" },
          ),
        ]
      : []),
    ...(stopped
      ? []
      : [
          button(
            "Stop sign",
            () => {
              run.tap({ kind: "stopped" });
              run.say("Stop. The plan ends here.");
            },
            { key: "stop", class: "day-stop-button" },
          ),
        ]),
    ...(name === screenNow(run, run.now()).name && name !== "log"
      ? []
      : [
          button(
            "Back",
            () => {
              run.show(undefined);
            },
            { key: "back" },
          ),
        ]),
    ...(name === "log"
      ? []
      : [
          button(
            "Log",
            () => {
              run.show("log");
            },
            { key: "log" },
          ),
        ]),
    button(
      "Close",
      () => {
        element.close();
      },
      { key: "close" },
    ),
  ];
}
