// A problem that a trainer made: what nobody could answer, or read, is refused before it is on a screen.
import { describe, expect, it } from "vitest";
import { grade, type QuizProblem, worksheetMarkdown } from "../../../src/teach/index.js";
import { problem } from "../../../src/teach/problems/index.js";
import { problemQti, worksheetQti } from "../../../src/teach/qti/index.js";

const good = problem({ topic: "spray/speed", level: 1, seed: 4, units: "US" });
const [first, second] = good.choices as [(typeof good.choices)[0], (typeof good.choices)[0]];

describe("a problem of one's own", () => {
  it.each<readonly [what: string, change: Partial<QuizProblem>, refusal: RegExp]>([
    [
      "a right letter that no choice has",
      { letter: "F" },
      /problem\.letter: expected the letter of a choice: A, B, C, D/,
    ],
    [
      "two choices of one letter",
      { choices: [first, { ...second, letter: "A" }] },
      /problem\.choices\[1\]\.letter/,
    ],
    ["another version", { version: 2 as 1 }, /problem\.version: expected 1/],
    ["half a level", { level: 2.5 as 2 }, /problem\.level/],
    ["half a decimal", { answer: { ...good.answer, decimals: 1.5 } }, /problem\.answer\.decimals/],
  ])("with %s is refused", (_, change, refusal) => {
    expect(() => grade({ ...good, ...change }, "3 mph")).toThrow(refusal);
    expect(() => problemQti({ ...good, ...change })).toThrow(refusal);
  });

  it("may have no choices to be graded, but not as a question of choices", () => {
    const open = { ...good, choices: [] };
    expect(grade(open, good.answer.text).verdict).toBe("right");
    expect(() => problemQti(open)).toThrow(/problem\.choices: expected two or more/);
    const sheet = { type: "worksheet", version: 1, seed: 0, units: "US", problems: [open] } as const;
    expect(worksheetMarkdown(sheet)).toContain(good.text);
    expect(() => worksheetQti(sheet)).toThrow(/sheet\.problems\[0\]\.choices/);
  });

  it("needs a topic or a seed of its own on one sheet, and is told so", () => {
    const sheet = {
      type: "worksheet",
      version: 1,
      seed: 0,
      units: "US",
      problems: [good, { ...good, text: "Another?" }],
    } as const;
    expect(() => worksheetQti(sheet)).toThrow(/another topic or seed than sheet\.problems\[0\]/);
  });
});
