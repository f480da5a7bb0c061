import { marksOf } from "../../live/course-marks.ts";
import { courseNow, type CourseNow, timeLimit } from "../../live/course-now.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { whichMark } from "../../live/which-mark.ts";
import { sayDeadline } from "../../wording/gates.ts";
import { sayIfThen } from "../../wording/if-then.ts";
import { sayAtHand, sayBehind, saySetNow } from "../../wording/live.ts";
import { sayPart } from "../../wording/part-name.ts";
import { sayRoundLabel } from "../../wording/round-name.ts";
import { sayClock } from "../../wording/time.ts";
import { sayLoad } from "../../wording/mass.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { liveTape } from "./day-tape.ts";
import { button, make, setText } from "./dom.ts";
import { gapNote } from "./gap-note.ts";

type Mark = NonNullable<CourseNow["next"]>;

/** What a mark is called inside a sentence. */
const sayMark = ({ kind, label }: Pick<Mark, "kind" | "label">): string =>
  kind === "round" ? sayRoundLabel(label) : label;

/** The screen from "go": read from two metres, tapped without looking. */
export function courseScreen(run: DayRun, times: PartTimes): Screen {
  const { part } = times;
  const { pacing } = part;
  if (!pacing) throw new RangeError(`part ${part.name} has no paced work`);
  const { units } = run.plan.athlete;
  const marks = marksOf(pacing);
  const texts = courseTexts();
  const here = (now: number): CourseNow =>
    courseNow(pacing, part.format, currentState(run, part.name, now), now);
  const first = here(run.now());
  const limit = timeLimit(pacing, part.format);
  const tape = liveTape(
    {
      length: tapeLength(pacing.duration, limit, first),
      pieces: marks.map(({ planned }, at) => ({ from: marks[at - 1]?.planned ?? 0, to: planned })),
      ...(pacing.half && { half: pacing.half.clock }),
      done: first.passed.flatMap(({ done }) => done ?? []),
    },
    "The plan to the scale of time, your taps below it, and a mark where the clock is",
  );
  const protect = pacing.roles.limiter === undefined ? "" : `protect: ${pacing.roles.limiter}`;
  const context = { units, perRound: pacing.perRound };
  const gap = gapNote(run, times);
  const update = (now: number): void => {
    const at = here(now);
    gap.update(now);
    setText(texts.clock, sayClock(Math.floor(at.clock)));
    texts.clock.classList.toggle("long", at.clock >= 3600);
    tape.move(at.clock);
    setText(texts.next, at.next ? `${sayMark(at.next)} by ${sayClock(at.next.planned)}` : "to the end");
    const behind = Math.max(at.behind ?? -Infinity, at.overdue > 0 ? at.overdue : -Infinity);
    setText(texts.behind, Number.isFinite(behind) ? sayBehind(behind) : "");
    texts.behind.classList.toggle("late", behind > 1.5);
    const said = at.row && sayAtHand(at.row, at.set);
    setText(texts.hand, said?.amount ?? "");
    const load = at.row?.load ? ` at ${sayLoad(at.row.load, units)}` : "";
    setText(texts.what, said ? `${said.what}${load}` : "");
    setText(texts.set, (at.row && saySetNow(at.row, at.set)) ?? "");
    const then = at.threshold && sayIfThen(at.threshold, pacing, context);
    const gate = at.gate && sayDeadline(at.gate, pacing.score, context);
    setText(texts.advice, [then?.then, gate, protect].filter(Boolean).join(" · "));
  };
  const element = make(
    "div",
    { class: "day-screen day-course" },
    make("div", { class: "day-head" }, texts.clock, texts.behind),
    tape.element,
    make(
      "div",
      { class: "day-body" },
      gap.element,
      texts.next,
      make("div", { class: "day-athand" }, texts.hand, texts.what),
      texts.set,
      texts.advice,
    ),
    make("div", { class: "day-foot" }, ...courseButtons(run, times, first)),
  );
  return { element, update };
}

/** The texts that change with the clock. */
const courseTexts = () => ({
  clock: make("p", { class: "day-figure" }),
  next: make("p", { class: "day-mark" }),
  behind: make("p", { class: "day-behind" }),
  hand: make("p", { class: "day-hand" }),
  what: make("p", { class: "day-what" }),
  set: make("p", { class: "day-set" }),
  advice: make("p", { class: "day-advice" }),
});

/** The plan and a little more; the cap where it lies near, and whatever was needed. Seconds. */
const tapeLength = (duration: number, limit: number | undefined, { clock }: CourseNow): number =>
  Math.max(1, 1.1 * clock, limit !== undefined && limit < NEAR * duration ? limit : 1.08 * duration);

const NEAR = 1.3;

const currentState = (run: DayRun, name: string, now: number) => {
  const found = run.times(now).find(({ part }) => part.name === name);
  if (!found) throw new RangeError(`there is no part ${name}`);
  return found.state;
};

function courseButtons(run: DayRun, times: PartTimes, drawn: CourseNow): readonly HTMLElement[] {
  const { part } = times;
  const { pacing } = part;
  if (!pacing) return [];
  const marks = marksOf(pacing);
  const pass = (): void => {
    const now = run.now();
    const at = courseNow(pacing, part.format, currentState(run, part.name, now), now);
    const mark = whichMark(marks, at.passed, at.clock);
    if (!mark) return;
    run.tap({ kind: "passed", part: part.name, row: mark.row });
    run.say(`${sayMark(mark)} at ${sayClock(at.clock)}, ${sayBehind(at.clock - mark.planned)}`);
  };
  const { next } = drawn;
  const isLast = next !== undefined && marks.at(-1)?.row === next.row;
  const label =
    next === undefined
      ? ""
      : isLast && pacing.ending === "finishes"
        ? "Done"
        : `${next.kind === "round" ? sayRoundLabel(next.label) : next.label} done`;
  return [
    ...(next ? [button(label, pass, { class: "day-big", key: "pass" })] : []),
    ...(part.lifting
      ? [
          button(
            "The bar",
            () => {
              run.show("bar");
            },
            { key: "bar" },
          ),
        ]
      : []),
    ...(next === undefined || part.format === "for-time"
      ? [
          button(
            `End part ${sayPart(part.name)}`,
            () => {
              run.tap({ kind: "ended", part: part.name });
            },
            { key: "end" },
          ),
        ]
      : []),
  ];
}
