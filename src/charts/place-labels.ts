/** A label that wants to stand at `x`; of two that collide the one with the smaller rank stays. */
export type WantedLabel = { readonly x: number; readonly width: number; readonly rank: number };

/** Where a label's left edge comes to stand: at its place, pushed inwards at the edges. */
const leftEdge = ({ x, width }: WantedLabel, from: number, to: number): number =>
  Math.min(Math.max(x - width / 2, from), Math.max(from, to - width));

/**
 * Which labels fit on one line from `from` to `to` with `gap` between them: taken in order of rank (ties: leftmost
 * first), a label that would touch one already placed is left out. Gives the centre of each kept label by its index.
 */
export function placeLabels(
  labels: readonly WantedLabel[],
  from: number,
  to: number,
  gap: number,
): ReadonlyMap<number, number> {
  const order = labels
    .map((label, index) => ({ label, index, left: leftEdge(label, from, to) }))
    .sort((a, b) => a.label.rank - b.label.rank || a.left - b.left);
  const placed: (typeof order)[number][] = [];
  for (const candidate of order) {
    const collides = placed.some(
      (other) =>
        candidate.left < other.left + other.label.width + gap &&
        other.left < candidate.left + candidate.label.width + gap,
    );
    if (!collides) placed.push(candidate);
  }
  return new Map(placed.map(({ label, index, left }) => [index, left + label.width / 2]));
}
