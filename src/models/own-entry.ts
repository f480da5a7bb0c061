/**
 * The entry of a group under a name that a person chose; nothing where the group has no such entry of its own. Reading it
 * with brackets would find what every object is born with under names such as `constructor`.
 *
 * @example ownEntry({ men: 3 }, "constructor") // => undefined
 */
export const ownEntry = <T>(group: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(group, name) ? group[name] : undefined;
