import { sayMissing } from "../wording/missing.ts";
import type { Plan } from "../models/plan/plan.ts";
import { sayBasis, saySharpen } from "../wording/basis.ts";
import { sayFinish, sayFinishPlan } from "../wording/lift-words.ts";
import { sayLoad, sayOtherUnit } from "../wording/mass.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayNearest, sayPerSide } from "../wording/plates.ts";
import type { Block, BlockLine, Detail } from "./block.ts";

/** The work as written, part by part. Short: run on in one paragraph a part. */
export function workBlock({ parts }: Plan, detail: Detail): Block | undefined {
  if (detail !== "full") {
    const lines = parts.map((part): BlockLine => {
      const text = part.prescription
        .map((line) => line.trim())
        .join(", ")
        .replaceAll(":, ", ": ");
      return { runs: [{ text: `${sayPart(part.name)} · ${part.title}`, strong: true }, { text }] };
    });
    return lines.length === 0 ? undefined : { title: "The work", lines };
  }
  const lines = parts.flatMap((part): readonly BlockLine[] => [
    { runs: [{ text: `${sayPart(part.name)} · ${part.title}`, strong: true }] },
    ...part.prescription.map((line) => {
      const spaces = line.length - line.trimStart().length;
      return { runs: [{ text: line.trim() }], indent: spaces / 2 };
    }),
  ]);
  return lines.length === 0 ? undefined : { title: "The work", lines };
}

/** A box to tick for each round, for the judge; nothing for work in one round. */
export function countBlock({ parts }: Plan): Block | undefined {
  const counted = parts.filter(({ pacing }) => (pacing?.rounds.length ?? 0) > 1);
  const lines = counted.map(({ name, pacing }): BlockLine => ({
    runs: counted.length > 1 ? [{ text: sayPart(name), strong: true }] : [],
    boxes: (pacing?.rounds ?? []).map(({ label }) => label),
  }));
  return lines.length === 0 ? undefined : { title: "Rounds done, for your judge", lines };
}

/** Prescribed loads with their plates; of those that cannot be made, what can. What hangs on no bar stands above, beside its movement. */
export function loadsBlock({ loads, athlete }: Plan): Block | undefined {
  const lines = loads.flatMap(({ name, load }): readonly BlockLine[] => {
    const plates = sayPerSide(load);
    const nearest = sayNearest(load);
    if (plates === undefined && nearest === undefined && sayOtherUnit(load, athlete.units) === undefined)
      return [];
    const words = [sayLoad(load, athlete.units), plates].filter(Boolean).join(": ");
    return [{ runs: [{ text: name, strong: true }, { text: nearest ? `${words}. ${nearest}.` : words }] }];
  });
  return lines.length === 0 ? undefined : { title: "Loads", lines };
}

/** For each lifting part: when to start and what to lift if the part before ends at another time. */
export function finishBlock({ parts }: Plan, detail: Detail): Block | undefined {
  const lines = parts.flatMap((part) => {
    const rows = part.lifting?.finishTable ?? [];
    const kept = detail !== "full" && rows.length > 4 ? rows.filter((_, index) => index % 2 === 0) : rows;
    return kept.map((row): BlockLine => ({ label: sayFinish(row), runs: [{ text: sayFinishPlan(row) }] }));
  });
  const after = parts.find((part) => part.lifting && part.start.after)?.start.after;
  return lines.length === 0
    ? undefined
    : { title: after ? `If ${sayPart(after)} ends at` : "If it starts at", lines };
}

/** The coach's or the event's rules of this workout. */
export const rulesBlock = ({ workout }: Plan): Block | undefined =>
  workout.rules.length === 0
    ? undefined
    : { title: "Rules to know", lines: workout.rules.map((rule) => ({ runs: [{ text: rule }] })) };

/** What could not be planned, and why. */
export function missingBlock({ parts, athlete }: Plan): Block | undefined {
  const lines = parts.flatMap((part) =>
    part.missing.map((why): BlockLine => ({
      runs: [{ text: `${sayPart(part.name)}:`, strong: true }, { text: sayMissing(why, athlete.units) }],
    })),
  );
  return lines.length === 0 ? undefined : { title: "Not planned", lines };
}

/** What the plan rests on. */
export function basisBlock({ basis }: Plan, detail: Detail): Block | undefined {
  const kept = detail !== "full" ? basis.slice(0, 2) : basis;
  const lines = kept.map((entry) => ({ runs: [{ text: sayBasis(entry) }] }));
  return lines.length === 0 ? undefined : { title: "What it rests on", lines };
}

/** The one test that would tell most. */
export const sharpenBlock = ({ sharpen }: Plan): Block | undefined =>
  sharpen && { title: "To know more", lines: [{ runs: [{ text: saySharpen(sharpen) }] }] };
