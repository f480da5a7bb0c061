/** What disks and networks say, in words for a person who does not know their codes, and what to do. */
const SAYINGS: ReadonlyMap<string, (path: string) => string> = new Map([
  ["ENOSPC", () => "The disk is full. Make room and try again."],
  [
    "EFBIG",
    (path: string) =>
      `${path} is larger than a file may be here. Name a folder on another disk, or lift the limit.`,
  ],
  ["EDQUOT", () => "Your share of the disk is full. Make room and try again."],
  [
    "EACCES",
    (path: string) =>
      `${path} may not be read or written. Give yourself the right to it, or name another folder.`,
  ],
  [
    "EPERM",
    (path: string) => `${path} may not be changed. Give yourself the right to it, or name another folder.`,
  ],
  ["EROFS", (path: string) => `${path} lies on a disk that can only be read. Name another folder.`],
  [
    "ENOTDIR",
    (path: string) =>
      `Something on the way to ${path} is a file where a folder is needed. Name another folder, or move the file.`,
  ],
  ["EEXIST", (path: string) => `${path} is there already and is no folder. Name another folder, or move it.`],
  ["EISDIR", (path: string) => `${path} is a folder where a file is needed. Move it elsewhere.`],
  ["ENOENT", (path: string) => `There is no ${path}. See whether its name is right.`],
  ["ELOOP", (path: string) => `${path} is a link that leads around in a circle. Remove it.`],
  ["ENAMETOOLONG", (path: string) => `${path} is too long a name for this disk. Choose a shorter one.`],
  ["EMFILE", () => "Too many files are open on this computer. Close other programs and try again."],
  ["EIO", (path: string) => `The disk cannot read or write ${path}. Copy your files to another disk.`],
  ["EADDRINUSE", () => "The port is taken on this computer. Name another with --port."],
]);

/** A failure as one sentence for a person, without codes and without the way through the program. */
export function explain(error: unknown): string {
  const { code, path, message, cause } = (typeof error === "object" && error !== null ? error : {}) as {
    readonly code?: unknown;
    readonly path?: unknown;
    readonly message?: unknown;
    readonly cause?: unknown;
  };
  const say = typeof code === "string" ? SAYINGS.get(code) : undefined;
  if (say) return say(typeof path === "string" ? path : "A file or folder");
  // What a tool between wraps the failure of a disk in says less than the failure itself.
  if (hasOwnWords(cause)) return explain(cause);
  return typeof message === "string" && message !== "" ? message : String(error);
}

/**
 * Says a failure in words where it happens. What crosses from a thread to another keeps its words, but neither the code of
 * the system nor the path they would be found by.
 */
export async function explained<T>(made: Promise<T>): Promise<T> {
  try {
    return await made;
  } catch (error) {
    throw new Error(explain(error), { cause: error });
  }
}

const hasOwnWords = (error: unknown): boolean =>
  typeof error === "object" &&
  error !== null &&
  "code" in error &&
  typeof error.code === "string" &&
  SAYINGS.has(error.code);
