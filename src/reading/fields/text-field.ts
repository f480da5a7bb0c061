import * as z from "zod";
import { mendedEncoding } from "./mended-encoding.ts";
import { refuse } from "../yaml/refuse.ts";

/** Marks that turn the direction of what follows; a name needs none, and they would turn the numbers beside it. */
const STEERING = /[\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF]/g;
/** The mark of UTF-8 at the beginning of a file, read as another encoding. */
const BROKEN_MARK = /^\u00EF\u00BB\u00BF/;
const CONTROLS = /\p{Cc}/u;
/** Control signs but tab and new line. */
const STEERING_SIGNS = /[^\P{Cc}\t\n\r]/u;
/** What stands where a letter could not be read. */
const LOST = "\uFFFD";

const lostLetter = (what: string) =>
  ({
    problem: `a letter of the ${what} was lost on its way here`,
    allowed: `a ${what} saved as UTF-8`,
    remedy: `Type the ${what} anew.`,
    severity: "question",
  }) as const;
/** What takes no ink: control and format signs, spaces, marks alone, and fillers that count as letters. */
const UNSEEN = /[\p{C}\p{Z}\p{M}\u115F\u1160\u2800\u3164\uFFA0]/gu;
const LONGEST_NAME = 80;

/** Words of a person, kept as they are but for spaces around them. */
export const textField = z.string().transform((text, ctx) => {
  const words = text.normalize("NFC").trim();
  if (STEERING_SIGNS.test(words)) {
    return refuse(ctx, {
      problem: "an invisible control sign stands in the text",
      allowed: "words, and new lines",
      remedy: "Type the text anew.",
    });
  }
  if (words.includes(LOST)) return refuse(ctx, lostLetter("text"));
  const mended = mendedEncoding(words);
  if (mended === undefined || /[^\p{Script=Latin}\p{Script=Common}]/u.test(mended)) return words;
  return refuse(ctx, {
    problem: "the text comes from another encoding of letters",
    allowed: "text saved as UTF-8",
    nearest: mended,
    remedy: `Write \`${mended}\`.`,
    severity: "question",
  });
});

/** A name in any script: composed (NFC), spaces joined, marks that steer direction removed, spelling kept. */
export const nameField = z.string().transform((text, ctx) => {
  const name = text
    .normalize("NFC")
    .replace(BROKEN_MARK, "")
    .replace(STEERING, "")
    .replace(/\s+/g, " ")
    .trim();
  const allowed = "a name in any script";
  if (name.replace(UNSEEN, "") === "") {
    return refuse(ctx, {
      problem: name === "" ? "the name is empty" : "nothing of the name can be seen",
      allowed,
      remedy: "Write the name.",
    });
  }
  const mended = mendedEncoding(name);
  if (mended !== undefined) {
    return refuse(ctx, {
      problem: "the name comes from another encoding of letters",
      allowed,
      nearest: mended,
      remedy: `Write \`${mended}\`, and save tables as UTF-8.`,
      severity: "question",
    });
  }
  if (name.includes(LOST)) return refuse(ctx, lostLetter("name"));
  if (CONTROLS.test(name)) {
    return refuse(ctx, {
      problem: "an invisible control sign stands in the name",
      allowed,
      remedy: "Type the name anew.",
    });
  }
  if (name.length > LONGEST_NAME) {
    return refuse(ctx, {
      problem: `the name is longer than ${LONGEST_NAME} signs`,
      allowed,
      remedy: "Write a shorter name.",
    });
  }
  return name;
});
