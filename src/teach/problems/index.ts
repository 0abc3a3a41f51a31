// Problems for learners, the same for a seed on every platform. They need the package pure-rand.

export type { NameOfMistake } from "../topics/mistakes.js";
export type { QuizAnswer, QuizChoice, QuizMistake, QuizProblem, Worksheet } from "../topics/quiz-problem.js";
export type { AnswerSubstance, Level, ProblemUnits } from "../topics/topic.js";
export { problem } from "./problem.js";
export { type ProblemTopic, problemTopics } from "./problem-topics.js";
export { worksheet } from "./worksheet.js";
