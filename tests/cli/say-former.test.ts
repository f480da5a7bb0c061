import { expect, it } from "vitest";
import { sayFormer } from "../../src/cli/say-former.ts";

it("says whose links have ended and what that means", () => {
  expect(
    sayFormer([
      { id: "ana", name: "Ana Ruddock" },
      { id: "bo", name: "Bo Ferrow", now: "Ulrike Zander" },
    ]),
  ).toBe(`Links have ended, because their readers have left:
  athletes/ana.yaml, Ana Ruddock: there is no such file any more
  athletes/bo.yaml was that of Bo Ferrow and is that of Ulrike Zander
They open nothing once the site is built and put up again. Who comes back, or has only another name, gets new links: npm run links`);
});
