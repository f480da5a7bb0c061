import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";

/** One lifter, one meet, one lift, as the public results give it: up to three attempts and what was known before. */
export type LiftResultLine = {
  readonly lifter: number;
  readonly overheadCatch: boolean;
  /** Best made load of the 24 months before, kilograms, and how many results it is the best of. */
  readonly best: number | undefined;
  readonly results: number;
  readonly bestDays: number;
  readonly attempts: readonly { readonly load: number; readonly made: boolean }[];
};

/** Reads a table of lift results (CSV with a header line, plain or gzipped). */
export function readLiftResults(path: string): readonly LiftResultLine[] {
  const bytes = readFileSync(path);
  const text = (path.endsWith(".gz") ? gunzipSync(bytes) : bytes).toString("utf8");
  const [header = "", ...rows] = text.trimEnd().split("\n");
  const columns = new Map(header.split(",").map((name, at) => [name, at]));
  return rows.map((row) => {
    const cells = row.split(",");
    const cell = (name: string): string => cells[columns.get(name) ?? -1] ?? "";
    return {
      lifter: Number(cell("lifter_id")),
      overheadCatch: cell("lift") === "snatch",
      best: cell("prior24_best") === "" ? undefined : Number(cell("prior24_best")),
      results: Number(cell("prior24_meets")),
      bestDays: Number(cell("prior24_days")),
      attempts: [1, 2, 3].flatMap((attempt) => {
        const load = cell(`load${attempt}`);
        return load === "" ? [] : [{ load: Number(load), made: cell(`made${attempt}`) === "1" }];
      }),
    };
  });
}

/**
 * Whether a lifter was kept out when the margins over openers were fitted: three in ten, by a multiplicative hash of
 * their number.
 */
export const isHeldOut = ({ lifter }: LiftResultLine): boolean =>
  ((lifter * 2654435761) % 2 ** 32) / 2 ** 32 < 0.3;
