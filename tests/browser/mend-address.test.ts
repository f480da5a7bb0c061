import { describe, expect, it } from "vitest";
import { mendAddress } from "../../src/browser/mend-address.ts";

const page = "https://example.org/gym/b/18F6KERWD7P9PHTK/";
const key = "3R3H6S9Z0B033QNZKE3T708CEDQ1FD0XNMNW9CRYSPZRW99KDFN0DDP";

describe("an address at which there is nothing", () => {
  it.each([
    ["the sign # written with %", `${page}%23${key}`],
    ["an end put to the path", `${page}index.html.#${key}`],
    ["no slash at the end", `${page.slice(0, -1)}#${key}`],
    ["a bracket behind the path", `${page}%3E#${key}`],
    ["small letters", `${page.replace("18F6KERWD7P9PHTK", "l8f6kerwd7p9phtk")}#${key}`],
    ["a mark of the messenger", `${page.slice(0, -1)}?from=chat%23${key}`],
  ])("is mended where it has %s", (_what, href) => {
    expect(mendAddress(href)).toBe(`${page}#${key}`);
  });

  it("leads to the page without a key where none came along", () => {
    expect(mendAddress("https://example.org/b/18f6kerwd7p9phtk")).toBe(
      "https://example.org/b/18F6KERWD7P9PHTK/",
    );
  });

  it.each([
    ["is a whole one, so that nothing goes round in a ring", `${page}#${key}`],
    ["has too few signs", `https://example.org/b/18F6KER/#${key}`],
    ["has too many signs", `https://example.org/b/18F6KERWD7P9PHTK0/#${key}`],
    ["is no locked page's", "https://example.org/strategy/kiln-road"],
    ["is no locked page's, though its key looks like one", "https://example.org/#/b/18F6KERWD7P9PHTK"],
  ])("stays as it is where it %s", (_what, href) => {
    expect(mendAddress(href)).toBeUndefined();
  });
});
