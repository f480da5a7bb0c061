import type { Former } from "../site/former-athletes.ts";

/** Whose links have ended, and what to do where somebody has not left at all. */
export function sayFormer(former: readonly Former[]): string {
  const lines = former.map(({ id, name, now }) =>
    now === undefined
      ? `  athletes/${id}.yaml, ${name === "" ? "whose name was never read" : name}: there is no such file any more`
      : `  athletes/${id}.yaml was that of ${name} and is that of ${now}`,
  );
  return [
    "Links have ended, because their readers have left:",
    ...lines,
    "They open nothing once the site is built and put up again. Who comes back, or has only another name, gets new links: npm run links",
  ].join("\n");
}
