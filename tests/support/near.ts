import { expect } from "vitest";

/** Inside an expected object: a number equal to nine decimals. */
export const near = (value: number): number => expect.closeTo(value, 9) as number;
