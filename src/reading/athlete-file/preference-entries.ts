import * as z from "zod";
import { comparable, nearestName } from "../../models/nearest.ts";
import { tellRefusal, type Refusal } from "../yaml/refuse.ts";
import { spaced } from "../fields/word-field.ts";
import type { AthleteContext } from "./context.ts";

export const writtenPreferences = z
  .record(z.string(), z.string())
  .describe("the version the athlete prefers, by the choice a movement offers: `pull-up style: butterfly`");

/** Reads preferred options: the choice is one that a movement offers, the option one of its options. */
export function readPreferences(
  written: z.output<typeof writtenPreferences>,
  ctx: z.RefinementCtx,
  context: Pick<AthleteContext, "choices">,
): Readonly<Record<string, string>> {
  const ids = [...context.choices.keys()];
  const preferred: [string, string][] = [];
  for (const [name, option] of Object.entries(written)) {
    const choice = ids.find((id) => comparable(id) === comparable(name));
    const options = choice === undefined ? [] : (context.choices.get(choice) ?? []);
    const found = options.find(({ id, name: said }) =>
      [id, said].some((each) => comparable(each) === comparable(option)),
    );
    if (choice !== undefined && found) preferred.push([choice, found.id]);
    else if (choice === undefined) {
      const problem = "no movement offers a choice of this name";
      tellUnknown(ctx, { path: [name], at: "name", found: name, problem }, ids, nearestName(name, ids));
    } else {
      const names = options.flatMap(({ id, name: said }) => [id, said]);
      const meant = nearestName(option, names);
      const nearest = options.find(({ id, name: said }) => meant === id || meant === said)?.id;
      const problem = `this is not one of the options of ${spaced(choice)}`;
      tellUnknown(
        ctx,
        { path: [name], found: option, problem },
        [...new Set(options.map(({ id }) => id))],
        nearest,
      );
    }
  }
  return Object.fromEntries(preferred);
}

type Unknown = Pick<Refusal, "path" | "at" | "found" | "problem">;

function tellUnknown(
  ctx: z.RefinementCtx,
  unknown: Unknown,
  allowed: readonly string[],
  nearest: string | undefined,
): void {
  tellRefusal(ctx, {
    ...unknown,
    allowed: allowed.map(spaced).join(", "),
    nearest: nearest === undefined ? undefined : spaced(nearest),
    remedy: nearest === undefined ? "Write one of the names allowed." : `Write \`${spaced(nearest)}\`.`,
  });
}
