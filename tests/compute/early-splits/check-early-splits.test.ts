import { earlyFault } from "../../../src/wording/early-fault.ts";
import { expect, it } from "vitest";
import { checkEarlySplits } from "../../../src/compute/early-splits/check-early-splits.ts";
import { contentMovements } from "../../support/content-movements.ts";
import { soundWorkout } from "../../support/workout-notation.ts";

const check = (performance: string) =>
  checkEarlySplits(
    soundWorkout(`divisions: [men, women]
for time:
work:
  - 4/3 rounds:
      - 10 burpee
      - 10 pull-up
early:
  - {who: first heat, after: round, ${performance}}`),
    contentMovements,
  )
    .map(earlyFault)
    .map(({ found, problem, remedy }) => [found, problem, remedy]);

it("clocks that the work can have are no fault", () => {
  expect(check("division: men, splits: [1:10, 2:25, 3:40, 4:50]")).toEqual([]);
  expect(check("splits: [1:10, 2:25, 3:40]")).toEqual([]);
});

it("more clocks than a division has rounds are told, once", () => {
  expect(check("splits: [1:10, 2:25, 3:40, 4:50, 6:00]")).toEqual([
    [
      "5 splits",
      'part a has 4 rounds, fewer than the splits of "first heat"',
      "Write one clock for the end of each round, or `after: line` if they were read after every line.",
    ],
  ]);
});

it("clocks that fit one division only ask for it", () => {
  expect(check("splits: [1:10, 2:25, 3:40, 4:50]")).toEqual([
    [
      "4 splits",
      'part a has 3 rounds, fewer than the splits of "first heat"',
      "Say the division it was done in, as in `division: men`.",
    ],
  ]);
});

it("a time that no work of this kind takes is asked for", () => {
  // Four rounds of 10 burpees and 10 pull-ups: minutes, neither seconds nor hours.
  const [told] = check('division: men, splits: ["0:03", "0:06", "0:09", "0:12"]');
  expect(told?.[0]).toBe("0:12");
  expect(told?.[1]).toMatch(
    /^part a of "first heat": so much work takes a regular athlete about \d+:\d\d; is this the time of it\?$/,
  );
  expect(check("division: men, time: 95:00")[0]?.[0]).toBe("1:35:00");
  expect(check("division: men, time: 6:00")).toEqual([]);
});

it("a load that is a share of a best does not hinder the check", () => {
  const workout = soundWorkout(`divisions: [men, women]
for time:
work:
  - 2 rounds:
      - 10 burpee
      - 8 thruster at 50%
early:
  - {who: first heat, after: round, splits: [1:40, 3:25, 5:00]}`);
  expect(checkEarlySplits(workout, contentMovements)).toMatchObject([{ kind: "too-many-splits", most: 2 }]);
});
