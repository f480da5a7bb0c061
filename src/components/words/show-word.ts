import type { PartPlan } from "../../models/plan/plan.ts";
import { readCount } from "../../reading/quantities/count.ts";
import { readShare } from "../../reading/quantities/share.ts";
import { sayLoad } from "../../wording/mass.ts";
import { clockShift } from "../../wording/part-clock.ts";
import { sayPerSide } from "../../wording/plates.ts";
import { sayWholeScore } from "../../wording/score.ts";
import { saySetsAndRests, setsAsWritten } from "../../wording/sets.ts";
import { sayShare } from "../../wording/share.ts";
import { sayClock } from "../../wording/time.ts";
import type { NamedMovement, Reader } from "../reader.ts";
import { absent, general, own, partFor, type Shown } from "./value.ts";

/** Attributes of a word as they are written. */
export type Written = Readonly<Record<string, string | number | undefined>>;
type Show = (written: Written, reader: Reader) => Shown;

const textOf = (written: Written, name: string): string => String(written[name] ?? "");
const partOf = ({ part }: Written): string | undefined => (part === undefined ? undefined : String(part));

/** A text was checked before it is shown; a value that cannot be read here means that the check let it through. */
function numberOf(written: Written, name: string, read: typeof readCount): number {
  const text = textOf(written, name);
  const value = read(text);
  if (value.ok) return value.value;
  throw new Error(`a word in the text of a workout has ${name}="${text}": ${value.problem}`);
}

function movementOf(written: Written, reader: Reader): NamedMovement {
  const name = textOf(written, "of");
  const movement = reader.movementNamed(name);
  if (movement) return movement;
  throw new Error(`a word in the text of a workout names the movement "${name}", which does not exist`);
}

/** A share of the reader's best lift, as plates can make it. */
export const showLoad: Show = (written, reader) => {
  const movement = movementOf(written, reader);
  const share = numberOf(written, "share", readShare);
  if (reader.kind === "anyone") return general(`${sayShare(share)} of your best ${movement.name}`);
  const load = reader.loadAt(movement.id, share);
  if (!load) return absent(reader.plan);
  const plates = sayPerSide(load);
  return own(`${sayLoad(load, reader.plan.athlete.units)}${plates ? ` (${plates})` : ""}`);
};

/** What the reader aims at. */
export const showTarget: Show = (written, reader) => {
  if (reader.kind === "anyone") return general("your band's target");
  const part = partFor(reader.plan, partOf(written), ({ pacing }) => pacing !== undefined);
  const pacing = part?.pacing;
  if (!pacing) return absent(reader.plan);
  const context = { units: reader.plan.athlete.units, perRound: pacing.perRound };
  return own(sayWholeScore(pacing.score, pacing.result.target, context));
};

/** The clock at the end of a round. */
export const showSplit: Show = (written, reader) => {
  const round = numberOf(written, "round", readCount);
  if (reader.kind === "anyone") return general(`your band's clock of round ${round}`);
  const part = partFor(reader.plan, partOf(written), ({ pacing }) => pacing !== undefined);
  const end = part?.pacing?.rounds.find((candidate) => (candidate.number ?? candidate.round) === round)?.end;
  if (!part || end === undefined)
    return part?.pacing ? general("(you do not get there)") : absent(reader.plan);
  return own(sayClock(end + clockShift(part)));
};

const roundAt = ({ rounds }: NonNullable<PartPlan["pacing"]>, round: number) =>
  rounds.find((each) => each.round === round);

/** How the reader breaks up a movement in a round. */
export const showSets: Show = (written, reader) => {
  const movement = movementOf(written, reader);
  const round = written["round"] === undefined ? undefined : numberOf(written, "round", readCount);
  if (reader.kind === "anyone") return general("your band's sets");
  const rowIn = ({ pacing }: PartPlan) =>
    pacing?.rows.find(
      (row) =>
        row.movement === movement.id &&
        (round === undefined || (roundAt(pacing, row.round)?.number ?? row.round) === round),
    );
  const part = partFor(reader.plan, partOf(written), (each) => rowIn(each) !== undefined);
  const row = part && rowIn(part);
  return row ? own(saySetsAndRests(setsAsWritten(row))) : absent(reader.plan);
};

/** The load to open with. */
export const showFirstLift: Show = (written, reader) => {
  if (reader.kind === "anyone") return general("your band's first lift");
  const part = partFor(reader.plan, partOf(written), ({ lifting }) => lifting !== undefined);
  const [first] = part?.lifting?.lifts.flatMap((lift) => lift.attempts) ?? [];
  return first ? own(sayLoad(first.load, reader.plan.athlete.units)) : absent(reader.plan);
};

/** The clock at which half of the work is done. */
export const showHalf: Show = (written, reader) => {
  if (reader.kind === "anyone") return general("the mark of half the work on your band's tape");
  const part = partFor(reader.plan, partOf(written), ({ pacing }) => pacing?.half !== undefined);
  const half = part?.pacing?.half;
  return part && half ? own(sayClock(half.clock + clockShift(part))) : absent(reader.plan);
};

/** How heavy the load of the workout is for the reader. */
export const showShare: Show = (written, reader) => {
  const movement = movementOf(written, reader);
  if (reader.kind === "anyone") return general("your band's share");
  const loaded = reader.plan.loads.find((load) => load.movement === movement.id);
  const share = loaded?.load.shareOfBest;
  return share === undefined ? absent(reader.plan) : own(sayShare(share));
};
