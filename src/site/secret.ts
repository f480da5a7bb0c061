import { chmodSync, existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { randomBytes } from "node:crypto";
import { join } from "node:path";
import { fromBase32, plainSigns, toBase32 } from "../lock/base32.ts";
import type { Bytes } from "../lock/bytes.ts";
import type { Surroundings } from "./surroundings.ts";

/** Folder inside the data folder for what the tool keeps there. */
export const OWN_FOLDER = ".rigsheet";
const SECRET_BYTES = 32;
const SECRET_SIGNS = 52;

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
  if (secret !== undefined)
    return { bytes: read(secret, "RIGSHEET_SECRET"), made: false, from: "RIGSHEET_SECRET" };
  const file = join(dataFolder, OWN_FOLDER, "secret");
  if (!existsSync(file)) return makeSecret(dataFolder, file);
  // Others on the same computer need not read it; an editor or a copy may have opened it to them.
  if (process.platform !== "win32" && (statSync(file).mode & 0o077) !== 0) chmodSync(file, 0o600);
  return { bytes: read(readFileSync(file, "utf8"), file), made: false, from: file };
}

function makeSecret(dataFolder: string, file: string): SiteSecret {
  prepareOwnFolder(dataFolder);
  const bytes = Uint8Array.from(randomBytes(SECRET_BYTES));
  writeFileSync(file, `${COMMENT}${toBase32(bytes)}\n`, { mode: 0o600, flag: "wx" });
  return { bytes, made: true, from: file };
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
  if (signs.length === SECRET_SIGNS && bytes?.length === SECRET_BYTES) return bytes;
  throw new Error(
    `The site secret in ${from} cannot be used: it must have ${SECRET_SIGNS} signs, letters and figures, but has ${signs.length}. ` +
      `Put back the copy you kept. Without one, delete it: the next build makes a new secret, every link changes, ` +
      `and all athletes need their links again (npm run links).`,
  );
}
