/** Path to a locked page, its sixteen signs, what was put behind them, and the key. */
const LOCKED_PAGE = /^([^?#]*\/b\/)([0-9A-Za-z]{16})(?![0-9A-Za-z])[^#]*(#.*)?$/s;

/**
 * The address that was meant by one at which there is nothing: some messengers write the sign # as %23, put brackets and
 * quotes behind a link, or make its letters small. Nothing where that is not what is wrong with it.
 */
export function mendAddress(href: string): string | undefined {
  const [, path, signs = "", key = ""] = LOCKED_PAGE.exec(href.replace(/%23/, "#")) ?? [];
  // Not taken from the lock's own spelling: a script shared with other pages would no longer stand in any of them.
  const spelt = signs.toUpperCase().replace(/[IL]/g, "1").replace(/O/g, "0");
  const mended = `${path ?? ""}${spelt}/${key}`;
  return path === undefined || mended === href ? undefined : mended;
}
