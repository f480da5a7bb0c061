import { expect, it } from "vitest";
import { readText, verdictsOf } from "../../support/table-verdicts.ts";

it("a division of an age alone takes the sex that stands beside it", () => {
  const read = readText(
    "Name,Level,Sex,Age group\nAna,new,F,35-39\nBo,new,M,55+\nCy,new,,40-44\nDi,new,F,women 35-39\nEd,new,M,RX\n",
  );
  expect(verdictsOf(read)).toMatchObject({
    D2: "women 35-39",
    D3: "men 55+",
    D4: "40-44",
    D5: "women 35-39",
    D6: "RX",
  });
  expect(read.athletes[0]?.cells.at(-1)?.told).toBe("read as women 35-39, with the sex beside it");
});
