/** A part's name as it is shown: a single letter large, a longer name as written. @example sayPart("a") // => "A" */
export const sayPart = (name: string): string => (name.length === 1 ? name.toUpperCase() : name);
