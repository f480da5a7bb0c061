import { Worker } from "node:worker_threads";
import { type Ending, inputOf, MOST_CPU } from "./try-input.ts";

// npm run fuzz -- 50000 [FIRST]: tries so many inputs from the number FIRST on and says what was wrong.
// npm run fuzz -- show NUMBER: prints the input of a number.

/** Where an input needs so much longer than it may, it hangs, however busy the computer is. Milliseconds. */
const HANGS_AFTER = 20 * MOST_CPU * 1000;
/** After so many inputs a long run says how far it is. */
const TOLD_EVERY = 1000;

type Word = { readonly number: number; readonly ending?: Ending };

const [first, second] = process.argv.slice(2);
if (first === "show") {
  const input = inputOf(Number(second));
  console.log(`${input.kind === "file" ? input.path : input.kind}\n${input.text}`);
} else {
  await fuzz(Number(second ?? 0), Number(second ?? 0) + Number(first ?? 2000));
}

async function fuzz(start: number, end: number): Promise<void> {
  const ends: Ends = { messages: 0, plans: 0, wrong: 0 };
  let slowest = 0;
  const take = (number: number, { kind, problem, cpu }: Ending): void => {
    ends[kind] += 1;
    slowest = Math.max(slowest, cpu);
    if (kind === "wrong") console.log(`${number}: ${(problem ?? "").split("\n").slice(0, 3).join(" | ")}`);
    if ((number + 1 - start) % TOLD_EVERY === 0) console.log(`up to ${number}: ${sayEnds(ends, slowest)}`);
  };
  let next = start;
  while (next < end) {
    const stopped = await tryFrom(next, end, take);
    if (stopped === undefined) break;
    take(stopped, { kind: "wrong", problem: "does not end", cpu: HANGS_AFTER / 1000 });
    next = stopped + 1;
  }
  console.log(`${end - start} inputs: ${sayEnds(ends, slowest)}`);
  if (ends.wrong > 0) process.exitCode = 1;
}

type Ends = Record<Ending["kind"], number>;

function sayEnds({ messages, plans, wrong }: Ends, slowest: number): string {
  return `${messages} in messages, ${plans} in plans, ${wrong} wrong; ${slowest.toFixed(2)} s at most.`;
}

/** Tries inputs in a thread of their own; gives the number of the one that hangs. */
function tryFrom(
  from: number,
  to: number,
  take: (number: number, ending: Ending) => void,
): Promise<number | undefined> {
  return new Promise((done, fail) => {
    let last = from - 1;
    let hangs: number | undefined;
    const worker = new Worker(new URL("fuzz-worker.ts", import.meta.url), { workerData: { from, to } });
    let timer: NodeJS.Timeout | undefined;
    worker.on("message", ({ number, ending }: Word) => {
      clearTimeout(timer);
      if (ending) {
        last = number;
        take(number, ending);
        return;
      }
      timer = setTimeout(() => {
        hangs = number;
        void worker.terminate();
      }, HANGS_AFTER);
    });
    worker.on("error", fail);
    worker.on("exit", (code) => {
      clearTimeout(timer);
      if (hangs !== undefined) done(hangs);
      else if (last === to - 1) done(undefined);
      else fail(new Error(`the thread ended with ${code} after input ${last}`));
    });
  });
}
