import { field } from "./field.js";
import { ground } from "./ground.js";
import { job } from "./job.js";
import { nutrients } from "./nutrients.js";
import { phrases } from "./phrases.js";
import { rates } from "./rates.js";
import { spraying } from "./spraying.js";
import type { FirstThing } from "./trial.js";
import { units } from "./units.js";

/** Everything that is tried, by subject. */
export const firstThings: Readonly<Record<string, readonly FirstThing[]>> = {
  "rates as people type them": rates,
  "units and substances in code": units,
  nutrients: nutrients,
  spraying: spraying,
  "spreading, ground, seed and water": ground,
  "the job": job,
  "what is left, phrase by phrase": [...phrases, ...field],
};
