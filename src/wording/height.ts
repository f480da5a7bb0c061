import { NO_BREAK_SPACE, sayNumber } from "./number.ts";

/** A height from the floor; two metres and over are told in metres. @example sayHeight(0.6) // => "60\u00a0cm" */
export const sayHeight = (metres: number): string =>
  metres >= 2
    ? `${sayNumber(metres, 2)}${NO_BREAK_SPACE}m`
    : `${sayNumber(metres * 100, 0)}${NO_BREAK_SPACE}cm`;
