/** A straight scale from a domain to a range. A domain without width maps to the middle of the range. */
export const scaleLinear =
  (domain: readonly [number, number], range: readonly [number, number]): ((value: number) => number) =>
  (value) => {
    const [low, high] = domain;
    const [from, to] = range;
    const share = high === low ? 0.5 : (value - low) / (high - low);
    return from + share * (to - from);
  };
