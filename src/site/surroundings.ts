import { resolve } from "node:path";

/** Whom a build is for: everybody, or the gym's public pages alone, for which no athlete is read. */
export const AUDIENCES = ["everyone", "gym"] as const;
export type Audience = (typeof AUDIENCES)[number];

/** Where a command stands: folders, addresses and the day. Read once at the edge; everything else takes it as an argument. */
export type Surroundings = {
  /** The folder of the tool itself, with the built-in library. */
  readonly root: string;
  /** The folder with the own `content/` and `athletes/`. */
  readonly dataFolder: string;
  /** Path of the site on its host, with a slash at both ends. */
  readonly base: string;
  /** Origin of the site such as `https://example.org`, where it is known. */
  readonly origin?: string;
  readonly audience: Audience;
  /** Day the plans are made for, `2026-11-25`. */
  readonly date: string;
  /** The site secret, where it is given instead of kept in a file. */
  readonly secret?: string;
};

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Reads the surroundings from environment variables: `RIGSHEET_DATA`, `RIGSHEET_BASE`, `RIGSHEET_SITE`,
 * `RIGSHEET_AUDIENCE`, `RIGSHEET_DATE`, `RIGSHEET_SECRET`. `today` is the day for which nobody named another.
 *
 * @throws an Error in plain words when a variable cannot be used as it is.
 */
export function readSurroundings(root: string, environment: Environment, today: string): Surroundings {
  const origin = readOrigin(environment["RIGSHEET_SITE"]);
  const secret = environment["RIGSHEET_SECRET"];
  return {
    root: resolve(root),
    dataFolder: resolve(environment["RIGSHEET_DATA"] || root),
    base: readBase(environment["RIGSHEET_BASE"]),
    ...(origin === undefined ? {} : { origin }),
    audience: readAudience(environment["RIGSHEET_AUDIENCE"]),
    date: readDay(environment["RIGSHEET_DATE"], today),
    // An empty one is given too: a host that lost it must not have a new one made in its place.
    ...(secret === undefined ? {} : { secret }),
  };
}

function readAudience(written: string | undefined): Audience {
  const audience = AUDIENCES.find((one) => one === (written || "everyone"));
  if (audience) return audience;
  throw new Error(`The audience is "${written ?? ""}"; it can be ${AUDIENCES.join(" or ")}.`);
}

function readBase(written = ""): string {
  const inner = written.replace(/^\/+|\/+$/g, "");
  if (/^[a-z]+:/i.test(written)) {
    throw new Error(
      `RIGSHEET_BASE is "${written}"; it is only the path on the host, such as /gym/. The host itself goes into RIGSHEET_SITE.`,
    );
  }
  return inner === "" ? "/" : `/${inner}/`;
}

function readOrigin(written = ""): string | undefined {
  if (written === "") return undefined;
  const url = URL.canParse(written) ? new URL(written) : undefined;
  if (url && /^https?:$/.test(url.protocol) && url.pathname === "/" && url.search === "" && url.hash === "") {
    return url.origin;
  }
  throw new Error(
    `RIGSHEET_SITE is "${written}"; write where the site stands without a path, such as https://example.org. ` +
      `A path goes into RIGSHEET_BASE.`,
  );
}

/** @throws an Error when the text is not a day of the calendar. */
function readDay(written: string | undefined, today: string): string {
  const day = written || today;
  const [year, month, date] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(day)?.slice(1).map(Number) ?? [];
  const read = new Date(Date.UTC(year ?? NaN, (month ?? 0) - 1, date));
  if (!Number.isNaN(read.getTime()) && read.toISOString().slice(0, 10) === day) return day;
  throw new Error(`The date is "${day}"; write a day of the calendar as year-month-day, such as 2026-11-25.`);
}

/** Today where this computer stands. The only place that asks a clock for it. */
export function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
