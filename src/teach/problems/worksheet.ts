import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectList,
  expectNumber,
  expectRecord,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import { withoutPlaces } from "../topics/park.js";
import { posedProblem, shuffled } from "../topics/pose.js";
import type { QuizProblem, Worksheet } from "../topics/quiz-problem.js";
import type { Draw, Level, ProblemUnits, Topic } from "../topics/topic.js";
import { topics } from "./all-topics.js";
import { levelAt, seedAt, topicAt, unitsAt } from "./read-problem.js";
import { seededDraw } from "./seeded-draw.js";

const mostProblems = 200;
/** So many seeds are tried for a problem that the sheet does not have yet. */
const triesForNew = 400;

const wholeCount = (input: unknown): number => {
  const count = expectNumber(input, "count", { min: 1, max: mostProblems });
  return Number.isInteger(count) ? count : outOfRange("count", input, { step: 1, count: "problems" });
};

/** The topics to take, each once, all where none is named; each has the level asked for. */
const chosenTopics = (input: unknown, level: unknown): readonly Topic[] => {
  const wanted = level === undefined ? undefined : levelAt(level, "level");
  if (input === undefined) {
    return topics.filter(({ levels }) => wanted === undefined || levels.includes(wanted));
  }
  const named = expectList(input, "topics", "topic");
  if (named.length > mostProblems)
    outOfRange("topics", described(`${named.length} topics`), { max: mostProblems });
  const read = named.map((each, i) => topicAt(each, `topics[${i}]`));
  read.forEach((topic, i) => {
    if (read.indexOf(topic) !== i) fail("duplicate", `topics[${i}]`, topic.id, "each topic once");
    if (wanted !== undefined) levelAt(wanted, "level", topic);
  });
  return read;
};

/** A problem that is not on the sheet yet. */
const newProblem = (
  ask: { readonly topic: Topic; readonly level: Level; readonly units: ProblemUnits },
  draw: Draw,
  told: ReadonlySet<string>,
): QuizProblem | undefined => {
  for (let i = 0; i < triesForNew; i++) {
    const seed = draw.int(0, 2 ** 32 - 1);
    const found = posedProblem({ ...ask, seed, draw: seededDraw(seed) });
    if (!told.has(withoutPlaces(found.text))) return found;
  }
  return undefined;
};

/**
 * Problems for one sheet, no two alike, and none with the figures of another in another place: the topics take turns, in an order that the seed gives, and every problem carries
 * the seed that makes it again by {@link problem}.
 *
 * @param input.topics - which topics; all of {@link problemTopics} where left out
 * @param input.count - how many problems, 1 to 200
 * @param input.level - one level for all; where left out each problem has one of the levels of its topic
 * @param input.units - US customary or metric problems
 * @throws RatewrightError as {@link problem}; `duplicate` for a topic named twice; `infeasible` where the topics have no more
 *   problems that differ
 *
 * @example
 * ```ts
 * import { worksheet } from "ratewright/teach/problems";
 * const sheet = worksheet({ topics: ["spray/speed", "nutrient/product-rate"], count: 6, seed: 1, units: "US" });
 * sheet.problems.length; // => 6
 * new Set(sheet.problems.map(({ text }) => text)).size; // => 6
 * worksheet({ topics: ["spray/sped"], count: 6, seed: 1, units: "US" }); // => throws type
 * ```
 */
export const worksheet = (input: {
  readonly topics?: readonly string[];
  readonly count: number;
  readonly level?: Level;
  readonly seed: number;
  readonly units: ProblemUnits;
}): Worksheet => {
  expectRecord(input, "input", "a record with count, seed and units");
  const fields = expectFields(input, ["topics", "count", "level", "seed", "units"], "input");
  const { chosen, count, seed, units } = allOf({
    chosen: () => chosenTopics(fields.topics, fields.level),
    count: () => wholeCount(fields.count),
    seed: () => seedAt(fields.seed, "seed"),
    units: () => unitsAt(fields.units, "units"),
  });
  const draw = seededDraw(seed);
  const problems: QuizProblem[] = [];
  const told = new Set<string>();
  let round: readonly Topic[] = [];
  for (let i = 0; i < count; i++) {
    const turn = i % chosen.length;
    if (turn === 0) round = shuffled(chosen, draw);
    const topic = round[turn] as Topic;
    const level = input.level ?? draw.pick(topic.levels);
    const found = newProblem({ topic, level, units }, draw, told);
    if (found === undefined) {
      return fail("infeasible", "count", count, `fewer problems, or more topics than ${chosen.length}`);
    }
    told.add(withoutPlaces(found.text));
    problems.push(found);
  }
  return { type: "worksheet", version: 1, seed, units, problems };
};
