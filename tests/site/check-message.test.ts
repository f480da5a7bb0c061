import { describe, expect, it } from "vitest";
import { sayFault } from "../../src/reading/say-fault.ts";
import { checkMessage } from "../../src/site/check-message.ts";
import { USUAL_MESSAGE } from "../../src/site/write-message.ts";
import { sampleMovements } from "../support/sample-movements.ts";

const told = (text: string): string =>
  checkMessage({ path: "content/message.txt", text }, sampleMovements).map(sayFault).join("\n\n");

describe("the check of a text of messages", () => {
  it.each([
    USUAL_MESSAGE,
    '<Name/>: at <Split round="3"/>, <Load of="clean and jerk" share="70%" />, write to <ana@example.org> or <https://x.example>',
    "<Split round='2' /> and <Split round=“2” />, 3 < 5, a <b",
  ])("passes %s", (text) => {
    expect(told(text)).toBe("");
  });

  it.each([
    [
      "Hi\n<Naem />",
      `content/message.txt:2:1: Fault
  found    <Naem />
  wrong    messages have no word of this name
  allowed  <Name /> <FirstName /> <Workout /> <Start /> <Link /> <Target /> <Split /> <Half /> <Sets /> <FirstLift /> <Load />
  nearest  <Name />
  to do    Write <Name />.`,
    ],
    [
      '<Only level="new">',
      `content/message.txt:1:1: Fault
  found    <Only level="new">
  wrong    messages have no word of this name
  allowed  <Name /> <FirstName /> <Workout /> <Start /> <Link /> <Target /> <Split /> <Half /> <Sets /> <FirstLift /> <Load />
  to do    Write one of the words allowed.`,
    ],
    [
      "At <Split />",
      `content/message.txt:1:4: Fault
  found    <Split />
  wrong    <Split> needs round: number of the round, from 1
  to do    Write <Split round="..." />.`,
    ],
    [
      "<Split round=3 />",
      `content/message.txt:1:1: Fault
  found    <Split round=3 />
  wrong    "round=3" in <Split> says nothing
  to do    Write what the word is to know as name="value", such as <Split round="3" />.`,
    ],
    [
      '<Load of="clean and jerk" share="0%" />',
      `content/message.txt:1:1: Fault
  found    <Load of="clean and jerk" share="0%" />
  wrong    a share of nothing is no load
  allowed  a share from 1% to 200%
  to do    Write the share of the best lift that is meant, such as \`70%\`.`,
    ],
    [
      '<Target prat="b" />',
      `content/message.txt:1:1: Fault
  found    <Target prat="b" />
  wrong    <Target> has no attribute prat
  allowed  part
  nearest  part
  to do    Write part="...".`,
    ],
    [
      "Aim at <Target\n",
      `content/message.txt:1:8: Fault
  found    <Target
  wrong    <Target has no end sign
  to do    Write <Target /> with the signs /> behind it.`,
    ],
    [
      '<link />, <Sets of="pulup" />',
      `content/message.txt:1:1: Fault
  found    <link />
  wrong    messages have no word of this name
  allowed  <Name /> <FirstName /> <Workout /> <Start /> <Link /> <Target /> <Split /> <Half /> <Sets /> <FirstLift /> <Load />
  nearest  <Link />
  to do    Write <Link />.

content/message.txt:1:11: Fault
  found    <Sets of="pulup" />
  wrong    no movement has this name
  nearest  pull-up
  to do    Write the name of a movement, or add the movement to content/movements.`,
    ],
  ])("refuses %j", (text, said) => {
    expect(told(text)).toBe(said);
  });
});
