import { chmodSync, existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { randomBytes } from "node:crypto";
import { join } from "node:path";
import { fromBase32, plainSigns, toBase32 } from "../lock/base32.ts";
import type { Bytes } from "../lock/bytes.ts";
import type { Surroundings } from "./surroundings.ts";
import { writeOnce } from "./write-once.ts";

/** Folder inside the data folder for what the tool keeps there. */
export const OWN_FOLDER = ".rigsheet";
const SECRET_BYTES = 32;
const SECRET_SIGNS = 52;
/** Of 52 signs at random, fewer than 12 differ once in 10^16 secrets; what people make up has fewer. */
const DIFFERENT_SIGNS = 12;
const VARIABLE = "RIGSHEET_SECRET";

const COMMENT = `# The secret of this site. Every private link is made from it.
# Whoever has it can open every brief; without it the links already sent stop working with the next build.
# Keep a copy in a safe place. Do not publish it, do not send it, do not put it into git.
`;

/** The secret, and whether it was made just now. */
export type SiteSecret = { readonly bytes: Bytes; readonly made: boolean; readonly from: string };

/**
 * The site secret: from `RIGSHEET_SECRET`, else from `.rigsheet/secret` in the data folder, else made at random and
 * written there, readable by its owner alone.
 *
 * @throws an Error in plain words when there is one that cannot be used; it is never silently replaced.
 */
export function readOrMakeSecret({
  dataFolder,
  secret,
}: Pick<Surroundings, "dataFolder" | "secret">): SiteSecret {
  if (secret !== undefined) return { bytes: read(secret, VARIABLE), made: false, from: VARIABLE };
  const file = join(dataFolder, OWN_FOLDER, "secret");
  return existsSync(file) ? readSecret(dataFolder, file) : makeSecret(dataFolder, file);
}

function readSecret(dataFolder: string, file: string): SiteSecret {
  const written = inWords(`The site secret in ${file} cannot be read`, () => readFileSync(file, "utf8"));
  keepToOwner(dataFolder, file);
  return { bytes: read(written, file), made: false, from: file };
}

/**
 * Closes the secret to others on the same computer and to git: an editor, or a copy put back, may have opened it. Who may
 * only read it, builds all the same.
 */
function keepToOwner(dataFolder: string, file: string): void {
  try {
    prepareOwnFolder(dataFolder);
    if (process.platform !== "win32" && (statSync(file).mode & 0o077) !== 0) chmodSync(file, 0o600);
  } catch {
    // Its owner is somebody else, who decides.
  }
}

function makeSecret(dataFolder: string, file: string): SiteSecret {
  const bytes = Uint8Array.from(randomBytes(SECRET_BYTES));
  const made = inWords(`The site secret cannot be written to ${file}`, () => {
    prepareOwnFolder(dataFolder);
    return writeOnce(file, `${COMMENT}${toBase32(bytes)}\n`, { mode: 0o600, flush: true });
  });
  // Another command that began at the same moment may have made it.
  return made ? { bytes, made, from: file } : readSecret(dataFolder, file);
}

function inWords<T>(what: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(
      `${what}: ${why}. Nothing was made in its place. Give yourself the right to it, or give the secret in ${VARIABLE}.`,
      { cause: error },
    );
  }
}

/** Makes the folder the tool keeps its own files in, out of git except for the list of link versions. */
export function prepareOwnFolder(dataFolder: string): string {
  const folder = join(dataFolder, OWN_FOLDER);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const ignore = join(folder, ".gitignore");
  if (!existsSync(ignore)) writeFileSync(ignore, "*\n!.gitignore\n!links.json\n");
  return folder;
}

function read(written: string, from: string): Bytes {
  const lines = written.split("\n").filter((line) => !line.startsWith("#"));
  const signs = plainSigns(lines.join(""));
  const bytes = fromBase32(signs)?.slice(0, SECRET_BYTES);
  const problem = problemOf(signs);
  if (bytes && problem === undefined) return bytes;
  throw new Error(`The site secret in ${from} cannot be used: ${problem ?? ""}. ${remedyOf(from)}`);
}

function problemOf(signs: string): string | undefined {
  if (signs.length !== SECRET_SIGNS) {
    return `it must have ${SECRET_SIGNS} signs, letters and figures, but has ${signs.length}`;
  }
  const different = new Set(signs).size;
  return different < DIFFERENT_SIGNS
    ? `it was not made at random: only ${different} of its ${SECRET_SIGNS} signs differ`
    : undefined;
}

const remedyOf = (from: string): string =>
  from === VARIABLE
    ? `Give the line of signs that stands in ${OWN_FOLDER}/secret where the links were made; where that file is itself, leave ${VARIABLE} out.`
    : "Put back the copy you kept. Without one, delete it: the next build makes a new secret, every link changes, " +
      "and all athletes need their links again (npm run links).";
