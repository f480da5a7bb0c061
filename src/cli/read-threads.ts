import { InvalidArgumentError } from "commander";

/** How many threads are asked for. @throws InvalidArgumentError where that is no number of threads. */
export function readThreads(written: string): number {
  const threads = /^\d{1,2}$/.test(written) ? Number(written) : 0;
  if (threads >= 1) return threads;
  throw new InvalidArgumentError("Write a whole number from 1 to 99.");
}
