import { parentPort, workerData } from "node:worker_threads";
import { inputOf, tryInput } from "./try-input.ts";

// Tries inputs one after the other and says before each which one it is, so that whoever waits knows where it hangs.
const { from, to } = workerData as { readonly from: number; readonly to: number };
for (let number = from; number < to; number += 1) {
  parentPort?.postMessage({ number });
  parentPort?.postMessage({ number, ending: tryInput(inputOf(number)) });
}
