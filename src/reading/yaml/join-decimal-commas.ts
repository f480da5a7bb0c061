import { isScalar, visit, type Node, type Pair, type Scalar } from "yaml";

/**
 * Mends entries between braces that a decimal comma has cut in two: `{best: 82,5 kg}` reads as `best: 82` and a nameless
 * `5 kg`. Joined only where nothing else can be meant: digit, comma, digit without a space, and no value of its own.
 * Changes the tree in place.
 */
export function joinDecimalCommas(root: Node, source: string): void {
  visit(root, {
    Map(_key, map) {
      if (map.flow !== true) return;
      for (let index = map.items.length - 1; index > 0; index--) {
        const [before, pair] = [map.items[index - 1], map.items[index]];
        if (!before || !pair || !continues(before, pair, source)) continue;
        join(before.value as Scalar, pair.key as Scalar, source);
        map.items.splice(index, 1);
      }
    },
  });
}

function continues(before: Pair, pair: Pair, source: string): boolean {
  const { value } = before;
  const { key } = pair;
  if (pair.value !== null || !isPlain(value) || !isPlain(key)) return false;
  const comma = value.range?.[1];
  if (comma === undefined || key.range?.[0] !== comma + 1) return false;
  return /^\d,\d$/.test(source.slice(comma - 1, comma + 2));
}

const isPlain = (node: unknown): node is Scalar => isScalar(node) && node.type === "PLAIN";

function join(value: Scalar, rest: Scalar, source: string): void {
  if (!value.range || !rest.range) return;
  value.range = [value.range[0], rest.range[1], rest.range[2]];
  value.source = source.slice(value.range[0], value.range[1]);
  value.value = value.source;
}
