import { nutrientTopics } from "../topics/nutrient-topics.js";
import { rateUnitTopics } from "../topics/rate-unit-topics.js";
import { seasonTopics } from "../topics/season-topics.js";
import { siteTopics } from "../topics/site-topics.js";
import { sprayTopics } from "../topics/spray-topics.js";
import { spreadTopics } from "../topics/spread-topics.js";
import { standTopics } from "../topics/stand-topics.js";
import { tankTopics } from "../topics/tank-topics.js";
import type { Topic } from "../topics/topic.js";
import { waterTopics } from "../topics/water-topics.js";
import { calibrationTopics } from "./calibration-topics.js";
import { feedTopics } from "./feed-topics.js";
import { groundTopics } from "./ground-topics.js";
import { recordTopics } from "./record-topics.js";
import { storeTopics } from "./store-topics.js";

/** Every topic: those of the first courses, then what a formula of the catalogue works out. */
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
  ...feedTopics,
  ...calibrationTopics,
  ...groundTopics,
  ...recordTopics,
  ...storeTopics,
];
