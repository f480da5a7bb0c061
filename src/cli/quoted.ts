/** A word of a command as it is typed: in quotes where it has spaces. @example quoted("my site") // => "\"my site\"" */
export const quoted = (word: string): string => (/\s/.test(word) ? `"${word}"` : word);
