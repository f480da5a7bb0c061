/** A link with whom it is for. */
export type SentLink = {
  readonly athlete: string;
  readonly name: string;
  /** Title of the workout; empty for the board. */
  readonly workout: string;
  readonly link: string;
  readonly passcode?: string;
};

/** The links for reading and copying, by reader; below them what keeps them from opening. */
export function linksAsText(links: readonly SentLink[], origin: string | undefined): string {
  const readers = [...new Set(links.map(({ athlete }) => athlete))];
  const blocks = readers.map((reader) => {
    const own = links.filter(({ athlete }) => athlete === reader);
    const [first] = own;
    return [
      `${first?.name ?? ""} (${reader})`,
      ...(first?.passcode === undefined
        ? []
        : [`  passcode ${first.passcode}, to be sent another way than the link`]),
      ...own.map(({ workout, link }) => (workout === "" ? `  ${link}` : `  ${workout}\n    ${link}`)),
    ].join("\n");
  });
  return [...blocks, ...lackOf(origin)].join("\n\n");
}

/** On this computer itself a browser opens locks over http too. */
const HERE = /^http:\/\/(localhost|127\.0\.0\.1|\[::1\])(:|$)/;

/** What keeps links from opening, where they stand now. */
export function lackOf(origin: string | undefined): readonly string[] {
  if (origin === undefined) {
    return [
      "These links lack the host. Say where the site stands: RIGSHEET_SITE=https://example.org npm run links",
    ];
  }
  return origin.startsWith("https:") || HERE.test(origin)
    ? []
    : ["These links begin with http, and over http no browser opens a lock. The host must offer https."];
}

/** The links as CSV. */
export const linksAsCsv = (links: readonly SentLink[]): string =>
  asCsv([
    ["athlete", "name", "workout", "link", "passcode"],
    ...links.map(({ athlete, name, workout, link, passcode = "" }) => [
      athlete,
      name,
      workout,
      link,
      passcode,
    ]),
  ]);

/** Rows as CSV (RFC 4180), with a mark so that spreadsheets read every letter. */
export const asCsv = (rows: readonly (readonly string[])[]): string =>
  `\uFEFF${rows.map((row) => `${row.map(cell).join(",")}\r\n`).join("")}`;

/** A cell in quotes; one that a spreadsheet would take for a formula is defused by an apostrophe. */
const cell = (text: string): string =>
  `"${(/^[=+\-@\t\r]/.test(text) ? `'${text}` : text).replaceAll('"', '""')}"`;
