import type { APIRoute, GetStaticPaths } from "astro";
import { FILE_KINDS, hasFile } from "../../../../site/brief-files.ts";
import { currentSite } from "../../../../site/current-site.ts";
import type { BandPlan } from "../../../../site/make-site.ts";

type Props = { readonly one: BandPlan; readonly name: string };

export const getStaticPaths = (async () => {
  const site = await currentSite();
  return site.data.workouts.flatMap((workout) =>
    site.bandsOf(workout).flatMap((one) =>
      FILE_KINDS.filter((kind) => hasFile(kind, one.plan)).map(({ name, ending }) => ({
        params: { workout: workout.id, band: one.band.id, file: `${name}.${ending}` },
        props: { one, name },
      })),
    ),
  );
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { one, name }, params }) => {
  const site = await currentSite();
  const { base, origin } = site.surroundings;
  const path = `${base}strategy/${params["workout"] ?? ""}/${one.band.id}/`;
  const kind = FILE_KINDS.find((candidate) => candidate.name === name);
  const url = origin === undefined ? undefined : `${origin}${path}`;
  const bytes = await kind?.make(one.plan, { site, id: `${one.plan.workout.id}-${one.band.id}`, url });
  if (!kind || !bytes) throw new Error(`The file ${name} of ${path} could not be made.`);
  return new Response(bytes, { headers: { "content-type": kind.type } });
};
