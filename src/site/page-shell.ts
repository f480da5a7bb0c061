/**
 * What stands in the page from which every locked page is made, in place of its address. It is as long as an address and
 * can be none, because the signs of addresses leave U out.
 */
export const SHELL_ADDRESS = "UUUUUUUUUUUUUUUU";

/** What stands there in place of the locked content. */
export const SHELL_CONTENT = "UUUU-the-locked-content-UUUU";

/** A locked page: the shell with its own address and locked content. @throws an Error where the shell has no place for them. */
export function fillShell(shell: string, address: string, locked: string): string {
  const [before, after, ...more] = shell.split(SHELL_CONTENT);
  if (after === undefined || more.length > 0 || !shell.includes(SHELL_ADDRESS)) {
    throw new Error("The page from which locked pages are made has no single place for what is locked.");
  }
  return [before, after].map((half) => half?.replaceAll(SHELL_ADDRESS, address)).join(locked);
}
