import { grade } from "../../../src/teach/index.js";
import { learnerAnswers } from "./answers.js";
import { furtherAnswers } from "./further-answers.js";

/** Where an answer of the lists is graded otherwise than a fair teacher would. */
export const learnerFaults = (): readonly string[] =>
  [...learnerAnswers, ...furtherAnswers].flatMap(([problem, verdict, answers]) =>
    answers.flatMap((text) => {
      const found = grade(problem, text).verdict;
      return found === verdict ? [] : [`${problem.answer.text}: ${text} is ${found}, not ${verdict}`];
    }),
  );
