import type { Checked, Fault } from "../../models/fault.ts";

/** Gathers values, faults and notices of many readings, so that no fault hides another. */
export type Collector = {
  readonly faults: Fault[];
  readonly notices: Fault[];
  /** The value of a reading; nothing when it has faults, which are kept. */
  readonly take: <T>(checked: Checked<T>) => T | undefined;
};

export function makeCollector(): Collector {
  const faults: Fault[] = [];
  const notices: Fault[] = [];
  return {
    faults,
    notices,
    take: (checked) => {
      if (!checked.ok) {
        faults.push(...checked.faults);
        return undefined;
      }
      notices.push(...checked.notices);
      return checked.value;
    },
  };
}
