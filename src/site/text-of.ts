import { getEntry, render } from "astro:content";

/** The coach's text of a workout, compiled; nothing where there is none. */
export async function textOf(workout: string): Promise<Text | undefined> {
  const entry = await getEntry("workouts", workout);
  if (!entry || (entry.data as { readonly hasText?: boolean }).hasText !== true) return undefined;
  return (await render(entry)).Content;
}

type Text = Awaited<ReturnType<typeof render>>["Content"];
