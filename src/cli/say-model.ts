import type { ModelTable } from "../compute/model-tables.ts";
import { rangeOf, type ModelConstant } from "../models/model-constant.ts";
import { edges, heading, wrap } from "./text-block.ts";

const number = (value: number): string => String(Number(value.toPrecision(4)));

/**
 * The constants of the model, table by table: name, value, unit and what is possible, what it does, where it comes from and how
 * far it can be trusted; and what the coach's settings make of it. Only those whose name, table or meaning holds `asked`.
 */
export function modelAsText(
  tables: readonly ModelTable[],
  overrides: Readonly<Record<string, number>>,
  asked = "",
): string {
  const word = asked.toLowerCase();
  const blocks = tables.flatMap(({ about, constants }) => {
    const told = Object.entries(constants).filter(([name, { does }]) =>
      [about, name, does].some((text) => text.toLowerCase().includes(word)),
    );
    if (told.length === 0) return [];
    return [
      [heading(about), ...told.flatMap(([name, constant]) => linesOf(name, constant, overrides[name]))],
    ];
  });
  if (blocks.length > 0) return blocks.map((lines) => lines.join("\n")).join("\n\n");
  return `No number of the model has "${asked}" in its name or in what it does.`;
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
