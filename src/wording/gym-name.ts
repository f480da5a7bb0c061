import type { Plan } from "../models/plan/plan.ts";

/** The gym a plan is made for. @example sayGym({}) // => "a usual gym" */
export const sayGym = ({ name }: Pick<Plan["gym"], "name">): string => name ?? "a usual gym";
