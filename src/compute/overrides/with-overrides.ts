import type { ModelConstant } from "../../models/model-constant.ts";
import { ownEntry } from "../../models/own-entry.ts";

/**
 * The plain numbers of a model's constants, each replaced where the coach sets it differently.
 * Names the model does not know are left alone: they belong to another model.
 *
 * @example withOverrides({ rest: { value: 60 } }, { rest: 90 }).rest // => 90
 */
export function withOverrides<Name extends string>(
  constants: Readonly<Record<Name, Pick<ModelConstant, "value">>>,
  overrides: Readonly<Record<string, number>> = {},
): Readonly<Record<Name, number>> {
  const names = Object.keys(constants) as Name[];
  return Object.fromEntries(
    names.map((name) => [name, ownEntry(overrides, name) ?? constants[name].value]),
  ) as Readonly<Record<Name, number>>;
}
