/** What the warm-up holds, as far as a moved start is concerned. */
export type MovedStart = {
  readonly hasBuild: boolean;
  readonly hasRehearsal: boolean;
  readonly isHot: boolean;
};

/** What to do when the start is called early, in one or two sentences to the athlete. */
export function ifCalledEarly({ hasBuild, hasRehearsal }: MovedStart): string {
  const kept = [
    ...(hasBuild ? ["the last two sets of your build"] : []),
    ...(hasRehearsal ? ["the rehearsal"] : []),
  ].join(" and ");
  return kept === ""
    ? "If you are called early, walk over calmly and start easier than you think."
    : `If you are called early, keep ${kept} and let the rest go. Stop three minutes before you start.`;
}

/** What to do when the start slips. */
export function ifStartSlips({ hasBuild, isHot }: MovedStart): string {
  const again = hasBuild ? "one single with the second heaviest load of your build" : "the rehearsal";
  const wait = isHot ? "stay in the shade and keep cool" : "keep something warm on and keep walking";
  return `If the start slips by ten minutes or less, ${wait}. If it slips by more, repeat ${again} five minutes before the new start.`;
}
