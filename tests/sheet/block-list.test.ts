import { describe, expect, it } from "vitest";
import { measureBlock, type Block } from "../../src/sheet/block.ts";
import {
  BLOCK_IDS,
  LOWER_CONCESSIONS,
  blockOf,
  brevityAfter,
  type BlockId,
} from "../../src/sheet/block-list.ts";
import { setterOf } from "../../src/sheet/type-setting.ts";
import { sheetFonts } from "../support/load-fonts.ts";
import { samplePlans } from "../support/sample-plan.ts";

const setter = setterOf(sheetFonts);
const plan = samplePlans.forTimeThenLift;
const linesOf = (block: Block | undefined): readonly string[] =>
  (block?.lines ?? []).map((line) =>
    [line.label, ...line.runs.map((run) => run.text)].filter(Boolean).join(" ").replaceAll("\u00a0", " "),
  );
const lines = (id: BlockId, detail: "full" | "short" | "shorter"): readonly string[] =>
  linesOf(blockOf(plan, id, detail));

describe("what is given up", () => {
  it("is never what is withheld, and cautions only become shorter", () => {
    const least = brevityAfter(LOWER_CONCESSIONS);
    expect([least.withheld, least.cautions]).toEqual([undefined, "shorter"]);
  });

  it("is in the end everything else", () => {
    const least = brevityAfter(LOWER_CONCESSIONS);
    const kept = BLOCK_IDS.filter((id) => least[id] !== "dropped");
    expect(kept).toEqual(["withheld", "cautions"]);
  });
});

describe("a block", () => {
  it("of the warm-up counts back with every build set; short leaves out how, shorter keeps a line a time", () => {
    expect(lines("warm-up", "full")[3]).toBe(
      "18:16 Build the clean and jerk One clean rep each; the bar should move fast every time.",
    );
    expect(lines("warm-up", "short").slice(3, 6)).toEqual([
      "18:16 Build the clean and jerk",
      "3 × 15 kg: empty bar",
      "2 × 35 kg: 10 kg a side",
    ]);
    expect(lines("warm-up", "shorter")).toEqual([
      "18:00 Judge, camera, plates",
      "18:05 Wrists and ankles",
      "18:10 Easy rowing",
      "18:16 Build the clean and jerk 3 × 15 kg: empty bar; 2 × 35 kg: 10 kg a side; 1 × 45 kg: 15 kg a side; 1 × 53 kg: 15 + 2.5 + 1.5 kg a side",
      "18:27 Half a round at planned pace",
      "18:29 Rest and stay warm",
      "18:40 Start",
    ]);
  });

  it("of the warm-up puts short steps that follow each other on one line, but not the rehearsal", () => {
    const { warmUp } = plan;
    const [step] = warmUp?.steps ?? [];
    if (!warmUp || !step) throw new Error("the sample warms up");
    const stepOf = (clock: string, title: string, lasts: number, stage = step.stage) => ({
      ...step,
      ...{ clock, title, lasts, stage },
      sets: [],
    });
    const steps = [
      stepOf("18:00", "Wrists", 120),
      stepOf("18:02", "Ankles", 180),
      stepOf("18:05", "Easy rowing", 480),
      stepOf("18:13", "Low hops", 60),
      stepOf("18:14", "Once through", 60, "rehearsal"),
    ];
    const shorter = blockOf({ ...plan, warmUp: { ...warmUp, steps } }, "warm-up", "shorter");
    expect(linesOf(shorter)).toEqual([
      "18:00 Wrists · Ankles",
      "18:05 Easy rowing",
      "18:13 Low hops",
      "18:14 Once through",
      "18:40 Start",
    ]);
  });

  it("of the warm-up knows at its shortest, where a line would be broken, fewer names and sets without plates", () => {
    const block = blockOf(plan, "warm-up", "shortest");
    const words = (runs: readonly { readonly text: string }[]): string =>
      runs.map(({ text }) => text.replaceAll("\u00a0", " ")).join(" ");
    const built = block?.lines.find(({ shorter }) => words(shorter?.[0] ?? []).includes("×"));
    expect(words(built?.runs ?? [])).toContain("a side");
    expect(words(built?.shorter?.[0] ?? [])).not.toContain("a side");
    // At half a Letter page less its margins every line of the timetable is one line.
    const width = 90;
    const line = measureBlock(
      { title: "", lines: [{ label: "18:00", runs: [{ text: "Start" }] }] },
      width,
      setter,
    );
    const title = measureBlock({ title: "", lines: [] }, width, setter);
    const all = block && measureBlock(block, width, setter);
    expect(all?.height).toBeCloseTo(
      title.height + (block?.lines.length ?? 0) * (line.height - title.height),
      6,
    );
  });

  it("of the work follows the lines as written; short runs them on", () => {
    expect(lines("work", "full").slice(0, 3)).toEqual([
      "A · for time, cap 12:00",
      "5 rounds",
      "16 kettlebell swings 16 kg",
    ]);
    expect(lines("work", "short")).toEqual([
      "A · for time, cap 12:00 5 rounds, 16 kettlebell swings 16 kg, 12 pull-ups, 10 box step-overs 50 cm",
      "B · heaviest clean and jerk, until 16:00 1 clean and jerk, as heavy as possible until 16:00",
    ]);
  });

  it("of finish times says when to lift what", () => {
    expect(blockOf(plan, "finish", "full")?.title).toBe("If A ends at");
    expect(lines("finish", "full")[1]).toBe("8:30 first lift 10:15, 3 lifts: 58 → 63 → 66 kg");
    expect(lines("finish", "short").length).toBe(4);
  });

  it("of choices names the option, how to do it and when to switch; short the option alone", () => {
    expect(lines("choices", "full")[0]).toBe(
      "Pull-ups: kipping. Kip every rep and drop on purpose at the planned number. Switch in round 5 if the last set of round 4 was easy.",
    );
    expect(lines("choices", "short")[0]).toBe("Pull-ups: kipping.");
  });

  it("of a choice that a stated limit decided does not name the limit", () => {
    const [choice] = plan.choices;
    if (!choice) throw new Error("the sample has a choice");
    const limited = { ...plan, choices: [{ ...choice, decidedBy: "limit" as const }] };
    expect(linesOf(blockOf(limited, "choices", "full"))[0]).not.toContain("unbroken set is");
  });

  it("of standards has those that cost this athlete first; short has only those", () => {
    expect(lines("standards", "full").at(-1)).toBe("Both feet touch the top of the box.");
    expect(lines("standards", "short").length).toBe(2);
  });

  it("of what comes after gives amounts; of the self-check what the pieces of the day are", () => {
    expect(lines("after", "short")).toEqual([
      "Walk, then row easily, 10 min.",
      "Carbohydrate in the first hour, 65–75 g.",
    ]);
    expect(lines("self-check", "full").slice(-2)).toEqual([
      "Rest. Nothing today is a good answer.",
      "Light pulls, 15 min. 4 × 3 clean pulls at 50 kg.",
    ]);
  });

  it("of cautions has stop signs first and the rules last; short their first sentence", () => {
    expect(lines("cautions", "full").map((line) => line.split(".")[0])).toEqual([
      "Stop at once",
      "Miss safely",
      "The rules come first",
    ]);
    const long = {
      ...plan,
      cautions: [
        { id: "x", title: "Heat", say: "Drink. Then rest.", weight: "care" as const, onSheet: true },
      ],
    };
    expect(linesOf(blockOf(long, "cautions", "short"))).toEqual(["Heat. Drink."]);
  });

  it("without content is not there", () => {
    const { almostNothingKnown } = samplePlans;
    const empty = BLOCK_IDS.filter((id) => blockOf(almostNothingKnown, id, "full") === undefined);
    expect(empty).toEqual([
      "warm-up",
      "gaps",
      "set-up",
      "standards",
      "count",
      "choices",
      "loads",
      "finish",
      "places",
      "rules",
      "self-check",
      "after",
    ]);
  });
});
