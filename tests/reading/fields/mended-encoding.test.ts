import { describe, expect, it } from "vitest";
import { mendedEncoding } from "../../../src/reading/fields/mended-encoding.ts";

describe("a text from another encoding", () => {
  it.each([
    ["JosÃ©", "José"],
    ["ZoÃ« Ã…ngstrÃ¶m", "Zoë Ångström"],
    ["Åukasz", undefined],
    ["MÃ¼ller", "Müller"],
    ["Dâ€™Arc", "D’Arc"],
    ["José", undefined],
    ["Ângela Ñandú", undefined],
    ["Ana", undefined],
  ])("%s is mended to %s", (broken, mended) => {
    expect(mendedEncoding(broken)).toBe(mended);
  });
});
