import { frozen } from "../../quantity/index.js";
import type { LimitSet } from "../limit/limit.js";
import { illinoisLimits, michiganLimits, minnesotaLimits, wisconsinLimits } from "./great-lakes.js";
import {
  marylandProductLimits,
  marylandUseLimits,
  newJerseyLimits,
  newJerseySummaryLimits,
  pennsylvaniaLimits,
} from "./mid-atlantic.js";
import { connecticutLimits, manitobaLimits, newYorkLimits, vermontLimits } from "./northeast.js";
import { australianTurfFungicideLimits } from "./rotation.js";
import { floridaLimits, marionCountyLimits } from "./southeast.js";

/** Every set of limits that was read in its source. */
export const publishedLimits: readonly LimitSet[] = /* @__PURE__ */ frozen([
  floridaLimits,
  marionCountyLimits,
  marylandProductLimits,
  marylandUseLimits,
  newJerseyLimits,
  newJerseySummaryLimits,
  pennsylvaniaLimits,
  newYorkLimits,
  vermontLimits,
  connecticutLimits,
  manitobaLimits,
  minnesotaLimits,
  wisconsinLimits,
  michiganLimits,
  illinoisLimits,
]);

/** Sets of limits that come from memory, in whole or in part, and are kept apart. */
export const rememberedLimits: readonly LimitSet[] = /* @__PURE__ */ frozen([australianTurfFungicideLimits]);
