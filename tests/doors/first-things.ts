import { field } from "./field.js";
import { ground } from "./ground.js";
import { job } from "./job.js";
import { nutrients } from "./nutrients.js";
import { phrases } from "./phrases.js";
import { rates } from "./rates.js";
import { office, weather } from "./season.js";
import { soil } from "./soil.js";
import { spraying } from "./spraying.js";
import type { FirstThing } from "./trial.js";
import { units } from "./units.js";
import { stand } from "./upkeep.js";
import { watering } from "./watering.js";

/** Everything that is tried, by subject. */
export const firstThings: Readonly<Record<string, readonly FirstThing[]>> = {
  "rates as people type them": rates,
  "units and substances in code": units,
  nutrients: nutrients,
  spraying: spraying,
  "spreading, ground, seed and water": ground,
  "seed, sod, mowing and coring": stand,
  "the soil report": soil,
  water: watering,
  "weather, disease and insects": weather,
  "indicators, prices and lessons": office,
  "the job": job,
  "what is left, phrase by phrase": [...phrases, ...field],
};
