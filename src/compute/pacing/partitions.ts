import type { Course, CourseEffort, CourseItem } from "../../models/course.ts";

/** Numbers of rounds into which free work is cut, as far as the smallest amount allows. */
const ROUNDS = [1, 2, 4, 5, 10, 20, 25, 30] as const;
/** At most so many ways are offered. */
const MOST_WAYS = 5;

/** One way to do work that may be done in any order: its movements in order, in so many rounds, and the course it makes. */
export type WayOfOrder = {
  readonly course: Course;
  readonly members: readonly CourseEffort[];
  readonly rounds: number;
};

/**
 * The ways of cutting up the work that may be done in any order: as written, in equal rounds of all of it, and one after the other in
 * every order (up to three movements). Numbers of rounds that
 * divide every amount come first; without enough of those, amounts differ by one between rounds. None where no work is free.
 */
export function waysOf(course: Course): readonly WayOfOrder[] {
  const group = course.items.find(
    (item): item is CourseEffort => item.kind === "effort" && item.freeGroup !== undefined,
  )?.freeGroup;
  if (group === undefined) return [];
  const members = course.items.filter(
    (item): item is CourseEffort => item.kind === "effort" && item.freeGroup === group,
  );
  const amounts = members.map(({ amount }) => (amount.kind === "counted" ? amount.amount : 0));
  const smallest = Math.min(...amounts);
  if (members.length < 2 || smallest < 1) return [];
  const possible = ROUNDS.filter((rounds) => rounds <= smallest);
  const even = possible.filter((rounds) => amounts.every((amount) => amount % rounds === 0));
  const chosen = even.length >= 3 ? even : possible;
  const ways = thinned(chosen).map((rounds) => ({
    course: { ...course, items: cutUp(course.items, group, members, rounds) },
    members,
    rounds,
  }));
  const orders = members.length <= MOST_ORDERED ? permutations(members).slice(1) : [];
  return [...ways, ...orders.map((order) => inOrder(course, order))];
}

/** The free work one movement after the other, in an order. */
export const inOrder = (course: Course, members: readonly CourseEffort[]): WayOfOrder => ({
  course: { ...course, items: cutUp(course.items, members[0]?.freeGroup ?? 0, members, 1) },
  members,
  rounds: 1,
});

/** With more members than this not every order is listed, only that written: better ones are looked for from there. */
export const MOST_ORDERED = 3;

/** All orders, the one given first. */
function permutations<T>(items: readonly T[]): readonly (readonly T[])[] {
  if (items.length <= 1) return [items];
  return items.flatMap((item, at) =>
    permutations([...items.slice(0, at), ...items.slice(at + 1)]).map((rest) => [item, ...rest]),
  );
}

/** The smallest and largest, and some between. */
const thinned = (rounds: readonly number[]): readonly number[] =>
  rounds.length <= MOST_WAYS
    ? rounds
    : Array.from(
        { length: MOST_WAYS },
        (_, i) => rounds[Math.round((i * (rounds.length - 1)) / (MOST_WAYS - 1))] ?? 1,
      );

function cutUp(
  items: readonly CourseItem[],
  group: number,
  members: readonly CourseEffort[],
  rounds: number,
): readonly CourseItem[] {
  const out: CourseItem[] = [];
  const { before, after } = shiftsBeside(items, group, rounds);
  let done = false;
  for (const item of items) {
    const isMember = item.kind === "effort" && item.freeGroup === group;
    if (!isMember) {
      const round = item.pass.round + (done ? after : 0);
      out.push({ ...item, index: out.length, pass: { ...item.pass, round } });
      continue;
    }
    if (done) continue;
    done = true;
    for (let pass = 0; pass < rounds; pass += 1) {
      for (const member of members) out.push(partOf(member, pass, { rounds, before }, out.length));
    }
  }
  return out;
}

/** By how much rounds move where free work that shares a round with lines before or after it is cut into rounds of its own. */
function shiftsBeside(
  items: readonly CourseItem[],
  group: number,
  rounds: number,
): { readonly before: number; readonly after: number } {
  const isMember = (item: CourseItem): boolean => item.kind === "effort" && item.freeGroup === group;
  const first = items.findIndex(isMember);
  const last = items.findLastIndex(isMember);
  const own = items[first]?.pass.round;
  const shares = (from: number, to: number): number =>
    Number(
      rounds > 1 && items.slice(from, to).some((item) => item.kind === "effort" && item.pass.round === own),
    );
  const before = shares(0, first);
  return { before, after: before + rounds - 1 + shares(last + 1, items.length) };
}

function partOf(
  member: CourseEffort,
  pass: number,
  { rounds, before }: { readonly rounds: number; readonly before: number },
  index: number,
): CourseEffort {
  const { amount, scores } = member;
  const whole = amount.kind === "counted" ? amount.amount : 0;
  // What does not divide goes to the first rounds.
  const share = Number.isInteger(whole)
    ? Math.floor(whole / rounds) + (pass < whole % rounds ? 1 : 0)
    : whole / rounds;
  return {
    ...member,
    index,
    amount: { kind: "counted", amount: share },
    scores: whole > 0 ? (scores * share) / whole : 0,
    tieBreak: member.tieBreak && pass === rounds - 1,
    pass: passOf(member, pass, rounds, before),
  };
}

/** Cut into rounds, free work is no longer a line beside them. */
function passOf(
  { pass: own }: CourseEffort,
  pass: number,
  rounds: number,
  before: number,
): CourseEffort["pass"] {
  const { aside, ...rest } = own;
  const isAside = aside === true && rounds === 1;
  return { ...rest, ...(isAside ? { aside } : {}), round: own.round + before + pass };
}
