import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import pixelmatch from "pixelmatch";
import sharp from "sharp";
import { expect } from "vitest";

const path = (name: string): string => fileURLToPath(new URL(`../golden/${name}`, import.meta.url));

/** With `UPDATE_GOLDEN=1` saved outputs are replaced instead of compared; look at what changed before you keep it. */
const updates = process.env["UPDATE_GOLDEN"] === "1";

function save(name: string, content: string | Buffer): void {
  mkdirSync(dirname(path(name)), { recursive: true });
  writeFileSync(path(name), content);
}

/** Compares a text with the saved one. A different one is put beside the saved one, under `changed/`. */
export function expectSavedText(name: string, text: string): void {
  if (updates || !existsSync(path(name))) save(updates ? name : `changed/${name}`, text);
  const saved = existsSync(path(name)) ? readFileSync(path(name), "utf8") : "";
  if (saved !== text) save(`changed/${name}`, text);
  expect(text, `${name} differs from the saved text; see tests/golden/changed/`).toBe(saved);
}

const pixels = async (png: Buffer) => sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });

/**
 * Compares a picture with the saved one. Antialiasing may differ from one version of a library to the next, so a share
 * of pixels (one in two hundred unless said) may differ; what differs more is put under `changed/`.
 */
export async function expectSavedPicture(name: string, png: Buffer, share = 0.005): Promise<void> {
  if (updates) save(name, png);
  if (!existsSync(path(name))) {
    save(`changed/${name}`, png);
    expect.fail(`${name} has no saved picture; look at the one in tests/golden/changed/ and save it`);
  }
  const [saved, made] = await Promise.all([pixels(readFileSync(path(name))), pixels(png)]);
  expect([made.info.width, made.info.height]).toEqual([saved.info.width, saved.info.height]);
  const { width, height } = made.info;
  const differing = pixelmatch(saved.data, made.data, undefined, width, height, { threshold: 0.2 });
  if (differing > width * height * share) save(`changed/${name}`, png);
  expect(differing, `${name} looks different; compare with tests/golden/changed/`).toBeLessThanOrEqual(
    width * height * share,
  );
}
