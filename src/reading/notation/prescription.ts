/** The work as written, line by line, indented by two spaces a level. */
export function prescriptionOf(work: unknown, level = 0): readonly string[] {
  const indentation = "  ".repeat(level);
  if (Array.isArray(work)) return work.flatMap((item: unknown) => prescriptionOf(item, level));
  if (typeof work === "string") return [`${indentation}${work.trim()}`];
  if (typeof work !== "object" || work === null) return [];
  return Object.entries(work).flatMap(([name, inside]) => [
    `${indentation}${name.trim()}:`,
    ...prescriptionOf(inside, level + 1),
  ]);
}
