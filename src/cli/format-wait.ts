/** How long something will take, as one says it. @example formatWait(75) // => "about 2 min" */
export const formatWait = (seconds: number): string =>
  seconds < 60 ? `about ${Math.max(1, Math.ceil(seconds))} s` : `about ${Math.ceil(seconds / 60)} min`;
