/** A number with its noun. @example counted(2, "sheet") // => "2 sheets" */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;
