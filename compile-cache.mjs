import { enableCompileCache } from "node:module";
import { join } from "node:path";

// Loaded before a command (`--import`), so that types are taken off and files compiled once for a version of the program.
// Without types itself: to take them off it would load, each time, what takes them off, for a tenth of a second.
// What is kept there is the program's own; where it cannot be written, nothing is kept.
enableCompileCache(join(import.meta.dirname, ".rigsheet", "compiled"));
