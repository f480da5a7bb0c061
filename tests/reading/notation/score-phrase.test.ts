import { describe, expect, it } from "vitest";
import { readScore } from "../../../src/reading/notation/score-phrase.ts";
import { SCORE_KINDS } from "../../../src/models/vocabulary.ts";
import { sourceFrom } from "../../support/reading-lines.ts";

describe("what is scored", () => {
  const written: readonly (readonly [string, unknown])[] = [
    ["time", { kind: "time", restCounts: true }],
    ["time without rest", { kind: "time", restCounts: false }],
    ["reps", { kind: "reps", restCounts: true }],
    ["rounds and reps", { kind: "rounds-and-reps", restCounts: true }],
    ["load", { kind: "load", restCounts: true }],
    ["sum of loads", { kind: "sum-of-loads", restCounts: true }],
    ["load x reps", { kind: "load-times-reps", restCounts: true }],
    ["calories", { kind: "calories", restCounts: true }],
    ["metres", { kind: "metres", restCounts: true }],
    ["lowest interval", { kind: "lowest-interval", restCounts: true }],
    ["highest interval", { kind: "highest-interval", restCounts: true }],
    ["sum of lowest", { kind: "sum-of-lowest", restCounts: true }],
    ["slowest interval", { kind: "slowest-interval", of: "time", restCounts: true }],
    ["fastest interval", { kind: "highest-interval", of: "time", restCounts: true }],
    ["intervals completed", { kind: "intervals-completed", restCounts: true }],
  ];

  it.each(written)("may be %s", (text, score) => {
    expect(readScore(sourceFrom(text), [])).toEqual(score);
  });

  it("may be every kind of score there is", () => {
    const kinds = written.map(([, score]) => (score as { readonly kind: string }).kind);
    expect(new Set(kinds)).toEqual(new Set(SCORE_KINDS));
  });

  it.each([
    ["Total Reps", "reps"],
    ["rounds + reps", "rounds-and-reps"],
    ["heaviest lift", "load"],
    ["slowest round", "slowest-interval"],
  ])("may be said as %s", (text, kind) => {
    expect(readScore(sourceFrom(text), [])?.kind).toBe(kind);
  });
});
