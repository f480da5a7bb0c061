// Replaces FOLDER/dist by FOLDER/build and is killed just before its Nth change on the disk; `--across` as if to another disk.
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { join } from "node:path";

const [folder = "", before = "", across] = process.argv.slice(2);
let changes = 0;
const count = (): void => {
  if (changes++ === Number(before)) process.kill(process.pid, "SIGKILL");
};
const { renameSync, rmSync, cpSync } = fs;
fs.rmSync = (...args) => {
  count();
  rmSync(...args);
};
fs.cpSync = (...args) => {
  count();
  cpSync(...args);
};
fs.renameSync = (from, to) => {
  count();
  if (across === "--across" && String(from) === join(folder, "build")) {
    throw Object.assign(new Error("another disk"), { code: "EXDEV" });
  }
  renameSync(from, to);
};
syncBuiltinESMExports();
const { swapFolder } = await import("../../src/site/swap-folder.ts");
swapFolder(join(folder, "build"), join(folder, "dist"));
