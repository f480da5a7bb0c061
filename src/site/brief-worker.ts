import { Tinypool } from "tinypool";
import { type BoardOrder, type BriefOrder, type Maker, type MakerGiven, openMaker } from "./brief-maker.ts";

let maker: Promise<Maker> | undefined;

/** The maker of this thread, opened with what the thread was given when it began. */
const ofThisThread = (): Promise<Maker> => (maker ??= openMaker(Tinypool.workerData as MakerGiven));

/** Makes an athlete's briefs in this thread. */
export const makeBriefs = async (order: BriefOrder): ReturnType<Maker["makeBriefs"]> =>
  (await ofThisThread()).makeBriefs(order);

/** Makes the board in this thread. */
export const makeBoard = async (order: BoardOrder): Promise<void> => (await ofThisThread()).makeBoard(order);
