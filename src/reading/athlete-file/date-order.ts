import type { Fault } from "../../models/fault.ts";
import type { DateOrder } from "../quantities/date.ts";

const NUMBERS = /(?<![\d:])(\d{1,2})[-/.](\d{1,2})[-/.](?:\d{4}|\d\d)(?!\d)/g;
const MONTHS = 12;

/** The order of day and month in a file, where some of its dates can be read in one order only and none contradicts. */
export function orderOfDates(text: string): DateOrder | undefined {
  const orders = new Set<DateOrder>();
  for (const [, first = "", second = ""] of text.matchAll(NUMBERS)) {
    if (Number(first) > MONTHS && Number(second) <= MONTHS) orders.add("day-first");
    if (Number(second) > MONTHS && Number(first) <= MONTHS) orders.add("month-first");
  }
  const [only] = orders;
  return orders.size === 1 ? only : undefined;
}

const EITHER_ORDER = "day and month can be read in either order";

/** One question about the order of day and month is enough for a file; it says how many dates it settles. */
export function onceForDates(faults: readonly Fault[]): readonly Fault[] {
  const doubtful = faults.filter((fault) => fault.problem === EITHER_ORDER);
  const [first, ...others] = doubtful;
  if (!first || others.length === 0) return faults;
  const dates = others.length === 1 ? "one other date" : `${others.length} other dates`;
  const problem = `${EITHER_ORDER}; so can ${dates} of this file, and one answer settles them all`;
  return faults
    .filter((fault) => !others.includes(fault))
    .map((fault) => (fault === first ? { ...first, problem } : fault));
}
