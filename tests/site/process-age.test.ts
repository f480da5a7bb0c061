import { expect, it } from "vitest";
import { processAge, readAge } from "../../src/site/process-age.ts";

it("the age of a process is read as lists of processes write it", () => {
  expect(readAge("00:07")).toBe(7);
  expect(readAge("03:04")).toBe(184);
  expect(readAge("02:03:04")).toBe(7384);
  expect(readAge("1-02:03:04")).toBe(93_784);
  expect(readAge("")).toBeUndefined();
});

it("is that of this process, and nothing of one there is not", () => {
  const own = processAge(process.pid);
  expect(own === undefined || Math.abs(own - process.uptime()) < 5).toBe(true);
  expect(processAge(2 ** 30)).toBeUndefined();
});
