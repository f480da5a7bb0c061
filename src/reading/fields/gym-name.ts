import * as z from "zod";
import { comparable, nearestName } from "../../models/nearest.ts";
import { refuse } from "../yaml/refuse.ts";

/** The gym an entry names, by its file in content/gyms without the ending. */
export const gymName = (ids: readonly string[]) =>
  z.string().transform((text, ctx): string => {
    const id = ids.find((each) => comparable(each) === comparable(text));
    if (id !== undefined) return id;
    const nearest = nearestName(text, ids);
    return refuse(ctx, {
      problem: "there is no gym of this name",
      allowed: ids.length === 0 ? "none yet: content/gyms holds no file" : ids.join(", "),
      nearest,
      remedy:
        nearest === undefined
          ? "Write the name of a file in content/gyms, without its ending."
          : `Write \`${nearest}\`.`,
    });
  });
