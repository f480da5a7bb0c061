import { Tinypool } from "tinypool";
import { type BoardOrder, type BriefOrder, type Maker, type MakerGiven, openMaker } from "./brief-maker.ts";
import { explained } from "./explain.ts";

let maker: Promise<Maker> | undefined;

/** The maker of this thread, opened with what the thread was given when it began. */
const ofThisThread = (): Promise<Maker> => (maker ??= openMaker(Tinypool.workerData as MakerGiven));

/** Makes an athlete's briefs in this thread. */
export const makeBriefs = (order: BriefOrder): ReturnType<Maker["makeBriefs"]> =>
  explained(ofThisThread().then((each) => each.makeBriefs(order)));

/** Makes the board in this thread. */
export const makeBoard = (order: BoardOrder): Promise<void> =>
  explained(ofThisThread().then((each) => each.makeBoard(order)));
