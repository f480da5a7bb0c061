import { type Track, UNTIL } from "../motion/track.ts";

const one = (value: number): Float64Array => new Float64Array(1).fill(value);
const never = Number.POSITIVE_INFINITY;

/**
 * A track of one movement for as long as the horizon lasts, counted in its own sustainable seconds, with nothing but endurance to it
 * and a fastest pace (seconds per sustainable second).
 */
export const singleTrack = (kappa: number, reach: number, fastest: number): Track => ({
  items: [],
  tasks: [],
  length: 1,
  kind: new Uint8Array([UNTIL]),
  task: new Int32Array(1),
  round: new Int32Array([1]),
  section: new Int32Array(1),
  sections: 1,
  amount: one(never),
  perUnit: one(1),
  least: one(fastest),
  most: one(never),
  rep: one(3),
  kappa: one(kappa),
  reach: one(reach),
  transition: one(0),
  time: one(never),
  deadline: one(never),
  ends: new Uint8Array(1),
  score: one(1),
  counted: new Uint8Array([1]),
  wall: new Uint8Array(1),
  group: new Int32Array(1).fill(-1),
  groupTotal: one(0),
  adds: new Uint8Array(1),
  needBy: one(never),
  workAfter: one(0),
  transitionsAfter: one(0),
  pauses: new Float64Array(0),
  fixed: one(0),
  given: [],
});
