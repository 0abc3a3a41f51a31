import { expectOneOf, fail, nearName, outOfRange } from "../../quantity/index.js";
import type { Level, ProblemUnits, Topic } from "../topics/topic.js";
import { topics } from "./all-topics.js";

/** A topic by its id, or an error with the one that is meant. */
export const topicAt = (input: unknown, path: string): Topic => {
  if (typeof input !== "string") {
    return fail("type", path, input, "a topic, such as nutrient/product-rate");
  }
  const found = topics.find(({ id }) => id === input);
  if (found !== undefined) return found;
  const ids = topics.map(({ id }) => id);
  const short = input.slice(0, 64).toLowerCase();
  const suggestion = nearName(input, ids) ?? ids.find((id) => id.endsWith(`/${short}`) || short.endsWith(id));
  return fail(
    "type",
    path,
    input,
    "a topic: problemTopics lists them",
    suggestion === undefined ? {} : { suggestion },
  );
};

/** A level, one that the topic has. */
export const levelAt = (input: unknown, path: string, topic?: Topic): Level => {
  const level = ([1, 2, 3] as const).find((each) => each === input);
  if (level === undefined) {
    return input === undefined
      ? fail("missing", path, input, "level 1, 2 or 3")
      : outOfRange(path, input, { step: 1, min: 1, max: 3 }, "a level: {}");
  }
  return topic === undefined || topic.levels.includes(level)
    ? level
    : outOfRange(
        path,
        input,
        { min: topic.levels[0] as number, max: topic.levels[topic.levels.length - 1] as number },
        `a level of ${topic.id}: {}`,
      );
};

/** The largest seed: the generator takes 32 bits. */
const mostSeed = 2 ** 32 - 1;

/** A seed: two that the generator could not tell apart are not both taken. */
export const seedAt = (input: unknown, path: string): number => {
  if (input === undefined) return fail("missing", path, input, "a seed, a whole number");
  if (typeof input !== "number") return fail("type", path, input, "a seed, a whole number");
  return Number.isInteger(input) && input >= 0 && input <= mostSeed
    ? Math.abs(input)
    : outOfRange(path, input, { step: 1, min: 0, max: mostSeed });
};

/** The units of a problem. */
export const unitsAt = (input: unknown, path: string): ProblemUnits =>
  expectOneOf(input, ["US", "metric"], path);
