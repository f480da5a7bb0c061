import { beforeAll, describe, expect, it } from "vitest";
import { planSchema } from "../../src/models/plan/plan.ts";
import { disagreements, disagreementsOfPage } from "../support/disagreements.ts";
import { DAY, FIXTURE, fixtureLinks, fixtureSite, type FixtureLink } from "../support/fixture-site.ts";
import { openedPage } from "../support/opened-page.ts";
import { runCommand, TEST_SECRET } from "../support/run-command.ts";

describe("page, terminal, sheet and card of one plan", () => {
  let site = "";
  let links: readonly FixtureLink[] = [];
  beforeAll(async () => {
    site = await fixtureSite();
    // The board is no brief.
    links = (await fixtureLinks("http://localhost")).filter(({ workout }) => workout !== "");
  }, 600_000);

  it("say the same, for everybody whose page opens without a passcode", { timeout: 300_000 }, async () => {
    const found: string[] = [];
    let compared = 0;
    for (const link of links) {
      const page = await openedPage(site, link);
      if (page === undefined) continue;
      const { out } = await runCommand(
        "plan",
        ["--data", FIXTURE, "--athlete", link.athlete, "--workout", link.workout, "--date", DAY, "--json"],
        { RIGSHEET_SECRET: TEST_SECRET },
      );
      const plan = planSchema.parse(JSON.parse(out));
      const trouble = [...disagreementsOfPage(plan, page), ...disagreements(plan)];
      found.push(...trouble.map((each) => `${link.athlete}, ${link.workout}: ${each}`));
      compared += 1;
    }
    expect(found).toEqual([]);
    expect(compared).toBeGreaterThanOrEqual(3);
  });

  it("would be told apart", async () => {
    const [first] = links;
    if (!first) throw new Error("nobody has a link");
    const { out } = await runCommand("plan", [
      "--data",
      FIXTURE,
      "--athlete",
      first.athlete,
      "--workout",
      first.workout,
      "--date",
      DAY,
      "--json",
    ]);
    expect(disagreementsOfPage(planSchema.parse(JSON.parse(out)), "aim at nothing").length).toBeGreaterThan(
      0,
    );
  });
});
