import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "../wording/basis.ts";

/** A choice with all its options, and which bands each is for. */
type BandChoice = {
  readonly question: string;
  readonly options: readonly {
    readonly name: string;
    readonly say: string;
    /** For which bands, in words; nothing where it is for none. */
    readonly who?: string;
  }[];
};

type BandPlan = { readonly band: { readonly title: string }; readonly plan: Pick<Plan, "choices"> };

/** The choices of all bands put together: both ways explained, each with those it suits. */
export function choicesOfBands(bands: readonly BandPlan[]): readonly BandChoice[] {
  const questions = new Map<string, Map<string, { name: string; say: string; bands: string[] }>>();
  for (const { band, plan } of bands) {
    for (const { movementName, question, pick, other } of plan.choices) {
      const asked = `${capitalised(movementName)}: ${question}`;
      const options =
        questions.get(asked) ?? new Map<string, { name: string; say: string; bands: string[] }>();
      questions.set(asked, options);
      for (const option of [pick, ...(other ? [other] : [])]) {
        const known = options.get(option.id) ?? {
          name: capitalised(option.name),
          say: option.say,
          bands: [],
        };
        options.set(option.id, known);
        if (option === pick) known.bands.push(band.title);
      }
    }
  }
  return [...questions].map(([question, options]) => ({
    question,
    options: [...options.values()].map(({ bands: own, ...option }) => ({
      ...option,
      ...(own.length > 0 && { who: sayWho(own, bands.length) }),
    })),
  }));
}

/** Titles of bands hold commas, so they are parted by semicolons; all of them need no list. */
const sayWho = (titles: readonly string[], all: number): string =>
  titles.length === all && all > 1 ? "For everyone here." : `For ${titles.join("; ")}.`;
