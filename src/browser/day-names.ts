/** What the script of the day listens for. */
export const DAY_BEGINS = "rigsheet-day";
/** Told when the device has forgotten the page. */
export const DAY_FORGOTTEN = "rigsheet-forgotten";
/** The locked file the day is run from, beside the page. */
export const DAY_FILE = "day";
