/** A value without some of its fields. */
export const without = <T extends object, K extends keyof T>(value: T, ...keys: readonly K[]): Omit<T, K> =>
  Object.fromEntries(Object.entries(value).filter(([key]) => !keys.includes(key as K))) as Omit<T, K>;
