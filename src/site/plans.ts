import { deflateRawSync, inflateRawSync } from "node:zlib";
import type { Plan } from "../models/plan/plan.ts";

/** Plans by what they are for; each is computed once and comes back equal however often it is asked for. */
type PlanStore = { readonly get: (name: readonly string[], make: () => Plan) => Plan };

/** Plans kept as they are; a page, its sheets and cards ask for the same one in a row. */
const KEPT_OPEN = 8;

/**
 * A store of plans that stays small: a thousand plans are a few hundred megabytes as objects, and a tenth of that
 * squeezed. Plans are plain data, so they come back as they went in.
 */
export function makePlanStore(): PlanStore {
  const squeezed = new Map<string, Uint8Array>();
  const open = new Map<string, Plan>();
  const keep = (name: string, plan: Plan): Plan => {
    open.delete(name);
    open.set(name, plan);
    const [oldest] = open.keys();
    if (open.size > KEPT_OPEN && oldest !== undefined) open.delete(oldest);
    return plan;
  };
  return {
    get(parts, make) {
      const name = JSON.stringify(parts);
      const kept = open.get(name);
      if (kept) return keep(name, kept);
      const small = squeezed.get(name);
      if (small) return keep(name, JSON.parse(inflateRawSync(small).toString("utf8")) as Plan);
      const plan = make();
      squeezed.set(name, deflateRawSync(JSON.stringify(plan), { level: 1 }));
      return keep(name, plan);
    },
  };
}
