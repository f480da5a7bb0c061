/** The variable that the command for developing sets, and nothing else. */
export const SHOWN_OPENLY = "RIGSHEET_SHOWN_OPENLY";

/**
 * Whether pages are shown without their lock: only where the command for developing says so. Never told from the mode a
 * tool happens to run in, so that no setting of somebody's shell can make a build in clear.
 */
export const isShownOpenly = (environment: Readonly<Record<string, string | undefined>>): boolean =>
  environment[SHOWN_OPENLY] === "yes";
