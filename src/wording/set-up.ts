import type { Plan } from "../models/plan/plan.ts";
import type { Equipment } from "../models/vocabulary.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayHeight } from "./height.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayList, sayNumber } from "./number.ts";

type Line = Plan["setUp"][number];
type Thing = Extract<Line, { kind: "equipment" }>["things"][number];

const THINGS: Readonly<Record<Equipment, string>> = {
  barbell: "bar, plates and collars",
  dumbbell: "dumbbells",
  kettlebell: "kettlebell",
  row: "rower",
  ski: "ski erg",
  "bike-erg": "bike erg",
  "air-bike": "air bike",
  box: "box",
  rig: "bar to hang from, at your height",
  rings: "rings at your height",
  "dip-bars": "dip bars",
  "climbing-rope": "climbing rope with its mark",
  pegboard: "pegboard and pegs",
  "skipping-rope": "skipping rope at your length, and a spare one",
  wall: "wall with its lines",
  blocks: "blocks for the hands",
  target: "target",
  "medicine-ball": "ball",
  "slam-ball": "ball to slam",
  "heavy-ball": "heavy ball",
  sandbag: "bag",
  plate: "plate",
  handles: "handles or bells to carry",
  yoke: "yoke",
  sled: "sled, loaded, and its lane",
  rucksack: "rucksack, packed",
  rack: "rack at your height",
  bench: "bench",
  "hip-extension-bench": "hip extension bench at your length",
  water: "lane and cap",
};

const isEquipment = (what: string): what is Equipment => Object.hasOwn(THINGS, what);

/** A thing with this athlete's loads and heights. Reads `dumbbells 2 × 15 kg`, or `box 50 cm`. */
function sayThing({ what, loads, heights }: Thing, units: MassUnit): string {
  const name = isEquipment(what) ? THINGS[what] : what;
  const masses = what === "barbell" ? [] : loads.map((load) => sayLoad(load, units));
  const tall = heights.map((metres) => sayHeight(metres));
  const more = [...masses, ...tall];
  return more.length === 0 ? name : `${name} ${sayList(more, "and")}`;
}

const LOADING: Readonly<Record<Extract<Line, { kind: "loading" }>["who"], string>> = {
  alone: "You load alone: nobody touches the bar after the start.",
  "help-allowed": "Helpers may load: agree with two of them who stands where.",
};

/** One line of what to set out, agree and check before the start. */
export function saySetUp(line: Line, units: MassUnit): string {
  switch (line.kind) {
    case "equipment":
      return `Set out, in the order of use: ${line.things.map((thing) => sayThing(thing, units)).join("; ")}.`;
    case "floor": {
      const apart = `${sayNumber(line.between.value, 1)}${NO_BREAK_SPACE}${line.between.unit}`;
      return line.prescribed
        ? `Stations ${apart} apart as prescribed; show the tape on the film.`
        : `Stations about ${apart} apart; walk the way once.`;
    }
    case "plates":
      return line.fixed
        ? "The bar loaded and closed before the start; a second person adds up the plates."
        : line.prescribed
          ? "Plates beside the bar in loading order; a second person adds them up after every change."
          : "Plates beside the bar in loading order; a second person checks them without knowing your target.";
    case "loading":
      return `${LOADING[line.who]}${sayHelp(line.changes ?? [], units)}`;
    case "monitor":
      return "Monitor reset and turned to the unit that counts.";
    case "film":
      return `Film in one piece: clock, whole body${line.monitor ? ", monitor" : ""} and floor marks in the picture; plates, heights and distances once before the start.`;
    case "score-sheet":
      return "Score sheet with a box for each round, ticked by your judge.";
    case "tie-break":
      return `Tie-break: your judge writes down the clock ${line.moments.map((moment) => sayMoment(moment, units)).join(" and ")}.`;
    case "tie-break-note":
      return `Tie-break: ${line.note}`;
    case "least":
      return `Nothing counts under ${line.amount} ${line.of}: reach that first.`;
    case "chalk":
      return "Chalk and tape where you pass by, not only where you start.";
  }
}

/** What helpers change while the athlete is elsewhere. Reads ` They change the bar to 70 kg during the burpees, to 80 kg in the rest.` */
function sayHelp(
  changes: NonNullable<Extract<Line, { kind: "loading" }>["changes"]>,
  units: MassUnit,
): string {
  if (changes.length === 0) return "";
  const each = changes.map(
    ({ to, during }) =>
      `to ${sayLoad(to, units)} ${during === undefined ? "in the rest" : `during the ${during}`}`,
  );
  return ` They change the bar ${each.join(", ")}.`;
}

type Moment = Extract<Line, { kind: "tie-break" }>["moments"][number];

const TIMES = ["first", "second", "third", "fourth", "fifth", "sixth"] as const;

function sayMoment({ name, when, round, line }: Moment, units: MassUnit): string {
  if (line?.load) return `after the ${name} at ${sayLoad(line.load, units)}`;
  if (line) return `after the ${name}, ${TIMES[line.number - 1] ?? `${line.number}th`} time`;
  return `after the ${name}${when === "each-round" ? " of each round" : when === "one-round" ? ` of round ${round ?? 1}` : ""}`;
}
