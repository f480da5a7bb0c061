import { readSurroundings, type Surroundings, today } from "./surroundings.ts";

/**
 * The surroundings as Astro's own process sees them. Its configuration has put the project's folder into the
 * environment, because compiled code no longer stands where its source did.
 */
export function astroSurroundings(): Surroundings {
  return readSurroundings(process.env["RIGSHEET_ROOT"] ?? process.cwd(), process.env, today());
}
