import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "../wording/basis.ts";
import { sayList } from "../wording/number.ts";

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

type BandPlan = {
  readonly band: { readonly title: string };
  readonly plan: Pick<Plan, "choices"> & { readonly athlete: Pick<Plan["athlete"], "level"> };
};

/** The choices of all bands put together: both ways explained, each with those it suits. */
export function choicesOfBands(bands: readonly BandPlan[]): readonly BandChoice[] {
  const questions = new Map<string, Map<string, { name: string; say: string; bands: BandPlan[] }>>();
  for (const band of bands) {
    for (const { movementName, question, pick, other } of band.plan.choices) {
      const asked = `${capitalised(movementName)}: ${question}`;
      const options =
        questions.get(asked) ?? new Map<string, { name: string; say: string; bands: BandPlan[] }>();
      questions.set(asked, options);
      for (const option of [pick, ...(other ? [other] : [])]) {
        const known = options.get(option.id) ?? {
          name: capitalised(option.name),
          say: option.say,
          bands: [],
        };
        options.set(option.id, known);
        if (option === pick) known.bands.push(band);
      }
    }
  }
  return [...questions].map(([question, options]) => ({
    question,
    options: [...options.values()].map(({ bands: own, ...option }) => ({
      ...option,
      ...(own.length > 0 && { who: sayWho(own, bands) }),
    })),
  }));
}

/** Levels of which all bands are meant by their names, other bands by their titles, which hold commas and are parted by semicolons. */
function sayWho(own: readonly BandPlan[], all: readonly BandPlan[]): string {
  if (own.length === all.length && all.length > 1) return "For everyone here.";
  const levels = [...Map.groupBy(all, ({ plan }) => plan.athlete.level)];
  const whole = levels.filter(([, bands]) => bands.length > 1 && bands.every((band) => own.includes(band)));
  const names = whole.map(([level]) => level);
  const others = own.filter(({ plan }) => !names.includes(plan.athlete.level)).map(({ band }) => band.title);
  const told = [...(names.length > 0 ? [`${sayList(names, "and")} athletes`] : []), ...others];
  return `For ${told.join("; ")}.`;
}
