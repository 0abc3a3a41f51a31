import type { QuizAnswer, QuizProblem } from "../../../src/teach/index.js";

/** A problem with this answer; `A` is right. */
export const asked = (
  answer: Partial<QuizAnswer> & Pick<QuizAnswer, "value" | "unit" | "text">,
  more: Partial<QuizProblem> = {},
): QuizProblem => ({
  type: "quiz-problem",
  version: 1,
  topic: "nutrient/product-rate",
  title: "A problem",
  level: 1,
  seed: 0,
  units: "US",
  text: "How much?",
  steps: [],
  choices: [
    { letter: "A", text: answer.text },
    { letter: "B", text: "another", mistake: "one unit of area only" },
    { letter: "C", text: "a third", mistake: "units upside down" },
    { letter: "D", text: "a fourth", mistake: "forgot to convert" },
  ],
  letter: "A",
  mistakes: [],
  ...more,
  answer: { of: "none", decimals: 1, tolerance: 0.05, ...answer },
});
