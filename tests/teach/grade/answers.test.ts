import { describe, expect, it } from "vitest";
import { grade } from "../../../src/teach/index.js";
import { learnerAnswers } from "./answers.js";
import { furtherAnswers } from "./further-answers.js";

describe("what learners write", () => {
  const all = [...learnerAnswers, ...furtherAnswers].flatMap(([problem, verdict, answers]) =>
    answers.map((text) => ({ problem, verdict, text })),
  );

  it("is two hundred and fifty answers, or more", () => {
    expect(all.length).toBeGreaterThanOrEqual(250);
  });

  it.each(all)("$problem.answer.text: $text is $verdict", ({ problem, verdict, text }) => {
    const found = grade(problem, text);
    expect(found.verdict, found.says).toBe(verdict);
  });
});
