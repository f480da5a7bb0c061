import * as z from "zod";
import type { SettableConstants } from "../../models/model-constant.ts";
import { metres } from "../../models/quantity.ts";
import type { Settings } from "../../models/settings.ts";
import { isZone } from "../quantities/date-time.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { gymName } from "../fields/gym-name.ts";
import { known } from "../fields/list-field.ts";
import { overridesField } from "../fields/overrides-field.ts";
import { metresField, numberField, yesNoField } from "../fields/quantity-field.ts";
import { nameField, textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";

/** Distance from which a sheet is read at the rig, metres: in reach of an arm, and as far as one page has room for figures of 20 arcminutes. */
const NEAREST = 0.4;
const FARTHEST = 4;

/** What holds where `content/settings.yaml` says nothing. */
export const USUAL_SETTINGS: Settings = {
  title: "Strategy",
  readAt: metres(1.5),
  seed: 1,
  passcode: false,
  overrides: {},
};

const zoneField = textField.transform((text, ctx): string => {
  if (isZone(text)) return text;
  tellRefusal(ctx, {
    path: [],
    problem: "this is no time zone",
    allowed: "a name of the tz database such as `Europe/Oslo`",
    remedy: "Write the name of the time zone, area and city.",
  });
  return z.NEVER;
});

/** The file `content/settings.yaml`: what a coach sets once. `settable` are the numbers of the model `overrides:` may name. */
export const settingsSchema = (gyms: readonly string[], settable: SettableConstants) =>
  z
    .strictObject({
      title: known(nameField).describe("the name of the site, shown on the general pages"),
      "read at": metresField
        .optional()
        .describe("how far away the sheet is read at the rig: `1.5 m`; letters grow with it"),
      seed: known(numberField).describe(
        "a whole number that fixes the simulated days; the same number gives the same plan",
      ),
      zone: known(zoneField).describe(
        "the time zone of starts that name none, in workouts of no competition: `Europe/Oslo`",
      ),
      gym: known(gymName(gyms)).describe(
        "the gym of athletes who name none, by the name of its file in content/gyms",
      ),
      passcode: yesNoField
        .optional()
        .describe("whether every brief asks for a passcode on top of its link: `yes` or `no`"),
      dates: wordField(["day-first", "month-first"] as const)
        .optional()
        .describe("how dates in numbers such as 3/4/26 are read in all files: `day first` or `month first`"),
      overrides: overridesField(settable)
        .optional()
        .describe("numbers of the model that you set differently, by their name: `{openerChance: 0.9}`"),
    })
    .transform((written, ctx): Settings => {
      const readAt = written["read at"] ?? USUAL_SETTINGS.readAt;
      if (readAt < NEAREST || readAt > FARTHEST) {
        tellRefusal(ctx, {
          path: ["read at"],
          problem: "no sheet on one page can be read from there",
          allowed: `${NEAREST} m to ${FARTHEST} m`,
          remedy: "Write the distance between eyes and sheet, such as `1.5 m`.",
        });
      }
      const seed = written.seed ?? USUAL_SETTINGS.seed;
      if (!Number.isSafeInteger(seed)) {
        tellRefusal(ctx, {
          path: ["seed"],
          problem: "the seed must be a whole number",
          remedy: "Write a whole number such as `1`.",
        });
      }
      const { title = USUAL_SETTINGS.title, gym, passcode = false, dates, overrides = {} } = written;
      return {
        title,
        readAt,
        seed,
        ...(written.zone === undefined ? {} : { zone: written.zone }),
        ...(gym === undefined ? {} : { gym }),
        passcode,
        ...(dates === undefined ? {} : { dates }),
        overrides,
      };
    });
