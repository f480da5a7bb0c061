import type { Plan } from "../models/plan/plan.ts";
import { sayShare } from "./share.ts";

type Basis = Plan["basis"][number];

const KINDS: Readonly<Record<Basis["kind"], string>> = {
  tested: "tested",
  estimated: "estimated from your results",
  related: "from a related movement",
  level: "typical for your level",
  assumed: "assumed",
};

/** What a statement rests on and how sure it is. @example sayBasis({ about: "pull-ups", kind: "level", detail: "", error: 0.15 }) // => "Pull-ups: typical for your level, ±15%" */
export function sayBasis({ about, kind, detail, error }: Basis): string {
  const of = kind === "level" ? /^level (\S+)$/.exec(detail)?.[1] : undefined;
  const parts = [
    ...(of ? [`${KINDS[kind]} (${of})`] : [KINDS[kind], ...(detail ? [detail] : [])]),
    ...(error === undefined ? [] : [`±${sayShare(error)}`]),
  ];
  return `${capitalised(about)}: ${parts.join(", ")}`;
}

/** The one test that would narrow the range most. */
export const saySharpen = (sharpen: NonNullable<Plan["sharpen"]>): string =>
  `${sharpen.test} It would narrow your range by ${sayShare(sharpen.narrowsBy)}.`;

/** First letter large. @example capitalised("pull-ups") // => "Pull-ups" */
export const capitalised = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
