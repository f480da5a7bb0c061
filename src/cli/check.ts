import { makeCommand, run, surroundingsOf, type CommonOptions } from "./command.ts";
import { readChecked } from "./read-checked.ts";
import { counted } from "./counted.ts";
import { faultsOfPlans } from "./faults-of-plans.ts";
import { sayFaults } from "../reading/say-fault.ts";

await run(
  makeCommand("check", "Reads every file and tells all faults at once.").action((options: CommonOptions) => {
    const surroundings = surroundingsOf(options);
    const data = readChecked(surroundings, (text) => process.stdout.write(`${text}\n`));
    const faults = faultsOfPlans(data, surroundings.date);
    if (faults.length > 0) throw new Error(sayFaults(faults));
    const { workouts, athletes, library } = data;
    console.log(
      `No faults: ${counted(workouts.length, "workout")}, ${counted(athletes.length, "athlete")}, ` +
        `${counted(library.movements.size, "movement")} in ${surroundings.dataFolder}.`,
    );
  }),
);
