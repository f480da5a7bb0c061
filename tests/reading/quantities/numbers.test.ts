import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answerWord } from "../../../src/reading/quantities/answer-word.ts";
import { readCount } from "../../../src/reading/quantities/count.ts";
import { takeDoubtOff } from "../../../src/reading/quantities/doubt.ts";
import { plainText } from "../../../src/reading/quantities/plain-text.ts";
import { readShare } from "../../../src/reading/quantities/share.ts";
import { slips } from "../../../src/reading/quantities/slip.ts";
import { sayNumber, writtenNumber } from "../../../src/reading/quantities/written-number.ts";
import { tellReading } from "../../support/tell-reading.ts";

describe("a written number", () => {
  it.each([
    ["7", 7],
    ["+7", 7],
    ["-7", -7],
    ["102,5", 102.5],
    ["102.5", 102.5],
    [".5", 0.5],
    ["0,500", 0.5],
    ["1 000 000", 1_000_000],
    ["1,234,567", 1_234_567],
    ["1.234,5", 1234.5],
    ["1'234.5", 1234.5],
  ])("%j is %d", (text, value) => {
    expect(writtenNumber(text)).toEqual({ kind: "one", value });
  });

  it("with one sign before three digits has two readings", () => {
    expect(writtenNumber("1,800")).toEqual({ kind: "either", grouped: 1800, decimal: 1.8 });
    expect(writtenNumber("-12.500")).toEqual({ kind: "either", grouped: -12_500, decimal: -12.5 });
  });

  it.each(["", "x", "1.2.3", "1,23,4", "1e3", "--1", "1,234,56"])("%j is none", (text) => {
    expect(writtenNumber(text)).toEqual({ kind: "none" });
  });

  it("is said without exponents and trailing zeros", () => {
    expect([100, 102.5, 0.125, 1 / 3].map(sayNumber)).toEqual(["100", "102.5", "0.125", "0.333"]);
  });
});

describe("plain text", () => {
  it.each([
    ["5’ 7½”", "5' 7.5\""],
    ["５′７″", "5'7\""],
    ["90–95 kg", "90-95 kg"],
    ["\uFEFF 82\u00A0kg\u200F", "82 kg"],
    ["½ mile", "0.5 mile"],
    ["７０％", "70%"],
    ["۱۲ كغ", "12 كغ"],
  ])("of %j is %j", (text, plain) => {
    expect(plainText(text)).toBe(plain);
  });

  it("of plain text is itself", () => {
    fc.assert(fc.property(fc.string(), (text) => plainText(plainText(text)) === plainText(text)));
  });
});

describe("doubt around a quantity", () => {
  it.each([
    ["175 kg checked", { core: "175 kg", checked: true }],
    ["~19:50", { core: "19:50", approximate: true }],
    ["at least 100 kg", { core: "100 kg", bound: true }],
    ["100+", { core: "100", bound: true }],
    ["90 to 95", { core: "90 to 95", range: ["90", "95"] }],
    ["BW+20", { core: "BW+20", bound: false }],
  ])("is taken off %j", (text, found) => {
    expect(takeDoubtOff(text)).toMatchObject(found);
  });
});

describe("words in place of a number", () => {
  it.each(["n/a", "N.A.", "-", "--", "—", "?", "", "unknown", "not tested", "no idea", "tbd"])(
    "%j is not known",
    (text) => {
      expect(answerWord(text)).toBe("unknown");
    },
  );

  it.each(["none", "no", "0", "0 reps", "no MU", "can't", "cannot", "never", "none yet"])(
    "%j is cannot",
    (text) => {
      expect(answerWord(text)).toBe("cannot");
    },
  );

  it.each(["x", "yes", "ok", "some", "not yet"])("%j is unclear", (text) => {
    expect(answerWord(text)).toBe("unclear");
  });

  it.each(["22", "100 kg", "7:32", "BW"])("%j is no such word", (text) => {
    expect(answerWord(text)).toBeUndefined();
  });
});

describe("a count", () => {
  const tell = (text: string): string => tellReading(readCount(text));

  it.each([
    ["22", "takes 22"],
    ["22 reps", "takes 22"],
    ["22 UB", "takes 22"],
    ["1.000", "takes 1000"],
    ["max 22", "takes 22"],
    ["20ish", "takes ~20"],
    ["~22", "takes ~22"],
    [
      "20-25",
      "asks: this is a range; a plan needs one number, and the lower one is the safer | Write `~20` if that is meant.",
    ],
    ["30+", "asks: this is a bound, not a result | Write `30` or `~30`, whichever is meant."],
    ["22.5", "refuses: repetitions are whole | Write a whole number such as `22`."],
    ["a lot", "refuses: this is not a number | Write a whole number such as `22`."],
    [
      "99999",
      "refuses: a number of repetitions lies between 1 and 20000 | Write a whole number such as `22`.",
    ],
  ])("%j: %s", (text, told) => {
    expect(tell(text)).toBe(told);
  });
});

describe("a share", () => {
  const tell = (text: string): string => tellReading(readShare(text));

  it.each([
    ["70%", "takes 0.7"],
    ["72,5 %", "takes 0.725"],
    ["70 percent", "takes 0.7"],
    ["70", "asks: the percent sign is missing | Write `70%` if that is meant."],
    ["0.7", "asks: the percent sign is missing | Write `70%` if that is meant."],
    ["300%", "refuses: a share lies between 0% and 200% | Write a share such as `70%`."],
    ["70-80%", "refuses: this is a range; a plan needs one share | Write a share such as `70%`."],
    ["most", "refuses: this is not a share | Write a share such as `70%`."],
  ])("%j: %s", (text, told) => {
    expect(tell(text)).toBe(told);
  });
});

describe("a slip in typing a number", () => {
  it("may have lost its decimal sign or doubled a digit", () => {
    expect(slips(2225)).toEqual([222.5, 225]);
    expect(slips(11250)).toEqual([112.5, 1250]);
  });

  it.each([666, 999, 1000, 1234, 65535, 1, -5, 12.5])("is not seen in %d", (value) => {
    expect(slips(value)).toEqual([]);
  });
});
