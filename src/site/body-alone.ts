/**
 * The text of an MDX file without its entries at the top, which are not YAML to everybody who would read them. Every line
 * keeps its number.
 */
export function bodyAlone(text: string): string {
  const top = /^\uFEFF?---\s*\n[\s\S]*?\n---[ \t\r]*(?=\n|$)/.exec(text)?.[0] ?? "";
  return top.replace(/[^\n]/g, "") + text.slice(top.length);
}
