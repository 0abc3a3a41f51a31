// Problems for learners, the same for a seed on every platform. They need the package pure-rand.

export { problem } from "./problem.js";
export { type ProblemTopic, problemTopics } from "./problem-topics.js";
export { worksheet } from "./worksheet.js";
