import type { BriefCache } from "./brief-cache.ts";
import type { BriefOrder, OrderDone } from "./brief-maker.ts";
import type { BriefsGiven } from "./briefs-given.ts";
import { bundleMaker } from "./bundle-maker.ts";
import { type MakerPool, openPool, threadsFor } from "./maker-pool.ts";
import type { Wanted } from "./wanted-briefs.ts";

/** Briefs that have to be made, by their athletes, whose plans are made together. */
export const ordersOf = (wanted: readonly Wanted[]): readonly BriefOrder[] =>
  [...Map.groupBy(wanted, ({ athlete }) => athlete)].map(([athlete, own]) => ({
    athlete,
    workouts: own.map(({ workout, base }) => ({ id: workout, base })),
  }));

/** Opens the threads that make briefs and boards. */
export async function poolFor(
  orders: readonly BriefOrder[],
  { threads, ...given }: BriefsGiven & { readonly template: string; readonly cache: BriefCache },
): Promise<MakerPool> {
  const { data, surroundings, secret, versions, shell, template, cache, code } = given;
  const file = await bundleMaker(surroundings.root, code);
  const handed = { data, surroundings, secret, versions, shell, template, cache, code };
  return openPool(file, handed, threads ?? threadsFor(orders.length));
}

/** What became of all orders; see {@link OrderDone}. */
type OrdersDone = Omit<OrderDone, "ready"> & { readonly ready: ReadonlySet<string> };

/**
 * Makes what is ordered, and tells how far it is.
 *
 * @throws an Error that says whose brief, where asked to be strict.
 */
export async function makeOrders(
  orders: readonly BriefOrder[],
  open: () => Promise<MakerPool>,
  { data, strict, progress }: BriefsGiven,
  all: number,
): Promise<OrdersDone> {
  if (orders.length === 0) return { failed: [], ready: new Set(), made: 0 };
  let ready = all - orders.reduce((sum, { workouts }) => sum + workouts.length, 0);
  progress(ready, all);
  const done = await (
    await open()
  ).makeAll(orders, (count) => {
    ready += count;
    progress(ready, all);
  });
  const failed = done.flatMap((one) => one.failed);
  const [first] = failed;
  if (strict && first) {
    const name = data.athletes.find(({ id }) => id === first.athlete)?.name ?? first.athlete;
    throw new Error(`The brief of ${name} for ${first.workout} could not be made: ${first.problem}`);
  }
  return {
    failed,
    ready: new Set(done.flatMap((one) => one.ready)),
    made: done.reduce((sum, one) => sum + one.made, 0),
  };
}
