import { briefText } from "../../src/cli/brief-text.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { sayGuide, sayHalf } from "../../src/wording/guide.ts";
import { saySetUp } from "../../src/wording/set-up.ts";
import { contentMovements } from "./content-movements.ts";

type Part = Plan["parts"][number];
type Row = NonNullable<Part["pacing"]>["rows"][number];
type Choice = Plan["choices"][number];

/** One way advice can speak against the plan beside it: what is found is quoted. `text` is the whole brief as it is read. */
export type Rule = {
  readonly id: string;
  readonly find: (plan: Plan, text: string) => readonly string[];
};

const workRows = (parts: readonly Part[]): readonly Row[] =>
  parts.flatMap((part) => part.pacing?.rows ?? []).filter((row) => row.kind === "work" && row.amount > 0);

const rowsAt = (plan: Plan, { movement, parts }: Choice): readonly Row[] =>
  workRows(plan.parts.filter(({ name }) => parts.length === 0 || parts.includes(name))).filter(
    (row) => row.movement === movement,
  );

const largest = (rows: readonly Row[]): number =>
  Math.max(0, ...rows.flatMap((row) => row.sets.map((set) => set.amount)));
const isBroken = (rows: readonly Row[]): boolean => rows.some((row) => row.sets.length > 1);
const mostlyOnes = (rows: readonly Row[]): boolean => {
  const sets = rows.filter((row) => row.sets.length > 1).flatMap((row) => row.sets.map((set) => set.amount));
  return sets.length > 0 && sets.filter((amount) => amount <= 1).length * 2 > sets.length;
};

/** What an option takes for granted of the plan, by choice and option. */
type Claim = "one go" | "sets" | "ones" | "two or more";
const CLAIMS: Readonly<Record<string, Claim>> = {
  "double-under-rhythm=one-set": "one go",
  "double-under-rhythm=planned-sets": "sets",
  "double-under-rhythm=with-singles": "sets",
  "bar-cycling=singles": "ones",
  "bar-cycling=short-sets": "sets",
  "bar-cycling=touch-and-go": "two or more",
  "deadlift-cycle=touch-and-go": "two or more",
  "hanging-raise-style=linked": "two or more",
  "muscle-up-sets=linked": "two or more",
  "muscle-up-sets=singles": "ones",
  "strict-pull-sets=small-sets": "two or more",
  "strict-pull-sets=singles": "ones",
  "strict-raise-sets=small-sets": "two or more",
  "strict-raise-sets=singles": "ones",
  "push-up-breaks=early": "sets",
  "push-up-breaks=late": "one go",
  "overhead-set-length=one-set": "one go",
  "overhead-set-length=planned-sets": "sets",
  "dumbbell-hold=on-the-shoulders": "one go",
  "dumbbell-hold=on-the-floor": "sets",
  "carry-stops=planned": "sets",
  "carry-stops=unbroken": "one go",
  "sled-rhythm=bursts": "sets",
  "pull-up-style=butterfly": "two or more",
};

const HOLDS: Readonly<Record<Claim, (rows: readonly Row[]) => boolean>> = {
  "one go": (rows) => !isBroken(rows),
  sets: isBroken,
  ones: (rows) => largest(rows) <= 1 || mostlyOnes(rows),
  "two or more": (rows) => largest(rows) > 1 && !mostlyOnes(rows),
};

/** Where a load rises the choice changes with it, and a limit rules over the plan. */
const isPlanned = ({ changesAt, decidedBy }: Choice): boolean =>
  changesAt === undefined && decidedBy !== "limit";

const claimsAgainstSets: Rule = {
  id: "a choice takes other sets for granted than the plan has",
  find: (plan) =>
    plan.choices.filter(isPlanned).flatMap((choice) => {
      const claim = CLAIMS[`${choice.id}=${choice.pick.id}`];
      const rows = rowsAt(plan, choice);
      return claim === undefined || rows.length === 0 || HOLDS[claim](rows)
        ? []
        : [`${choice.movement}: ${choice.pick.name}, planned ${setsOf(rows)}`];
    }),
};

const setsOf = (rows: readonly Row[]): string =>
  rows.map((row) => row.sets.map(({ amount }) => amount).join("-")).join(" | ");

const guideAgainstSets: Rule = {
  id: "the guiding sentence says other sets than the table",
  find: ({ parts }) =>
    parts.flatMap(({ pacing }) => {
      const guide = pacing && sayGuide(pacing);
      if (pacing === undefined || guide === undefined) return [];
      return [...new Set(workRows(parts).map(({ name }) => name))].flatMap((name) => {
        const rows = pacing.rows.filter((row) => row.kind === "work" && row.name === name);
        const clause = guide
          .toLowerCase()
          .split(/, |; |\. /)
          .find((each) => each.startsWith((rows[0]?.plural ?? name).toLowerCase()));
        if (clause === undefined || rows.length === 0) return [];
        const most = / in sets of (\d+)/.exec(clause)?.[1] ?? /never more than (\d+)/.exec(clause)?.[1];
        const wrong =
          (clause.includes("in one go") && !clause.includes("first") && isBroken(rows)) ||
          (most !== undefined && !isBroken(rows)) ||
          (most !== undefined && mostlyOnes(rows)) ||
          (clause.includes("one at a time") && !(largest(rows) <= 1 || mostlyOnes(rows)));
        return wrong ? [`${clause}, planned ${setsOf(rows)}`] : [];
      });
    }),
};

const FINISH = /Finish in [^:]*: the (.*?) at /;
const finishOfNothing: Rule = {
  id: "the finish is in a visit the clock cuts short",
  find: ({ parts }) =>
    parts.flatMap(({ pacing }) => {
      const found = pacing && FINISH.exec(sayGuide(pacing) ?? "");
      if (!found) return [];
      const rows = pacing.rows.filter((row) => [row.name, row.plural].includes(found[1]));
      const last = rows.at(-1);
      const usual = rows.at(-2)?.amount ?? 0;
      return last && last.amount * 2 < usual && last.prescribed !== undefined ? [found[0]] : [];
    }),
};

// A second of a pace (`1 s a rep`) at the end of the line before is no rep.
const onesUnbroken: Rule = {
  id: "a single rep is called unbroken",
  find: (_, text) =>
    [...text.matchAll(/(?<![\d.:])1 (?:of \d+ )?(?!s\b)[a-z][^:]{0,60}: unbroken/g)].map(([all]) => all),
};

const tooHeavyAgainstSets: Rule = {
  id: "a load told as singles is planned in sets",
  find: (plan, text) =>
    plan.parts.flatMap(({ pacing }) =>
      (pacing?.tooHeavy ?? []).flatMap(({ name, plural, load }) => {
        const rows = (pacing?.rows ?? []).filter(
          (row) => row.name === name && row.load?.kilograms === load.kilograms,
        );
        const sentence =
          new RegExp(`${plural} at [^.]*(?:\\.\\d[^.]*)*too heavy[^.]*\\.[^.]*\\.`).exec(text)?.[0] ?? "";
        const ones = /Singles/.test(sentence) && largest(rows) > 1 && !mostlyOnes(rows);
        const twos = /Ones and twos/.test(sentence) && largest(rows) > 2;
        return ones || twos ? [`${sentence} planned ${setsOf(rows)}`] : [];
      }),
    ),
};

/** Two options of one brief that cannot both be followed. */
const EXCLUDE: readonly (readonly [string, string])[] = [
  ["burpee-footwork=step", "box-landing=rebound"],
  ["burpee-footwork=step", "over-the-bar=two-feet"],
  ["burpee-footwork=jump", "over-the-bar=careful"],
  ["burpee-footwork=step", "box-crossing=over"],
];
const choicesAgainstEachOther: Rule = {
  id: "two choices of one movement exclude each other",
  find: ({ choices }) =>
    EXCLUDE.flatMap(([one, other]) =>
      choices
        .filter((choice) => `${choice.id}=${choice.pick.id}` === one)
        .filter((choice) =>
          choices.some((each) => each.movement === choice.movement && `${each.id}=${each.pick.id}` === other),
        )
        .map(({ movement }) => `${movement}: ${one} beside ${other}`),
    ),
};

const LIGHT = /\b(?:is|the bar is) light\b|At this load (?:the bounce|straight arms)|only costs time/;
const lightAgainstLoad: Rule = {
  id: "a load near the best is called light",
  find: (plan) =>
    plan.choices.flatMap((choice) => {
      const share = Math.max(0, ...rowsAt(plan, choice).map((row) => row.load?.shareOfBest ?? 0));
      const said = `${choice.pick.say} ${choice.reason?.say ?? ""}`;
      return LIGHT.test(said) && share >= 0.75 && choice.changesAt === undefined
        ? [`${choice.movement} at ${share}: ${said}`]
        : [];
    }),
};

const newcomersSwing: Rule = {
  id: "a newcomer is told to swing",
  find: ({ athlete, choices, basis }) =>
    athlete.level !== "new"
      ? []
      : choices
          .filter(
            ({ id, movement, pick, decidedBy, reason, because }) =>
              decidedBy !== "preference" &&
              !because.some(({ what }) => what === "set-known") &&
              basis.some(
                ({ kind, about }) => kind === "level" && about === contentMovements.get(movement)?.name,
              ) &&
              ((id === "pull-up-style" && pick.id !== "strict") ||
                (id === "hanging-raise-style" && pick.id === "linked")) &&
              reason !== undefined,
          )
          .map(({ movement, pick }) => `${movement}: ${pick.name}`),
};

const setOutOf = ({ setUp }: Plan): readonly string[] =>
  setUp.flatMap((line) => (line.kind === "equipment" ? line.things.map(({ what }) => what) : []));

/** Movements of the plan, also those it does not come to: they are set out all the same. */
const doneIn = (plan: Plan): readonly string[] => [
  ...plan.parts.flatMap((part) => part.pacing?.rows ?? []).flatMap(({ movement }) => movement ?? []),
  ...plan.parts.flatMap((part) =>
    (part.lifting?.lifts ?? []).flatMap(({ movement, others = [] }) => [movement, ...others]),
  ),
];

const BY_KIND: Readonly<Record<string, string>> = {
  barbell: "barbell",
  dumbbell: "dumbbell",
  kettlebell: "kettlebell",
};
const needsOf = (id: string): readonly string[] => {
  const movement = contentMovements.get(id);
  if (movement === undefined) return [];
  const held = movement.loading?.held === "bar" && id !== "yoke-carry" ? ["barbell"] : [];
  const kind = BY_KIND[movement.kind];
  return [
    ...(movement.needs ?? []),
    ...(movement.erg ? [movement.erg] : []),
    ...(kind ? [kind] : []),
    ...held,
  ];
};

const setOutAgainstWork: Rule = {
  id: "what is used is not set out, or what is set out is not used",
  find: (plan) => {
    const things = setOutOf(plan);
    const used = doneIn(plan).flatMap(needsOf);
    if (workRows(plan.parts).length === 0) return [];
    // Behind where a plan ends more is prescribed than is done, and stands there.
    const endsEarly = plan.parts.some(({ pacing }) => pacing?.ending === "stopped-by-cap");
    const idle = endsEarly ? [] : things.filter((what) => !used.includes(what));
    return [
      ...[...new Set(used)].filter((what) => !things.includes(what)).map((what) => `${what} is not set out`),
      ...idle.map((what) => `${what} is set out for nothing`),
    ];
  },
};

/** Words of set-up and cautions with what must be done for them to be said. */
const any = (plan: Plan, test: (id: string) => boolean): boolean => doneIn(plan).some(test);
const needs =
  (...what: readonly string[]) =>
  (plan: Plan): boolean =>
    any(plan, (id) => needsOf(id).some((each) => what.includes(each)));
const lifts = (plan: Plan): boolean => plan.parts.some((part) => part.lifting !== undefined);
const heavy = (plan: Plan): boolean =>
  lifts(plan) || workRows(plan.parts).some((row) => (row.load?.shareOfBest ?? 0) >= 0.7);
const CAUTIONS_FOR: Readonly<Record<string, (plan: Plan) => boolean>> = {
  box: needs("box"),
  falls: needs("climbing-rope", "pegboard"),
  "rings-and-bar": (plan) => any(plan, (id) => id.includes("muscle-up")),
  water: (plan) => any(plan, (id) => id === "swim"),
  "upside-down": (plan) =>
    any(plan, (id) => contentMovements.get(id)?.stresses.includes("upside-down") === true),
  "two-misses": lifts,
  "not-alone": heavy,
  "failing-a-clean": (plan) => any(plan, (id) => /clean|cluster|front-squat|ground-to-overhead/.test(id)),
  "failing-overhead": (plan) => any(plan, (id) => /snatch|jerk|overhead|press|cluster/.test(id)),
  "failing-a-pull": (plan) => any(plan, (id) => /deadlift|pull/.test(id)),
};
const cautionForNothing: Rule = {
  id: "a caution speaks of what is not done",
  find: (plan) =>
    workRows(plan.parts).length === 0 && !lifts(plan)
      ? []
      : [
          ...plan.cautions
            .filter(({ id }) => CAUTIONS_FOR[id]?.(plan) === false)
            .map(({ title, say }) => `${title}: ${say}`),
          ...plan.cautions
            .filter(
              ({ say }) =>
                /\bhang(?:ing)?\b/i.test(say) && !needs("rig", "rings", "climbing-rope", "pegboard")(plan),
            )
            .map(({ title, say }) => `${title}: ${say}`),
        ],
};

const loadersForNothing: Rule = {
  id: "loaders, plates or a floor are told for what nobody changes",
  find: (plan) => {
    const loads = new Map<string, Set<number>>();
    for (const row of workRows(plan.parts)) {
      const { movement = "", load } = row;
      if (load && needsOf(movement).includes("barbell")) {
        loads.set("bar", (loads.get("bar") ?? new Set()).add(load.kilograms));
      }
    }
    const changes = lifts(plan) || (loads.get("bar")?.size ?? 0) > 1;
    return plan.setUp
      .filter((line) => line.kind === "loading" && !changes)
      .map((line) => saySetUp(line, plan.athlete.units));
  },
};

const tieBreakForNothing: Rule = {
  id: "a tie-break is told where there is none",
  find: (plan, text) => {
    const has =
      workRows(plan.parts).some((row) => row.tieBreak) ||
      plan.setUp.some((line) => line.kind === "tie-break" || line.kind === "tie-break-note") ||
      plan.parts.some((part) => part.prescription.some((line) => /tie-break/.test(line)));
    return !has && /tie.?break/i.test(text) ? [/.{0,40}tie.?break.{0,40}/i.exec(text)?.[0] ?? ""] : [];
  },
};

/** From here on seconds are worth saying. */
const WORTH = 15;
const thresholds: Rule = {
  id: "a threshold has nothing left to change, or its forecast goes the wrong way",
  find: ({ parts }) =>
    parts.flatMap(({ pacing }) =>
      (pacing?.ifThen ?? []).flatMap((one) => {
        if (pacing === undefined) return [];
        const left = pacing.duration - one.planned;
        const more = one.when === "later-than" || one.when === "fewer-than";
        const isTime = pacing.score === "time" || pacing.score === "slowest-interval";
        const worse = isTime ? 1 : -1;
        const by = one.projected === undefined ? 0 : (one.projected - pacing.result.target) * worse;
        return [
          ...(left < WORTH ? [`${one.when} at ${one.planned} of ${pacing.duration}`] : []),
          ...(more && by < -0.5
            ? [`behind and still better: ${one.projected} for ${pacing.result.target}`]
            : []),
          ...(!more && by > 0.5
            ? [`ahead and still worse: ${one.projected} for ${pacing.result.target}`]
            : []),
          ...(one.action.kind === "smaller-sets" && one.action.amount >= largest(rowsAfter(pacing.rows, one))
            ? [`${one.action.name} in ${one.action.amount}s is no change`]
            : []),
        ];
      }),
    ),
};

const rowsAfter = (
  rows: readonly Row[],
  { row, action }: NonNullable<Part["pacing"]>["ifThen"][number],
): readonly Row[] =>
  rows.filter((each) => each.index > row && action.kind === "smaller-sets" && each.name === action.name);

/** Work shorter than this has no time to wait with being ahead. */
const SHORT = 8 * 60;
const holdInShortWork: Rule = {
  id: "short work is told to hold back when ahead",
  find: ({ parts }) =>
    parts.flatMap(({ pacing }) =>
      pacing !== undefined &&
      pacing.duration < SHORT &&
      pacing.ifThen.some(({ action }) => action.kind === "hold")
        ? [`hold in ${pacing.duration} s of work`]
        : [],
    ),
};

const MAY_DOUBLE = /\b(?:had had|that that)\b/i;
const language: Rule = {
  id: "a word is doubled, missing or raw",
  find: (_, text) => {
    const said = text.replaceAll(/\s+/g, " ");
    return [
      ...(said.match(/\b([a-z]+) \1\b(?!:)/gi) ?? []).filter((each) => !MAY_DOUBLE.test(each)),
      ...(said.match(/.{0,30}(?:NaN|undefined|Infinity|\[object|null\b).{0,20}/g) ?? []),
      ...(said.match(/.{0,30}[{}*#].{0,20}/g) ?? []),
      ...(said.match(/.{0,30}(?: [,.;:]|\.\.|,,|;;)(?= ).{0,20}/g) ?? []),
      ...(said.match(/(?<![\d.,+–-] ?)\b0 (?:rounds(?! \+)|lifts|min|s a rep)\b/g) ?? []),
      ...(said.match(/(?<![\d.,+–-] ?)\b1 (?:reps|rounds|lifts|steps|breaths|sets|kilos|places)\b/g) ?? []),
      ...(said.match(/(?<=[a-z]\. )[a-z]\w+/g) ?? []),
    ];
  },
};

const plurals: Rule = {
  id: "a name stands in the wrong number",
  find: (plan, text) => {
    const said = text.replaceAll(/\s+/g, " ");
    const names = [...new Map(workRows(plan.parts).map((row) => [row.name, row.plural ?? row.name]))];
    return names
      .filter(([name, plural]) => name !== plural)
      .flatMap(([name, plural]) => [
        ...(said.match(new RegExp(`(?<![\\d.:])\\b1 ${plural}\\b`, "g")) ?? []),
        ...(bodyOf(plan, said).match(
          new RegExp(`(?<![\\d.:-])\\b(?:[2-9]|\\d\\d+) ${name}\\b(?!s|-)`, "g"),
        ) ?? []),
      ]);
  },
};

/** The brief without the work as it was written, which keeps the words of its author. */
const bodyOf = (plan: Plan, said: string): string =>
  plan.parts
    .flatMap(({ prescription }) => prescription.map((line) => line.trim()))
    .reduce((text, line) => text.replace(line, ""), said);

const units: Rule = {
  id: "a mass stands in a unit the reader does not use",
  find: (plan) => {
    const { units: own } = plan.athlete;
    const other = own === "kg" ? /\d lb\b/ : /\d kg\b/;
    const said = [
      ...plan.choices.flatMap(({ pick, reason, switchWhen, test }) => [
        pick.say,
        reason?.say,
        switchWhen,
        test,
      ]),
      ...(plan.warmUp?.steps ?? []).map(({ say }) => say),
      ...(plan.after?.day.pieces ?? []).map(({ say }) => say),
    ];
    return said.filter((each) => each !== undefined).filter((each) => other.test(each));
  },
};

/** Sentences that lead, not names of things: as many words are said once on a brief. */
const LONG = 6;
/** Why a choice is made: each says it, also where one limit decides two. */
const isReason = (sentence: string): boolean => sentence.startsWith("You state a limit at the ");
const saidTwice: Rule = {
  id: "the same sentence stands twice",
  find: (_, text) => {
    const sentences = text
      .replaceAll(/\s+/g, " ")
      .split(/(?<=[.!?]) (?=[A-Z])/)
      .filter((each) => each.split(" ").length >= LONG && !/\d/.test(each) && !isReason(each));
    return sentences.filter((each, at) => sentences.indexOf(each) !== at);
  },
};

const chalkTwoWays: Rule = {
  id: "chalk once beside chalk on the way",
  find: ({ choices, setUp }) =>
    choices.some(({ pick }) => pick.id === "chalk-once") && setUp.some(({ kind }) => kind === "chalk")
      ? ["chalk once, and chalk where you pass by"]
      : [],
};

const buildRises: Rule = {
  id: "a build falls, or loads one load in two ways",
  find: ({ warmUp }) => {
    const sets = (warmUp?.steps ?? []).flatMap((step) => step.sets);
    const loads = sets.map(({ load }) => load.kilograms);
    return [
      ...(loads.some((load, at) => at > 0 && load < (loads[at - 1] ?? 0))
        ? [`falls: ${loads.join(", ")}`]
        : []),
      ...(new Set(loads).size < loads.length ? [`twice: ${loads.join(", ")}`] : []),
    ];
  },
};

const limitsKept: Rule = {
  id: "something that is left out is advised",
  find: (plan) => {
    const out = plan.withheld.flatMap(({ movement, what }) =>
      movement !== undefined && what === "movement" ? [movement] : [],
    );
    return doneIn(plan).filter((id) => out.includes(id));
  },
};

const lengthOfPart: Rule = {
  id: "a choice tells another length than the plan",
  find: (plan) =>
    plan.choices.flatMap((choice) =>
      (choice.reason?.values ?? []).flatMap(({ gap, value }) => {
        const part = plan.parts.find(({ name }) => name === choice.parts[0]);
        const pacing = part?.pacing;
        // Behind work out of reach the clock of the part runs on.
        const minutes = ((pacing?.duration ?? 0) + (pacing?.whenStopped?.left ?? 0)) / 60;
        const set = largest(rowsAt(plan, choice));
        return (gap === "minutes" && Math.abs(value - minutes) > 0.5) || (gap === "set" && value !== set)
          ? [`${choice.movement}: ${gap} ${value}, planned ${gap === "set" ? set : minutes}`]
          : [];
      }),
    ),
};

const halfForNothing: Rule = {
  id: "half of the work is told as late where it is not",
  find: ({ parts }) =>
    parts.flatMap(({ pacing }) =>
      pacing?.half &&
      Math.max(pacing.half.shareOfReps, pacing.half.shareOfTime) < 0.53 &&
      /only/.test(sayHalf(pacing, "") ?? "")
        ? [`half of the work at ${pacing.half.shareOfReps} of the reps`]
        : [],
    ),
};

const BREATH = /take your breath on the ([^.;]+)/;
const breathWithLoad: Rule = {
  id: "a breath is to be taken with something in the hands",
  find: (plan) =>
    plan.parts.flatMap(({ pacing }) => {
      const said = pacing && BREATH.exec(sayGuide(pacing) ?? "")?.[1];
      const row = said && pacing.rows.find(({ name, plural }) => [name, plural].includes(said));
      return row && row.load !== undefined ? [said] : [];
    }),
};

const rehearsedTooHeavy: Rule = {
  id: "a load the build stops short of is rehearsed",
  find: ({ parts, warmUp }) =>
    (warmUp?.steps ?? [])
      .flatMap(({ efforts = [] }) => efforts)
      .filter(({ name }) =>
        workRows(parts)
          .filter((row) => row.name === name)
          .every((row) => (row.load?.shareOfBest ?? 0) > 0.8),
      )
      .map(({ name }) => name),
};

const heatForNothing: Rule = {
  id: "heat or a film is told where there is none",
  find: (plan) => [
    ...(plan.warmUp?.moved.isHot === true && !plan.cautions.some(({ id }) => id.startsWith("heat"))
      ? ["stay cool in the shade"]
      : []),
    ...((plan.warmUp?.before ?? []).some(({ id }) => id === "camera") &&
    !plan.setUp.some(({ kind }) => kind === "film")
      ? ["set the camera"]
      : []),
  ],
};

export const rules: readonly Rule[] = [
  claimsAgainstSets,
  guideAgainstSets,
  finishOfNothing,
  onesUnbroken,
  tooHeavyAgainstSets,
  choicesAgainstEachOther,
  lightAgainstLoad,
  newcomersSwing,
  setOutAgainstWork,
  cautionForNothing,
  loadersForNothing,
  tieBreakForNothing,
  thresholds,
  holdInShortWork,
  language,
  plurals,
  units,
  saidTwice,
  chalkTwoWays,
  buildRises,
  limitsKept,
  lengthOfPart,
  halfForNothing,
  breathWithLoad,
  rehearsedTooHeavy,
  heatForNothing,
];

/** Every contradiction of a brief, each with its rule. */
export function contradictionsIn(plan: Plan): readonly string[] {
  const text = briefText(plan);
  return rules.flatMap(({ id, find }) => find(plan, text).map((quote) => `${id}: ${quote}`));
}
