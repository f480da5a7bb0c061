import type { Movement } from "../../src/models/movement.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { readMovements } from "./read-movements.ts";

function soundMovements(): ReadonlyMap<string, Movement> {
  const { movements, faults } = readMovements();
  if (faults.length > 0) throw new Error(sayFaults(faults));
  return movements;
}

/** The movements that come with the tool, by id; throws on the first faulty file. */
export const contentMovements: ReadonlyMap<string, Movement> = soundMovements();
