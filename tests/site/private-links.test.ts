import { FIRST_VERSIONS } from "../../src/site/link-versions.ts";
import { describe, expect, it } from "vitest";
import type { Data } from "../../src/models/data.ts";
import { readLinkKey } from "../../src/lock/link-key.ts";
import { groupPages, privatePages, readerPasscode } from "../../src/site/private-links.ts";

const secret = Uint8Array.from({ length: 32 }, (_, index) => index);
const data = {
  athletes: [{ id: "ada" }, { id: "ben" }],
  workouts: [{ id: "kiln-road" }, { id: "other" }],
} as unknown as Data;
const first = FIRST_VERSIONS;
const place = { base: "/gym/", origin: "https://example.org" };

describe("the locked pages of a site", () => {
  it("are the board and every athlete's brief of every workout", async () => {
    const pages = await privatePages(data, secret, first, place);
    expect(pages.map(({ athlete, workout }) => [athlete, workout])).toEqual([
      [undefined, undefined],
      ["ada", "kiln-road"],
      ["ada", "other"],
      ["ben", "kiln-road"],
      ["ben", "other"],
    ]);
    expect(new Set(pages.map(({ address }) => address)).size).toBe(5);
  });

  it("have a link of host, path, address and key", async () => {
    const brief = (await privatePages(data, secret, first, place))[1];
    // Address and key of ada and kiln-road by another implementation, see site-keys.test.ts and link-key.test.ts.
    expect(brief?.url).toBe("https://example.org/gym/b/VAE7SWVSQ62XCSFS/");
    expect(brief?.link).toBe(
      "https://example.org/gym/b/VAE7SWVSQ62XCSFS/#3R3H6S9Z0B033QNZKE3T708CEDQ1FD0XNMNW9CRYSPZRW99KDFN0DDP",
    );
    expect(await readLinkKey(brief?.link.split("#")[1] ?? "")).toEqual({ ok: true, key: brief?.key });
  });

  it("begin with the path where the host is not known", async () => {
    const [board] = await privatePages(data, secret, first, { base: "/" });
    expect(board?.link).toMatch(/^\/b\/[0-9A-Z]{16}\/#[0-9A-Z]{55}$/);
  });

  it("change address and key for one athlete alone when that one's links are revoked", async () => {
    const before = await privatePages(data, secret, first, place);
    const after = await privatePages(data, secret, { ...first, athletes: new Map([["ada", 2]]) }, place);
    const [known, opening] = [before.map(({ address }) => address), before.map(({ link }) => link)];
    expect(after.filter(({ address }) => !known.includes(address)).map(({ athlete }) => athlete)).toEqual([
      "ada",
      "ada",
    ]);
    expect(after.filter(({ link }) => !opening.includes(link)).map(({ athlete }) => athlete)).toEqual([
      "ada",
      "ada",
    ]);
  });
});

describe("the board of a group", () => {
  const group = { kind: "group", id: "evening", name: "Evening" } as const;
  const gym = { kind: "gym", id: "evening", name: "Evening Gym" } as const;

  it("has an address and a key that no other board has, and new ones once its link is renewed", async () => {
    const boards = await groupPages([group, gym], secret, first, place);
    const [everybody] = await privatePages(data, secret, first, place);
    const renewed = await groupPages(
      [group, gym],
      secret,
      { ...first, groups: new Map([["group evening", 2]]) },
      place,
    );
    const links = [everybody, ...boards, ...renewed].map((page) => page?.link);
    // The gym of the same name keeps its own.
    expect(links[4]).toBe(links[2]);
    expect(new Set(links).size).toBe(4);
  });
});

describe("the passcode of a reader", () => {
  it("changes with the links", async () => {
    const one = await readerPasscode(secret, first, { athlete: "ada" });
    const other = await readerPasscode(
      secret,
      { ...first, athletes: new Map([["ada", 2]]) },
      { athlete: "ada" },
    );
    // By another implementation, see passcode.test.ts.
    expect(one.passcode).toBe("FFGJ-KK0H-9Q2A");
    expect(other.passcode).not.toBe(one.passcode);
    expect(one.stretched).toHaveLength(32);
  });
});
