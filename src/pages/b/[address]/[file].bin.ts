import type { APIRoute, GetStaticPaths } from "astro";
import { FILE_KINDS, type FileKind } from "../../../site/brief-files.ts";
import { briefOf } from "../../../site/brief-of.ts";
import { currentSite } from "../../../site/current-site.ts";
import { type FailedBrief, leaveWord } from "../../../site/failed-briefs.ts";
import { lockFile } from "../../../site/lock-files.ts";
import { isShownOpenly } from "../../../site/shown-openly.ts";
import type { PrivatePage } from "../../../site/private-links.ts";

type Props = { readonly page: PrivatePage; readonly file: string };

export const getStaticPaths = (async () => {
  const site = await currentSite();
  return site.pages.flatMap((page) => {
    const brief = briefOf(page, site);
    return (brief ? FILE_KINDS : []).map(({ name: file }) => ({
      params: { address: page.address, file },
      props: { page, file },
    }));
  });
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { page, file } }) => {
  const site = await currentSite();
  const brief = briefOf(page, site);
  const kind = FILE_KINDS.find(({ name }) => name === file);
  if (!brief || !kind) throw new Error(`There is no file ${file} of this page.`);
  const url = site.surroundings.origin === undefined ? undefined : page.url;
  const bytes = await makeOrTell(() => kind.make(brief.plan, { site, id: page.address, url }), {
    athlete: brief.athlete.id,
    workout: brief.workout.id,
    file: kind.label,
  });
  return isShownOpenly(process.env)
    ? openly(bytes, kind)
    : new Response(await lockFile(bytes, kind, page, site));
};

/**
 * A file that cannot be drawn takes no other with it: word is left for the command, and the file is locked empty, since its
 * absence would tell something.
 */
async function makeOrTell(
  make: () => Promise<Uint8Array<ArrayBuffer>>,
  whose: Omit<FailedBrief, "problem">,
): Promise<Uint8Array<ArrayBuffer>> {
  const { RIGSHEET_OUT: fresh, RIGSHEET_STRICT: strict } = process.env;
  try {
    return await make();
  } catch (error) {
    if (!fresh || strict) throw error;
    leaveWord(fresh, [{ ...whose, problem: error instanceof Error ? error.message : String(error) }]);
    return new Uint8Array();
  }
}

/** While developing, files are given as they are. */
const openly = (bytes: Uint8Array<ArrayBuffer>, { type }: FileKind): Response =>
  new Response(bytes, { headers: { "content-type": type } });
