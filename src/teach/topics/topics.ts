import { nutrientTopics } from "./nutrient-topics.js";
import { rateUnitTopics } from "./rate-unit-topics.js";
import { seasonTopics } from "./season-topics.js";
import { siteTopics } from "./site-topics.js";
import { sprayTopics } from "./spray-topics.js";
import { spreadTopics } from "./spread-topics.js";
import { standTopics } from "./stand-topics.js";
import { tankTopics } from "./tank-topics.js";
import type { Topic } from "./topic.js";
import { waterTopics } from "./water-topics.js";

/** Every topic, room by room. */
export const topics: readonly Topic[] = [
  ...nutrientTopics,
  ...sprayTopics,
  ...spreadTopics,
  ...tankTopics,
  ...siteTopics,
  ...standTopics,
  ...waterTopics,
  ...seasonTopics,
  ...rateUnitTopics,
];
