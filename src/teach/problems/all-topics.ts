import { boomTopics } from "../application-lessons/boom-topics.js";
import { calibrationTopics } from "../application-lessons/calibration-topics.js";
import { feedTopics } from "../application-lessons/feed-topics.js";
import { mixTopics } from "../application-lessons/mix-topics.js";
import { nutrientTopics } from "../application-lessons/nutrient-topics.js";
import { rateUnitTopics } from "../application-lessons/rate-unit-topics.js";
import { sprayTopics } from "../application-lessons/spray-topics.js";
import { spreadTopics } from "../application-lessons/spread-topics.js";
import { strengthTopics } from "../application-lessons/strength-topics.js";
import { tankTopics } from "../application-lessons/tank-topics.js";
import { groundTopics } from "../ground-lessons/ground-topics.js";
import { recordTopics } from "../ground-lessons/record-topics.js";
import { seasonTopics } from "../ground-lessons/season-topics.js";
import { siteTopics } from "../ground-lessons/site-topics.js";
import { standTopics } from "../ground-lessons/stand-topics.js";
import { storeTopics } from "../ground-lessons/store-topics.js";
import { waterTopics } from "../ground-lessons/water-topics.js";
import type { Topic } from "../topics/topic.js";

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
  ...boomTopics,
  ...mixTopics,
  ...strengthTopics,
  ...feedTopics,
  ...calibrationTopics,
  ...groundTopics,
  ...recordTopics,
  ...storeTopics,
];
