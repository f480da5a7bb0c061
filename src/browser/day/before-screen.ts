import { type Schedule, moveStart, scheduleFrom } from "../../live/warm-up-schedule.ts";
import { warmUpNow, type WarmUpNow } from "../../live/warm-up-now.ts";
import type { DayState } from "../../live/day-state.ts";
import type { DayPlan } from "../../live/day-plan.ts";
import { capitalised } from "../../wording/basis.ts";
import { sayCalledEarly, sayStartSlips, sayWait } from "../../wording/moved-start.ts";
import { sayBuildRest, sayBuildSet, sayStep, titleOfStep } from "../../wording/warm-up.ts";
import { sayClock } from "../../wording/time.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { liveTape } from "./day-tape.ts";
import { button, make, setText } from "./dom.ts";
import { nearestMoment, sayWallTime } from "./moments.ts";

const MINUTE = 60_000;
/** How far one tap moves a start, minutes. */
const MOVES = [-10, -1, 1, 10] as const;

/** The start that holds now; nothing where none is known. */
function startOf(plan: DayPlan, { starts }: DayState): number | undefined {
  return starts.at(-1)?.start ?? (plan.start && Date.parse(plan.start.instant));
}

/** The warm-up as all moves of the start have left it. */
function scheduleOf(plan: DayPlan, state: DayState): Schedule | undefined {
  const first = plan.start ? Date.parse(plan.start.instant) : state.starts[0]?.start;
  if (first === undefined || plan.warmUp === undefined) return undefined;
  return state.starts.reduce(
    (schedule, { at, start }) => moveStart(schedule, at, start),
    scheduleFrom(plan.warmUp.steps, first),
  );
}

/** The warm-up as a live timetable: what now, what next, what to load, and a start that can be moved. */
export function beforeScreen(run: DayRun): Screen {
  const { plan } = run;
  const start = startOf(plan, run.state());
  const schedule = scheduleOf(plan, run.state());
  const zone = plan.start?.zone;
  const figure = make("p", { class: "day-figure" });
  const caption = make("p", { class: "day-caption" });
  const now = make("p", { class: "day-now" });
  const detail = make("p", { class: "day-detail" });
  const load = make("p", { class: "day-load" });
  const next = make("p", { class: "day-next" });
  const tape = schedule && tapeOf(schedule);
  const said = { now: "" };
  const update = (at: number): void => {
    if (start === undefined) {
      setText(caption, "When do you start?");
      return;
    }
    const left = (start - at) / 1000;
    setText(caption, left > 0 ? "start in" : "start was");
    setText(figure, sayClock(Math.ceil(Math.abs(left))));
    figure.classList.toggle("long", Math.abs(left) >= 3600);
    if (!schedule) return;
    tape?.move((at - (schedule.stretches[0]?.from ?? start)) / 1000);
    const found = warmUpNow(schedule, at);
    const words = wordsOf(found, plan);
    setText(now, words.now);
    setText(detail, words.detail);
    setText(load, words.load);
    setText(
      next,
      found.next
        ? `Next, ${sayWallTime(found.next.from, zone)}: ${titleOf(found.next)}`
        : `Next: the start, ${sayWallTime(start, zone)}`,
    );
    if (said.now !== words.said) {
      said.now = words.said;
      run.say(words.said);
    }
  };
  const element = make(
    "div",
    { class: "day-screen day-before" },
    make("div", { class: "day-head" }, caption, figure),
    ...(tape ? [tape.element] : []),
    make("div", { class: "day-body" }, now, load, ...movedNotes(run, schedule), detail, next),
    make("div", { class: "day-foot" }, ...moveButtons(run, start), goButton(run)),
  );
  return { element, update };
}

const titleOf = ({ kind, step }: NonNullable<WarmUpNow["next"]>): string => {
  const title = step ? titleOfStep(step) : "";
  return kind === "repeat" ? `once more: ${title}` : title;
};

function wordsOf(found: WarmUpNow, { athlete, warmUp }: DayPlan) {
  const left = sayClock(Math.max(0, Math.ceil(found.left)));
  const { now, set, nextSet } = found;
  const load = set
    ? `${sayBuildSet(set.set, athlete.units)}, ${sayBuildRest(set.set)}`
    : nextSet && now
      ? `to load: ${sayBuildSet(nextSet, athlete.units)}`
      : "";
  const after = set?.after ? `then ${sayBuildSet(set.after, athlete.units)}. ` : "";
  if (now?.kind === "wait") {
    const said = warmUp ? capitalised(sayWait(warmUp.moved)) : "";
    return { now: `${said}: ${left}`, detail: "", load, said };
  }
  if (now?.step === undefined)
    return found.startsIn > 0
      ? { now: `The warm-up begins in ${left}`, detail: "", load: "", said: "The warm-up has not begun" }
      : { now: "Time to go", detail: "", load: "", said: "Time to go" };
  const title = titleOf(now);
  const detail = `${after}${sayStep(now.step)}`;
  return { now: `${title}: ${left}`, detail, load, said: `Now: ${title}` };
}

function tapeOf(schedule: Schedule) {
  const from = schedule.stretches[0]?.from ?? schedule.start;
  return liveTape(
    {
      length: Math.max(1, (schedule.start - from) / 1000),
      pieces: schedule.stretches.map((stretch) => ({
        from: (stretch.from - from) / 1000,
        to: (stretch.to - from) / 1000,
        strong: stretch.step?.stage === "build",
      })),
      done: [],
    },
    "The warm-up to the scale of time, with a mark where you are",
  );
}

/** What a moved start means: what is left out, or the plan's own word for a start that slips. */
function movedNotes({ plan, state }: DayRun, schedule: Schedule | undefined): readonly HTMLElement[] {
  const { starts } = state();
  const planned = plan.start && Date.parse(plan.start.instant);
  const last = starts.at(-1)?.start;
  const before = starts.at(-2)?.start ?? planned;
  if (!schedule || !plan.warmUp || last === undefined || before === undefined || last === before) return [];
  const dropped = [...new Set(schedule.dropped.map(({ title }) => title))];
  const notes = [
    ...(dropped.length > 0 ? [`Left out: ${dropped.join("; ")}.`] : []),
    last < before ? sayCalledEarly(plan.warmUp.moved) : sayStartSlips(plan.warmUp.moved),
  ];
  return notes.map((note) => make("p", { class: "day-note" }, note));
}

function moveButtons(run: DayRun, start: number | undefined): readonly HTMLElement[] {
  const zone = run.plan.start?.zone;
  const move = (minutes: number): void => {
    run.tap({ kind: "start-at", start: (start ?? run.now()) + minutes * MINUTE });
  };
  const field = make("input", {
    attributes: {
      type: "time",
      id: "day-start",
      "data-key": "start-field",
      ...(start !== undefined && { value: sayWallTime(start, zone) }),
    },
  });
  const set = (): void => {
    const moment = nearestMoment(field.value, run.now(), zone);
    if (moment !== undefined) run.tap({ kind: "start-at", start: moment });
  };
  return [
    make(
      "div",
      { class: "day-moves", attributes: { role: "group", "aria-label": "Move the start" } },
      ...(start === undefined
        ? []
        : MOVES.map((minutes) => {
            const mover = button(`${minutes < 0 ? "−" : "+"}${Math.abs(minutes)}`, () => {
              move(minutes);
            });
            const by = Math.abs(minutes) === 1 ? "1 minute" : `${Math.abs(minutes)} minutes`;
            mover.setAttribute("aria-label", `Start ${by} ${minutes < 0 ? "sooner" : "later"}`);
            return mover;
          })),
    ),
    make(
      "div",
      { class: "day-moves" },
      make("label", { attributes: { for: "day-start" } }, "Start at"),
      field,
      button("Set", set, { key: "set-start" }),
    ),
  ];
}

/** The work begins with this tap, whatever the clock of the start says. */
function goButton(run: DayRun): HTMLElement {
  const [first] = run.plan.parts;
  return button(
    "Go",
    () => {
      if (first) run.tap({ kind: "go", part: first.name });
    },
    { class: "day-big", key: "go" },
  );
}
