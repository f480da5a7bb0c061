import { nearestName } from "../models/nearest.ts";
import { settleFormerAthletes } from "../site/former-athletes.ts";
import { readLinkVersions, revokeGroup, revokeLinks } from "../site/link-versions.ts";
import { groupPages, nameOfReader, privatePages, readerPasscode } from "../site/private-links.ts";
import { type Group, groupNamed, groupsOf, isInGroup } from "../site/groups.ts";
import { readOrMakeSecret } from "../site/secret.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { linksAsCsv, linksAsText, type SentLink } from "./say-links.ts";
import { sayFormer } from "./say-former.ts";
import { readUsable } from "./read-checked.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions & {
  readonly csv?: true;
  readonly json?: true;
  readonly group?: string;
  readonly revoke?: string;
};

await run(
  makeCommand("links", "Prints who gets which link.")
    .option("--csv", "as a table for a spreadsheet")
    .option("--json", "as JSON")
    .option("--group <name>", "only the board and the athletes of this group or gym")
    .option(
      "--revoke <id>",
      "give one athlete new links, or the board with `board` (of a group, with --group); the old ones end with the next build",
    )
    .action(async (options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { dataFolder, origin } = surroundings;
      const { data, faults } = readUsable(surroundings, (text) => process.stderr.write(`${text}\n`));
      if (faults.length > 0) process.exitCode = 1;
      const former = settleFormerAthletes(dataFolder, data);
      if (former.length > 0) process.stderr.write(`${visibleText(sayFormer(former))}\n\n`);
      const group = options.group === undefined ? undefined : groupNamed(options.group, data);
      if (options.revoke !== undefined) {
        const files = [...data.athletes, ...data.unmade.filter(({ kind }) => kind === "athlete")];
        revoke(
          options.revoke,
          dataFolder,
          files.map(({ id }) => id),
          group,
        );
      }
      const secret = readOrMakeSecret(surroundings);
      const versions = readLinkVersions(dataFolder);
      const athletes = new Map(
        data.athletes
          .filter((one) => group === undefined || isInGroup(one, group, data.settings))
          .map(({ id, name }) => [id, name]),
      );
      const [board, ...briefs] = await privatePages(data, secret.bytes, versions, surroundings);
      const groups = group ? [group] : groupsOf(data);
      const pages = [
        ...(group || !board ? [] : [board]),
        ...(await groupPages(groups, secret.bytes, versions, surroundings)),
        ...briefs.filter(({ athlete }) => athletes.has(athlete ?? "")),
      ];
      const passcodes = new Map<string, string>();
      for (const page of data.settings.passcode ? pages : []) {
        const reader = nameOfReader(page);
        if (!passcodes.has(reader))
          passcodes.set(reader, (await readerPasscode(secret.bytes, versions, page)).passcode);
      }
      const links = pages.map((page): SentLink => {
        const { athlete, workout, group: of, link } = page;
        const passcode = passcodes.get(nameOfReader(page));
        return {
          athlete: athlete ?? (of ? `board of ${of.name}` : "board"),
          name: athletes.get(athlete ?? "") ?? (of ? `The board of ${of.name}` : "The coach's board"),
          workout: data.workouts.find(({ id }) => id === workout)?.title ?? "",
          link,
          ...(passcode === undefined ? {} : { passcode }),
        };
      });
      if (options.json) console.log(JSON.stringify(links, null, 2));
      else if (options.csv) process.stdout.write(linksAsCsv(links));
      else console.log(visibleText(linksAsText(links, origin)));
    }),
);

function revoke(id: string, dataFolder: string, athletes: readonly string[], group: Group | undefined): void {
  if (id !== "board" && !athletes.includes(id)) {
    const nearest = nearestName(id, [...athletes, "board"]);
    throw new Error(
      `There is no athlete "${id}".${nearest === undefined ? "" : ` The nearest is "${nearest}".`} ` +
        `The id is the name of the file in athletes/ without its ending; \`board\` stands for the coach's board.`,
    );
  }
  if (id === "board" && athletes.includes(id)) {
    throw new Error(
      "`board` stands for the coach's board, and there is an athlete of this name too. " +
        "Rename athletes/board.yaml; with another file name that athlete gets new links.",
    );
  }
  if (id === "board" && group) revokeGroup(dataFolder, group);
  else revokeLinks(dataFolder, id === "board" ? undefined : id);
  process.stderr.write(
    `New links for ${id === "board" && group ? `the board of ${group.name}` : id}. The old ones open nothing once you have built and put up the site again; ` +
      `what was opened and saved before stays with who has it.\n\n`,
  );
}
