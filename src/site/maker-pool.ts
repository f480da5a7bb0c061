import { availableParallelism } from "node:os";
import { pathToFileURL } from "node:url";
import type { BoardOrder, BriefOrder, MakerGiven, OrderDone } from "./brief-maker.ts";

/** Athletes whose briefs a further thread must have to make before it is worth its beginning (judgement). */
const WORTH_A_THREAD = 3;
/** More threads than this would need more memory than a build may take, a gigabyte (`npm run bench` measures it). */
const MOST_THREADS = 6;

/**
 * Memory a thread may take for what it makes, old and young, in megabytes: it would tidy up later and hold more than it needs.
 * What thousands of athletes are as data takes a tenth of it (`npm run bench`).
 */
const [MOST_MEGABYTES, MOST_YOUNG_MEGABYTES] = [256, 32];

/** Makes briefs one after another, on as many cores as there are and are worth it. */
export type MakerPool = {
  /** Makes every order; gives what each could not make, in the order given. */
  readonly makeAll: (
    orders: readonly BriefOrder[],
    done: (count: number) => void,
  ) => Promise<readonly OrderDone[]>;
  readonly makeBoard: (order: BoardOrder) => Promise<void>;
  readonly close: () => Promise<void>;
};

/** How many threads a number of orders is shared out to. */
export const threadsFor = (orders: number, cores: number = availableParallelism()): number =>
  Math.max(1, Math.min(cores, MOST_THREADS, Math.floor(orders / WORTH_A_THREAD)));

/**
 * Opens a pool of the program in a file. A stopped build ends its threads with itself; a thread that fails ends the build
 * and says whose briefs it was making.
 */
export async function openPool(file: string, given: MakerGiven, threads: number): Promise<MakerPool> {
  // Its native part must stay loaded longer than any thread that draws with it.
  const [{ Tinypool }] = await Promise.all([import("tinypool"), import("sharp")]);
  const pool = new Tinypool({
    filename: pathToFileURL(file).href,
    runtime: "worker_threads",
    minThreads: threads,
    maxThreads: threads,
    // What the command itself was started with is not for threads.
    execArgv: [],
    resourceLimits: {
      maxOldGenerationSizeMb: MOST_MEGABYTES,
      maxYoungGenerationSizeMb: MOST_YOUNG_MEGABYTES,
    },
    workerData: given,
  });
  return {
    makeAll: (orders, done) =>
      Promise.all(
        orders.map(async (order) => {
          const made = await named(order, pool.run(order, { name: "makeBriefs" }) as Promise<OrderDone>);
          done(order.workouts.length);
          return made;
        }),
      ),
    makeBoard: (order) => pool.run(order, { name: "makeBoard" }) as Promise<void>,
    close: () => pool.destroy(),
  };
}

/** What ends a whole thread says no name of itself. */
async function named<T>({ athlete }: BriefOrder, made: Promise<T>): Promise<T> {
  try {
    return await made;
  } catch (error) {
    const problem = error instanceof Error ? error.message : String(error);
    throw new Error(`The briefs of ${athlete} could not be made: ${problem}`, { cause: error });
  }
}
