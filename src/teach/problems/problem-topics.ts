import { frozen } from "../../quantity/index.js";
import type { Level } from "../topics/topic.js";
import { topics } from "./all-topics.js";

/** What problems there are: a topic, and the levels that it has. */
export interface ProblemTopic {
  readonly topic: string;
  readonly title: string;
  readonly levels: readonly Level[];
}

/**
 * The topics of problems, by room.
 *
 * @example
 * ```ts
 * import { problemTopics } from "ratewright/teach/problems";
 * problemTopics[0]?.topic; // => "nutrient/product-rate"
 * ```
 */
export const problemTopics: readonly ProblemTopic[] = /* @__PURE__ */ frozen(
  topics.map(({ id, title, levels }) => ({ topic: id, title, levels: [...levels] })),
);
