import { texts } from "virtual:rigsheet-texts";

/** A coach's text, compiled to a component. */
export type Text = (props: { readonly components: Readonly<Record<string, unknown>> }) => unknown;

/** The coach's text of a workout; nothing where there is none. */
export async function textOf(workout: string): Promise<Text | undefined> {
  const load = Object.hasOwn(texts, workout) ? texts[workout] : undefined;
  return (await load?.())?.Content;
}
