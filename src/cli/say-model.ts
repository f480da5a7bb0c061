import type { FixedTable, ModelTable } from "../compute/model-tables.ts";
import { rangeOf, type FixedConstant, type ModelConstant } from "../models/model-constant.ts";
import { edges, heading, wrap } from "./text-block.ts";

const number = (value: number): string => String(Number(value.toPrecision(4)));

/** What a number of the model is shown by: its lines, and the words it is found by. */
type Shown = {
  readonly about: string;
  readonly name: string;
  readonly does: string;
  readonly lines: readonly string[];
};

/**
 * The constants of the model, table by table: name, value, unit and what is possible, what it does, where it comes from and how
 * far it can be trusted; and what the coach's settings make of it; after them those no coach sets. Only those whose name, table or
 * meaning holds `asked`.
 */
export function modelAsText(
  tables: readonly ModelTable[],
  fixed: readonly FixedTable[],
  overrides: Readonly<Record<string, number>>,
  asked = "",
): string {
  const word = asked.toLowerCase();
  const settable = tables.flatMap(({ about, constants }) =>
    Object.entries(constants).map(([name, one]): Shown => ({
      about,
      name,
      does: one.does,
      lines: linesOf(name, one, overrides[name]),
    })),
  );
  const others = fixed.flatMap(({ about, constants }) =>
    Object.entries(constants).map(([name, one]): Shown => ({
      about: `${about}, not to be set`,
      name,
      does: one.does,
      lines: linesOfFixed(name, one),
    })),
  );
  const told = [...settable, ...others].filter(({ about, name, does }) =>
    [about, name, does].some((text) => text.toLowerCase().includes(word)),
  );
  if (told.length === 0) return `No number of the model has "${asked}" in its name or in what it does.`;
  return [...new Set(told.map(({ about }) => about))]
    .map((table) =>
      [heading(table), ...told.filter(({ about }) => about === table).flatMap(({ lines }) => lines)].join(
        "\n",
      ),
    )
    .join("\n\n");
}

const linesOfFixed = (
  name: string,
  { value, unit, does, source, confidence }: FixedConstant,
): readonly string[] => [
  ...wrap(`${name} ${sayValue(value)} ${unit}`, 2, 6),
  ...wrap(does, 6),
  ...wrap(`${confidence}: ${source}`, 6),
];

function sayValue(value: FixedConstant["value"]): string {
  if (typeof value === "number") return number(value);
  if (Array.isArray(value)) return value.map(number).join(", ");
  return Object.entries(value)
    .map(([name, one]) => `${name} ${sayValue(one)}`)
    .join("; ");
}

function linesOf(name: string, constant: ModelConstant, yours: number | undefined): readonly string[] {
  const { value, unit, does, source, confidence } = constant;
  const [least, most] = rangeOf(constant).map(number);
  const set = yours === undefined ? "" : `, set to ${number(yours)} in content/settings.yaml`;
  return [
    ...edges(`  ${name}  ${number(value)} ${unit}${set}`, `${least} to ${most}`),
    ...wrap(does, 6),
    ...wrap(`${confidence}: ${source}`, 6),
  ];
}
