import { FEELINGS, type Feeling } from "../../models/vocabulary.ts";
import { mayBeginAnew } from "../../live/day-state.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { feltOf, hasLog, writeLog } from "../../live/write-log.ts";
import { utf8 } from "../../lock/bytes.ts";
import { sayPart } from "../../wording/part-name.ts";
import { handOver } from "../hand-over.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { button, make } from "./dom.ts";
import { dayOfMoment } from "./moments.ts";

const FELT: Readonly<Record<(typeof FEELINGS)[number], string>> = {
  easy: "easy",
  right: "right",
  hard: "hard",
  "blew-up": "blew up",
};

/** What was tapped, as text and as a file to send; how it felt, and a note. */
export function logScreen(run: DayRun): Screen {
  const now = run.now();
  const times = run.times(now);
  const zone = run.plan.start?.zone;
  const begun = times.find(({ go }) => go !== undefined)?.go ?? now;
  const day = { plan: run.plan, state: run.state(), times, date: dayOfMoment(begun, zone) };
  const text = writeLog(day);
  const name = `${run.plan.workout.id}-${run.plan.athlete.id}.log.yaml`;
  const status = make("p", { class: "day-note", attributes: { role: "status" } });
  const note = make("textarea", {
    attributes: { id: "day-note", rows: "2", "data-key": "note" },
  });
  note.value = run.state().note ?? "";
  note.addEventListener("change", () => {
    run.tap({ kind: "note", text: note.value });
  });
  const element = make(
    "div",
    { class: "day-screen day-log" },
    make(
      "div",
      { class: "day-body" },
      ...times
        .filter(({ go }) => go !== undefined)
        .map((part) => questionsOf(run, part, feltOf(part, times))),
      make("label", { attributes: { for: "day-note" } }, "A note for your coach"),
      note,
      make("pre", { attributes: { tabindex: "0", "aria-label": "The log as text" } }, text),
      signalButtons(run),
      make("p", { class: "day-detail" }, "It stays on this device until you send it."),
      status,
    ),
    make(
      "div",
      { class: "day-foot day-row" },
      ...(hasLog(day) ? sendButtons(text, name, status) : []),
      ...(mayBeginAnew(run.events(), now)
        ? [
            button("Begin a new day", () => {
              run.tap({ kind: "new-day" });
            }),
          ]
        : []),
    ),
  );
  return { element, update: () => undefined };
}

/** Ways of sending the log to the coach; `status` says what came of it. */
function sendButtons(text: string, name: string, status: HTMLElement): readonly HTMLElement[] {
  const send = (share: boolean): void => {
    void handOver(utf8(text), name, "text/plain", share);
  };
  const copy = (): void => {
    void navigator.clipboard.writeText(text).then(
      () => (status.textContent = "Copied."),
      () => (status.textContent = "This browser does not let pages copy; save the file."),
    );
  };
  return [
    button("Send the file", () => {
      send(true);
    }),
    button("Copy the text", copy),
    button("Save the file", () => {
      send(false);
    }),
  ];
}

/** Signs beside what is seen, off until somebody wants them. */
function signalButtons(run: DayRun): HTMLElement {
  const { beep, buzz } = run.options();
  const set = (beepOn: boolean, buzzOn: boolean): void => {
    run.setOptions({ beep: beepOn, buzz: buzzOn });
  };
  return make(
    "div",
    { class: "day-moves", attributes: { role: "group", "aria-label": "A sign with every tap" } },
    button(
      "Beep at taps",
      () => {
        set(!beep, buzz);
      },
      { key: "beep", pressed: beep },
    ),
    button(
      "Buzz at taps",
      () => {
        set(beep, !buzz);
      },
      { key: "buzz", pressed: buzz },
    ),
  );
}

/** What the taps cannot tell of a part: the count where the clock ended it, how it felt, which version was done. */
function questionsOf(run: DayRun, { part, state }: PartTimes, known: Feeling | undefined): HTMLElement {
  const name = sayPart(part.name);
  const several = run.plan.parts.length > 1;
  const id = `day-count-${part.name.replace(/\W+/g, "-")}`;
  const count = make("input", {
    attributes: { id, type: "number", min: "0", step: "1", inputmode: "numeric", "data-key": id },
  });
  if (state.done !== undefined) count.value = String(state.done);
  count.addEventListener("change", () => {
    const done = Number(count.value);
    if (Number.isInteger(done) && done >= 0 && count.value !== "")
      run.tap({ kind: "score", part: part.name, done });
  });
  return make(
    "fieldset",
    {},
    make("legend", {}, several ? `How part ${name} felt` : "How it felt"),
    ...(part.pacing && part.pacing.ending !== "finishes"
      ? [make("label", { attributes: { for: id } }, "Counted in all"), count]
      : []),
    make(
      "div",
      { class: "day-row", attributes: { role: "group", "aria-label": `How part ${name} felt` } },
      ...FEELINGS.map((felt) =>
        button(
          FELT[felt],
          () => {
            run.tap({ kind: "felt", part: part.name, felt });
          },
          { key: `felt-${part.name}-${felt}`, pressed: known === felt },
        ),
      ),
      button(
        "an easier version",
        () => {
          const version = state.version === "scaled" ? "prescribed" : "scaled";
          run.tap({ kind: "version", part: part.name, version });
        },
        { key: `version-${part.name}`, pressed: state.version === "scaled" },
      ),
    ),
  );
}
