import type { Movement } from "../../models/movement.ts";

/** Words of the names of lifts whose every rep begins on the floor. */
const FROM_FLOOR: ReadonlySet<string> = new Set(["clean", "snatch", "deadlift", "cluster", "ground"]);

/** Whether every rep of a barbell begins on the floor, so that letting it go costs no other lift. */
export const isFromFloor = ({
  id,
  loading,
}: Pick<Movement, "id"> & {
  readonly loading?: Pick<NonNullable<Movement["loading"]>, "held">;
}): boolean => {
  const words = id.split("-");
  return loading?.held === "bar" && !words.includes("hang") && words.some((word) => FROM_FLOOR.has(word));
};
