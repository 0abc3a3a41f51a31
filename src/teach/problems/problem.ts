import { allOf, expectFields, expectRecord } from "../../quantity/index.js";
import { posedProblem } from "../topics/pose.js";
import type { QuizProblem } from "../topics/quiz-problem.js";
import type { Level, ProblemUnits } from "../topics/topic.js";
import { levelAt, seedAt, topicAt, unitsAt } from "./read-problem.js";
import { seededDraw } from "./seeded-draw.js";

/**
 * A problem for a learner: told in plain English, with an answer, a tolerance, the working, four choices, and what to say
 * about each wrong answer that a known mistake leads to. The same topic, level, seed and units give the same problem on
 * every platform, within one version of the library.
 *
 * The answer is computed by the functions of the library, not by a formula of the problem. Its tolerance is half of the
 * last place that the question asks for; a whole number of things has to be right. The crew, the park and the products
 * are invented.
 *
 * @param input.topic - one of {@link problemTopics}
 * @param input.level - 1 one step, 2 a step more or a change of units, 3 the whole chain
 * @param input.seed - a whole number from 0 to 4,294,967,295
 * @throws RatewrightError `type` for an unknown topic, with the one that is likely meant; `range` for a level that the topic
 *   does not have, or a seed that is no whole number in that range; `missing`
 *
 * Source of the generator: Matsumoto and Nishimura, "Mersenne Twister" (1998), as the package pure-rand has it.
 *
 * @example
 * ```ts
 * import { problem } from "ratewright/teach/problems";
 * const first = problem({ topic: "nutrient/product-rate", level: 1, seed: 7, units: "US" });
 * first.choices.length; // => 4
 * first.text === problem({ topic: "nutrient/product-rate", level: 1, seed: 7, units: "US" }).text; // => true
 * problem({ topic: "nutrient/product-rate", level: 4, seed: 7, units: "US" } as never); // => throws range
 * ```
 */
export const problem = (input: {
  readonly topic: string;
  readonly level: Level;
  readonly seed: number;
  readonly units: ProblemUnits;
}): QuizProblem => {
  expectRecord(input, "input", "a record with topic, level, seed and units");
  const fields = expectFields(input, ["topic", "level", "seed", "units"], "input");
  const { topic, seed, units } = allOf({
    topic: () => topicAt(fields.topic, "topic"),
    level: () => levelAt(fields.level, "level"),
    seed: () => seedAt(fields.seed, "seed"),
    units: () => unitsAt(fields.units, "units"),
  });
  const level = levelAt(fields.level, "level", topic);
  return posedProblem({ topic, level, seed, units, draw: seededDraw(seed) });
};
