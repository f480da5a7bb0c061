import type { Data } from "../models/data.ts";
import { NO_BREAK_SPACE } from "../wording/number.ts";
import { groupsOf } from "../site/groups.ts";
import type { SiteMade } from "../site/build-site.ts";
import type { SiteSecret } from "../site/secret.ts";
import type { Surroundings } from "../site/surroundings.ts";
import { USUAL_FOLDER } from "./command.ts";
import { counted } from "./counted.ts";
import { quoted } from "./quoted.ts";

export type Built = {
  readonly data: Data;
  readonly surroundings: Surroundings;
  readonly made: SiteMade;
  readonly secret: SiteSecret | undefined;
  readonly folder: string;
  readonly seconds: number;
};

/** What was made and where to open it. Says no private address. */
export function sayBuilt({ data, surroundings, made, secret, folder, seconds }: Built): string {
  const { workouts, athletes, settings } = data;
  const { origin, base, date } = surroundings;
  const { count, kept } = made;
  const groups = groupsOf(data).length;
  const briefs = Math.max(0, count.locked - 1 - groups - kept);
  const all = athletes.length * workouts.length;
  const lines = [
    `Made for ${date} in ${folder}/ (${counted(count.files, "file")}, ${sayBytes(count.bytes)}, ${seconds.toFixed(0)} s):`,
    ...(secret
      ? [
          `  ${counted(briefs, "brief")}, locked: ${counted(athletes.length, "athlete")} × ${counted(workouts.length, "workout")}${briefs < all ? `, of ${all}` : ""}${made.made < briefs ? `; ${made.made} made anew, the others were as they are` : ""}`,
          ...(kept > 0 ? [`  ${counted(kept, "brief")} kept from the build before`] : []),
          `  the coach's board${groups > 0 ? ` and ${counted(groups, "board")} of groups` : ""}, locked`,
        ]
      : ["  no briefs: no athlete was read"]),
    `  ${counted(count.strategies, "strategy page")} for everyone, ${counted(count.bandPages, "band")} in all`,
    "",
    "Strategy pages:",
    ...workouts.map(
      ({ id, title }) =>
        `  ${origin === undefined ? `${folder}/` : `${origin}${base}`}strategy/${id}/  ${title}`,
    ),
    "",
    `To look at the site here: npm run preview${folder === USUAL_FOLDER ? "" : ` -- --out ${quoted(folder)}`}`,
    ...(secret
      ? [
          `Links to the board and the briefs${settings.passcode ? ", with their passcodes" : ""}: npm run links`,
        ]
      : []),
    ...(secret?.made
      ? [
          "",
          `The secret of this site was made just now: ${secret.from}`,
          "Keep a copy in a safe place. Without it the links you send stop working at the next build; whoever has it can open",
          "every brief. It is in none of the files that were made.",
        ]
      : []),
  ];
  return lines.join("\n").replaceAll(NO_BREAK_SPACE, " ");
}

function sayBytes(bytes: number): string {
  return bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
