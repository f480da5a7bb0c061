import type { Bytes } from "../lock/bytes.ts";
import type { Data } from "../models/data.ts";
import type { LinkVersions } from "./link-versions.ts";
import type { PrivatePage } from "./private-links.ts";
import type { Surroundings } from "./surroundings.ts";

/** What all briefs of a build, and the boards, are made from and with. */
export type BriefsGiven = {
  readonly surroundings: Surroundings;
  readonly data: Data;
  readonly secret: Bytes;
  readonly versions: LinkVersions;
  /** Every brief there may be a link to, also of files that cannot be read. */
  readonly withFiles: readonly PrivatePage[];
  /** The page from which every locked page is made. */
  readonly shell: string;
  /** Mark of the program. */
  readonly code: string;
  /** The site that was there before, where there was one. */
  readonly earlier: string | undefined;
  /** Makes nothing where anything fails. */
  readonly strict: boolean;
  /** Folders of shards whose briefs are taken instead of being made. */
  readonly shards?: readonly string[] | undefined;
  /** Threads to work in; as many as are worth it where nobody says. */
  readonly threads?: number | undefined;
  /** Told of every brief that is ready. */
  readonly progress: (done: number, all: number) => void;
};
