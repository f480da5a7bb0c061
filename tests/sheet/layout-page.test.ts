import { describe, expect, it } from "vitest";
import type { MeasureText } from "../../src/charts/drawing.ts";
import { capitalsFor, LEAST_CAPITALS } from "../../src/sheet/figure-size.ts";
import { layoutPage } from "../../src/sheet/layout-page.ts";
import { PAPERS } from "../../src/sheet/paper.ts";
import { textsOf, type SheetNode } from "../../src/sheet/sheet-node.ts";
import { setterOf } from "../../src/sheet/type-setting.ts";
import { boundsOf, type Box } from "../support/shape-bounds.ts";
import { sheetFonts } from "../support/load-fonts.ts";
import { samplePlans } from "../support/sample-plan.ts";

const setter = setterOf(sheetFonts);
const link = "HTTPS://BRIEF.EXAMPLE/B/7Q2M9K4TXW8C3RNA";
const cases = Object.entries(samplePlans).flatMap(([name, plan]) =>
  PAPERS.flatMap((paper) => [1, 1.5, 2, 2.5, 4].map((readAt) => ({ name, plan, paper, readAt }))),
);

/** The space that closes a run is no ink. */
const inked: MeasureText = (text, size, strong) => setter.measure(text.trimEnd(), size, strong);

const shapesOf = (nodes: readonly SheetNode[]): readonly Box[] =>
  nodes.flatMap((node) =>
    "children" in node ? shapesOf(node.children) : node.shapes.map((shape) => boundsOf(shape, inked)),
  );

describe.each(cases)("the page of $name on $paper, read from $readAt m", ({ plan, paper, readAt }) => {
  const least = capitalsFor(20, readAt);
  const page = layoutPage(plan, paper, least, link, setter);
  if (!page) throw new Error("every sample fits at these distances");

  it("has nothing under 2.5 mm, and key figures of the size their distance asks for", () => {
    const capitals = (size: number, strong: boolean): number => size / setter.sizeFor(1, strong);
    for (const { text, size, strong } of textsOf(page.nodes)) {
      expect(capitals(size, strong), text).toBeGreaterThanOrEqual(LEAST_CAPITALS);
    }
    expect(page.keyCapitals).toBeGreaterThanOrEqual(least);
  });

  it("keeps everything at least 5 mm from the edge of the paper", () => {
    for (const { left, top, right, bottom } of shapesOf(page.nodes)) {
      expect(Math.min(left, top, page.width - right, page.height - bottom)).toBeGreaterThanOrEqual(5);
    }
  });

  it("keeps texts apart", () => {
    const boxes = textsOf(page.nodes).map((text) => ({ text, box: boundsOf(text, inked) }));
    const touching = boxes.flatMap((one, index) =>
      boxes.slice(index + 1).flatMap((other) => {
        const [a, b] = [one.box, other.box];
        const apart =
          a.right <= b.left + 0.1 ||
          b.right <= a.left + 0.1 ||
          a.bottom <= b.top + 0.1 ||
          b.bottom <= a.top + 0.1;
        return apart ? [] : [`${one.text.text} | ${other.text.text}`];
      }),
    );
    expect(touching).toEqual([]);
  });

  it("where it folds, has every key figure above the fold", () => {
    const fold = page.height / 2;
    const large = textsOf(page.nodes).filter(
      ({ size, strong }) => strong && size >= setter.sizeFor(least * 0.99, true),
    );
    expect(large.length).toBeGreaterThan(readAt > 2.5 ? 0 : 2);
    if (page.folds) expect(large.filter(({ y }) => y > fold)).toEqual([]);
  });
});

it("at the usual distance every sample has its tape", () => {
  for (const plan of Object.values(samplePlans)) {
    const nodes = layoutPage(plan, "a4", capitalsFor(20, 1.5), link, setter)?.nodes ?? [];
    const words = nodes.map((node) => ("alt" in node ? node.alt : ""));
    expect(words.some((alt) => alt.includes("to the scale of time"))).toBe(true);
  }
});

it("what is withheld and the cautions stay however little room there is", () => {
  const plan = samplePlans.almostNothingKnown;
  const page = layoutPage(plan, "letter", capitalsFor(20, 3), link, setter);
  const text = textsOf(page?.nodes ?? [])
    .map((each) => each.text)
    .join(" ");
  expect(text).toContain("Left out on purpose");
  expect(text).toContain("Chest pain");
});

it("where rounds are left out above, each has its box for the judge below", () => {
  const { parts, ...plan } = samplePlans.twentyRounds;
  const said = (readAt: number): readonly string[] =>
    textsOf(
      layoutPage({ ...plan, parts }, "a4", capitalsFor(20, readAt), undefined, setter)?.nodes ?? [],
    ).map(({ text }) => text.trim());
  expect(said(3)).toContain("Rounds done, for your judge");
  expect(
    said(3)
      .filter((text) => /^(19|20)$/.test(text))
      .sort(),
  ).toContain("19");
  expect(said(1)).not.toContain("Rounds done, for your judge");
});
