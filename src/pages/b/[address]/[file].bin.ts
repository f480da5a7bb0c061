import type { APIRoute, GetStaticPaths } from "astro";
import { FILE_KINDS } from "../../../site/brief-files.ts";
import { briefOf } from "../../../site/brief-of.ts";
import { currentSite } from "../../../site/current-site.ts";
import { isShownOpenly } from "../../../site/shown-openly.ts";
import type { PrivatePage } from "../../../site/private-links.ts";

type Props = { readonly page: PrivatePage; readonly file: string };

/** While developing, files are given as they are; in a build they are made, locked, with their briefs. */
export const getStaticPaths = (async () => {
  if (!isShownOpenly(process.env)) return [];
  const site = await currentSite();
  return site.pages.flatMap((page) =>
    (briefOf(page, site) ? FILE_KINDS : []).map(({ name: file }) => ({
      params: { address: page.address, file },
      props: { page, file },
    })),
  );
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { page, file } }) => {
  const site = await currentSite();
  const brief = briefOf(page, site);
  const kind = FILE_KINDS.find(({ name }) => name === file);
  if (!brief || !kind) throw new Error(`There is no file ${file} of this page.`);
  const url = site.surroundings.origin === undefined ? undefined : page.url;
  const bytes = await kind.make(brief.plan, { site, id: page.address, url });
  return new Response(bytes, { headers: { "content-type": kind.type } });
};
